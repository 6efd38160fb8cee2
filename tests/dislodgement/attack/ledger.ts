/**
 * What one family has told so far, kept beside the machines and without them: the safety rules are checked against this.
 * It only notes what a rule needs, and where a text can be taken two ways it takes the careful one.
 */
import type { NurseFacts, TextEvent, Unstamped } from '#machines/events.ts';
import type {
  DateRange,
  FamilyFile,
  KitAnswer,
  OwnTubeAnswer,
  PhReading,
  QuestionKey,
  Sign,
  Told,
  TubeKind,
} from '#machines/facts.ts';

type Text = Unstamped<TextEvent>;
type Answer = Extract<Text, { readonly value: unknown }>;

/** A reading and when it was told, epoch ms. */
export interface Read extends PhReading {
  readonly atMs: number;
}

/** Danger at any age and at any time; common practice, no source. */
export const dangers: ReadonlySet<Sign> = new Set([
  'breathing',
  'colour',
  'limp',
  'bleeding',
  'hard-belly',
  'severe-pain',
  'vomit',
]);
/** Grave once a tube is in: NPSA/2010/RRR010. */
const gravesInside: ReadonlySet<Sign> = new Set(['pain', 'fresh-blood', 'tight-belly', 'leak']);

/** A reading taken back here, or while the tube is in use, makes way for new contents and a new strip. */
const beforeActing: ReadonlySet<QuestionKey | null> = new Set(['fed-lately', 'looks', 'secured']);

/** What the line was asking when the text came. */
export interface Scene {
  readonly asking: QuestionKey | null;
  /** The tube was allowed when the text came. */
  readonly inUse: boolean;
  /** It asked whether a sign said in a doubtful way is grave. */
  readonly clarifying: boolean;
  readonly atMs: number;
}

export class Ledger {
  readonly #file: FamilyFile | null;
  kind: TubeKind | null = null;
  firstPlaced: DateRange | 'unknown' | null = null;
  /** Half out stands until somebody says that it is out, or is asked for the kind again. */
  halfOut = false;
  weightSettled = false;
  latex: boolean;
  kit: KitAnswer | null = null;
  /** The kit was answered as to a latex-free tube. */
  kitKnowsLatex = false;
  ownTube: OwnTubeAnswer | null = null;
  strips = false;
  /** A danger sign named, or a plain yes to the list; only the yes can be taken back. */
  dangerNamed = false;
  dangerSaid = false;
  warning = false;
  /** A nurse sent the child in. */
  sentIn = false;
  unwell: 'unasked' | 'no' | 'unread' = 'unasked';
  tube: 'own' | 'temporary' | null = null;
  /** Told to be hard. It may be taken back until the line has held for it; then only a nurse clears it. */
  hard = false;
  heldHard = false;
  cleared = false;
  askedAfterIn = false;
  readings: Read[] = [];
  fed = false;
  looks = false;
  secured = false;
  problem = false;

  constructor(file: FamilyFile | null) {
    this.#file = file;
    this.latex = file?.latexAllergy ?? false;
    this.#trustFile();
  }

  /** Notes a text, given what the line was asking and when. */
  hear(event: Text, { asking, inUse, clarifying, atMs }: Scene): void {
    if (event.type === 'signs') this.#signs(event.sure);
    if (event.type === 'outAgain') this.out();
    if (event.type === 'tubeProblem' && this.tube !== null) this.problem = true;
    if (event.type === 'correct') this.#takeBack(event.key, inUse || beforeActing.has(asking));
    if (event.type === 'answer.unwell') this.#unwell(asking === null ? null : event.value, clarifying);
    else if ('value' in event) this.#answer(event, atMs);
    this.#told(event.told, event.corrects);
  }

  /** A nurse corrected a fact. */
  corrected(told: NurseFacts): void {
    this.#told(told, true);
  }

  /** The line said that it gave up on an answer to this question. */
  gaveUp(asking: QuestionKey | null): void {
    if (asking === 'unwell') this.unwell = 'unread';
    if (asking === 'tube-kind') this.kind = 'unknown';
    if (asking === 'first-placed') this.firstPlaced = 'unknown';
    if (asking === 'after-in') this.warning = true;
    if (asking === 'weight') this.weightSettled = true;
    if (asking === 'strips') this.strips = false;
  }

  /** Nothing is in; what was read and allowed is void. */
  out(): void {
    this.tube = null;
    this.halfOut = false;
    this.#void();
  }

