/** What the rules are held against, one step as a bystander saw it, and what they say of it. */
import type { ConversationEvent } from '#machines/dislodgement/conversationEvent.ts';
import type { Bystander, Setting } from './bystander.ts';
import type { Outputs } from './outputs.ts';

export const ruleNames = ['S1', 'S2', 'S3', 'S4', 'S5', 'S6', 'S7', 'S8', 'S9'] as const;
export type RuleName = (typeof ruleNames)[number];

/** One step as the bystander saw it: before the event, after hearing it, and after all that was said. */
export interface Seen {
  readonly before: Bystander;
  readonly heard: Bystander;
  readonly after: Bystander;
  readonly event: ConversationEvent;
  readonly outputs: Outputs;
  readonly setting: Setting;
}

/** Counts each time a rule had something to say, and collects what it says against. */
export interface Verdict {
  exercised: Record<RuleName, number>;
  broken: { readonly rule: RuleName; readonly why: string }[];
}

export const noVerdict = (): Verdict => ({
  exercised: { S1: 0, S2: 0, S3: 0, S4: 0, S5: 0, S6: 0, S7: 0, S8: 0, S9: 0 },
  broken: [],
});

/** Holds `demand` against a rule where it applies; `why` says what is wrong. */
export type Holds = (rule: RuleName, demand: boolean, why: string) => void;

export const holding =
  (verdict: Verdict): Holds =>
  (rule, demand, why) => {
    verdict.exercised[rule] += 1;
    if (!demand) verdict.broken.push({ rule, why });
  };
