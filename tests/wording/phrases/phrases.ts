/** What the tests look for in the texts of one language: the phrases by which a rule is seen to be said. */
import type { FamilyLanguage, LanguageCode } from '#src/wording/catalogue.ts';

export type Phrase = string | RegExp;
export type Several = readonly Phrase[];

export interface Phrases {
  readonly code: LanguageCode;
  readonly language: FamilyLanguage;

  // Every text
  /** What to reply, or that nothing is: a line of its own at the end. */
  readonly replyLine: RegExp;
  readonly asksReply: RegExp;
  readonly yes: string;
  /** Words by which a child would be called he or she. */
  readonly gendered: RegExp;
  readonly whenNamed: string;
  readonly whenUnnamed: string;
  readonly yourChild: RegExp;
  readonly fromTip: (length: string) => string;
  readonly lengthWords: RegExp;
  /** Without a ruler: for 3-4, exactly 4, and 4-6 cm. */
  readonly gauges: { readonly from3: string; readonly only4: string; readonly from4: string };
  readonly permission: RegExp;
  readonly use: RegExp;
  readonly nothingThrough: RegExp;
  readonly nothingInHole: string;
  readonly nothingThroughTube: string;
  readonly fill: RegExp;
  readonly water: RegExp;
  readonly fillAtMost: RegExp;
  readonly keptFlat: RegExp;

  // Danger
  readonly opening: Several;
  readonly dangers: Several;
  readonly callNow: RegExp;
  readonly nothingAtAll: Several;
  readonly emergency: Several;
  readonly notedSevenKg: string;
  readonly toldMe: string;
  readonly toldLimp: string;
  readonly toldThree: string;
  readonly byMistake: string;
  readonly mistake: string;
  readonly ifUnsure: RegExp;
  readonly severePain: string;
  readonly newPain: string;
  readonly worse: RegExp;

  // Questions
  readonly fileFull: Several;
  readonly fileEmpty: string;
  readonly firstPlaced: Several;
  readonly kitStranger: Several;
  readonly kitShown: RegExp;
  readonly kitLatex: string;
  readonly bothUnits: Several;
  readonly nudge: RegExp;
  readonly strip: Several;
  readonly looksRight: Several;
  readonly looksWrong: Several;
  readonly turn: RegExp;
  readonly secondTryForContents: Several;
  readonly newContents: string;

  // Insertion
  readonly everyInsertion: Several;
  readonly layOut: Several;
  readonly measure: RegExp;
  readonly putIn: Several;
  readonly cautious: Several;
  readonly cautiousAny: RegExp;
  readonly once: string;
  readonly balloonOutside: string;
  readonly smaller: string;

  // Waiting and going in
  readonly recheck: Several;
  readonly cannotWait: RegExp;
  readonly goNow: RegExp;
  readonly halfOut: Several;
  readonly noseTube: RegExp;
  readonly afterWarning: string;
  readonly card: Several;

  // Use
  readonly secureInOrder: readonly string[];
  readonly useWith: Several;
  readonly useOwnWithout: RegExp;

  // Beside the way
  readonly nobodyCarryOn: Several;
  readonly nobodyStay: Several;
  readonly recheckCall: Several;
  readonly callAnswer: Several;
  readonly callUnanswered: Several;
  readonly stopped: Several;
  readonly oneMoreDay: string;
  readonly sevenMoreDays: string;
}