  #void(): void {
    this.hard = false;
    this.heldHard = false;
    this.cleared = false;
    this.askedAfterIn = false;
    this.readings = [];
    this.fed = false;
    this.looks = false;
    this.secured = false;
    this.problem = false;
  }

  #signs(sure: readonly Sign[]): void {
    if (sure.some((sign) => dangers.has(sign))) this.dangerNamed = true;
    if (sure.includes('fever')) this.warning = true;
    if (this.tube !== null && sure.some((sign) => gravesInside.has(sign))) this.warning = true;
  }

  #answer(event: Answer, atMs: number): void {
    switch (event.type) {
      case 'answer.confirm':
        if (event.value === 'no') this.#forgetFile();
        else this.#trustFile();
        return;
      case 'answer.tube-kind':
        this.kind = event.value;
        this.halfOut = event.value === 'half-out';
        return;
      case 'answer.first-placed':
        this.firstPlaced = event.value;
        return;
      case 'answer.weight':
        this.weightSettled = true;
        return;
      case 'answer.own-tube':
        this.#own(event.value);
        return;
      case 'answer.kit':
        this.kit = event.value;
        this.kitKnowsLatex = this.latex;
        return;
      case 'answer.tube-in':
        this.#inserted('temporary', event.value);
        return;
      case 'answer.own-tube-in':
        this.#inserted('own', event.value);
        return;
      case 'answer.after-in':
        if (event.value === 'yes') this.warning = true;
        this.askedAfterIn = event.value === 'no';
        return;
      case 'answer.strips':
        this.strips = event.value === 'yes';
        return;
      case 'answer.ph':
        if (event.value.high > 14) return;
        this.readings.push({ ...event.value, atMs });
        this.fed = false;
        this.looks = false;
        return;
      case 'answer.fed-lately':
        this.fed = event.value === 'yes';
        return;
      case 'answer.looks':
        this.looks = event.value === 'yes';
        return;
      case 'answer.secured':
        this.secured = event.value === 'yes';
        return;
      case 'answer.first-feed':
      case 'answer.next-day':
        if (event.value === 'no') this.warning = true;
        return;
      default:
        return;
    }
  }

  /** "No" to one doubtful sign does not answer a list that was given up on. */
  #unwell(value: 'yes' | 'no' | null, clarifying: boolean): void {
    if (value === null) return;
    if (value === 'yes' && clarifying) this.warning = true;
    else if (value === 'yes') this.dangerSaid = true;
    else if (!clarifying || this.unwell === 'unasked') this.unwell = 'no';
    if (value === 'no' && !clarifying) this.dangerSaid = false;
  }

  #inserted(tube: 'own' | 'temporary', value: 'easy' | 'hard' | 'no' | 'in'): void {
    if (value === 'no') {
      this.out();
      return;
    }
    if (this.tube === null) this.#void();
    this.tube = tube;
    if (value === 'hard') this.hard = true;
    if (value === 'easy' && !this.heldHard) this.hard = false;
  }

  #own(value: OwnTubeAnswer): void {
    this.ownTube = value;
    if (value === 'long-inside') this.kind = 'gj';
  }

  /** What the family told itself stands before what the file says. */
  #trustFile(): void {
    if (this.#file === null) return;
    const { tubeKind, firstPlaced, weightKg } = this.#file;
    this.kind ??= tubeKind === 'unknown' ? null : tubeKind;
    this.firstPlaced ??= firstPlaced === null ? null : { earliest: firstPlaced, latest: firstPlaced };
    this.weightSettled ||= weightKg !== null;
  }

  #forgetFile(): void {
    this.kind = null;
    this.firstPlaced = null;
    this.weightSettled = false;
  }

  #told(told: Told, corrects: boolean): void {
    const { tubeKind, firstPlaced, weight, kit, ownTube, ph } = told;
    if (tubeKind !== undefined) this.#toldKind(tubeKind, corrects);
    if (firstPlaced !== undefined) this.#toldFirstPlaced(firstPlaced, corrects);
    if (weight !== undefined) this.weightSettled = true;
    if (told.latexAllergy && !this.latex) {
      this.latex = true;
      this.kitKnowsLatex = false;
    }
    if (kit !== undefined && this.tube === null && (this.kit === null || kit !== 'yes')) this.kit = kit;
    if (ownTube !== undefined && (this.ownTube !== 'burst' || corrects)) this.#own(ownTube);
    if (told.strips !== undefined) this.strips = told.strips === 'yes';
    if (told.insertedHow === 'hard' && this.tube !== null) this.hard = true;
    if (told.insertedHow === 'easy' && corrects && !this.heldHard) this.hard = false;
    const last = this.readings.at(-1);
    if (ph !== undefined && last !== undefined && ph.high > last.high) {
      this.readings[this.readings.length - 1] = { ...ph, atMs: last.atMs };
      this.secured = false;
    }
  }

  #toldKind(kind: TubeKind, corrects: boolean): void {
    if (kind === 'half-out') this.halfOut = true;
    if (kind === 'nose' && this.kind !== null) return; // a tube through the nose is told of beside the one that came out
    if (this.kind === null || (kind !== 'g' && kind !== 'unknown')) this.kind = kind;
    else if (corrects && kind !== this.kind) this.kind = null;
  }

  #toldFirstPlaced(told: DateRange | 'unknown', corrects: boolean): void {
    const known = this.firstPlaced;
    if (known === null || known === 'unknown') this.firstPlaced = told;
    else if (told === 'unknown') this.firstPlaced = corrects ? null : known;
    else if (told.latest > known.latest) this.firstPlaced = told;
    else if (corrects && told.latest < known.latest) this.firstPlaced = null;
  }

  #takeBack(key: QuestionKey | null, readsAnew: boolean): void {
    if (key === 'unwell' || (key === null && this.dangerSaid)) {
      this.unwell = 'unasked';
      this.dangerSaid = false;
    }
    if (key === 'confirm' && this.#file !== null) this.#forgetFile();
    if (key === 'tube-kind') this.kind = null;
    if (key === 'first-placed') this.firstPlaced = null;
    if (key === 'after-in') this.askedAfterIn = false;
    if (key === 'strips') this.strips = false;
    if (key === 'own-tube' && this.tube === null) this.ownTube = null;
    if (key === 'kit' && this.tube === null) this.kit = null;
    if (key === 'secured') this.secured = false;
    if ((key === 'ph' || key === 'contents') && readsAnew) this.readings.pop();
  }
}
