/** What a language must hold: one function a message, so that a missing message or parameter fails the type check. */
import type { LanguageCode } from '#machines/facts.ts';
import type { Site } from '#machines/protocol/settings.ts';
import type { Preface, SayKey, Says } from '#machines/says.ts';
import type { NurseSayKey, NurseSays } from './nurseSays.ts';

export type { LanguageCode };

/** What a text to a nurse is said in. */
export interface NurseScene {
  readonly site: Site;
  readonly nowMs: number;
}

/** What a text to a caregiver is said in; `child` is the child's name where it is known. */
export interface Scene extends NurseScene {
  readonly language: LanguageCode;
  readonly child: string | null;
  /** The family's children, where it has several. */
  readonly children?: readonly string[];
  /** It is said in a rehearsal: it begins with the mark. */
  readonly rehearsal?: boolean;
}

/** The children to choose from. */
export function namesIn({ children = [] }: Scene): readonly string[] {
  return children;
}

export type PrefaceKey = Preface['key'];

export type CaregiverCatalogue = { readonly [K in SayKey]: (params: Says[K], scene: Scene) => string };
export type PrefaceCatalogue = {
  readonly [K in PrefaceKey]: (preface: Extract<Preface, { readonly key: K }>, scene: Scene) => string;
};
export type NurseCatalogue = { readonly [K in NurseSayKey]: (params: NurseSays[K], scene: NurseScene) => string };

/** What a family is spoken to in. */
export interface FamilyLanguage {
  readonly caregiver: CaregiverCatalogue;
  readonly prefaces: PrefaceCatalogue;
  /** What every text of a rehearsal begins with: one word and a full stop. */
  readonly rehearsalMark: string;
}

/** What nurses are spoken to in as well. */
export interface Language extends FamilyLanguage {
  readonly nurse: NurseCatalogue;
}
