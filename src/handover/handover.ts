/**
 * The handover from the night to the day team, by the five elements of I-PASS: illness severity, patient summary, action list,
 * situation awareness and contingency, synthesis by receiver (Starmer et al., NEJM 2014; 371: 1803, from memory). The words are ours.
 */
import type { CaseView } from '#machines/case.ts';
import type { PageLevel } from '#machines/facts.ts';
import type { Stretch } from '#src/rota/gaps.ts';
import type { CaseName } from '#src/wording/nurseSays.ts';

/** How pressing a case is, the most pressing first. */
export const severities = ['now', 'watch', 'settled'] as const;
export type Severity = (typeof severities)[number];

export interface UnansweredPage {
  readonly level: PageLevel;
  /** Epoch ms of the first call nobody has answered. */
  readonly sinceMs: number;
  readonly calls: number;
}

export interface HandedCase extends CaseName {
  readonly severity: Severity;
  readonly openedMs: number;
  /** The caregiver's, E.164. */
  readonly number: string;
  /** Null where the line had a fault: a person has the whole case. */
  readonly view: CaseView | null;
  readonly unanswered: UnansweredPage | null;
  /** What the line does next by itself, epoch ms. */
  readonly due: readonly { readonly what: string; readonly atMs: number }[];
  /** Texts that may not have reached the family since the last handover. */
  readonly undelivered: number;
}

/** A temporary tube in a child, whether its case is still open or not. */
export interface HandedTube extends CaseName {
  readonly number: string;
  /** Begun days counted as whole; null where it may not be used yet. */
  readonly daysLeft: number | null;
  readonly caseOpen: boolean;
}

export interface Handover {
  readonly atMs: number;
  /** The most pressing first. */
  readonly cases: readonly HandedCase[];
  /** The shortest stay first. */
  readonly tubes: readonly HandedTube[];
  /** In the day to come. */
  readonly gaps: readonly Stretch[];
  /** In the day that is over. */
  readonly clearances: readonly (CaseName & { readonly atMs: number })[];
  /** Families whose file wants a look. */
  readonly reviews: readonly {
    readonly child: string | null;
    readonly number: string;
    readonly why: readonly string[];
  }[];
}

/** Whether a text is worth sending. A file that wants a look can wait for the sheet. */
export function hasNews({ cases, tubes, gaps, clearances }: Handover): boolean {
  return cases.length + tubes.length + gaps.length + clearances.length > 0;
}

/** Everything in doubt is pressing: a fault, a page nobody answered, a child sent in or put on hold. */
export function severityOf(view: CaseView | null, unanswered: UnansweredPage | null): Severity {
  if (view === null || unanswered !== null) return 'now';
  switch (view.disposition) {
    case 'emergency':
    case 'go-in':
    case 'hold':
    case 'nurse':
      return 'now';
    case 'use':
    case 'own-tube':
      return 'settled';
    case 'recheck':
    case null:
      return 'watch';
  }
}
