/** Hears danger and warning signs anywhere in a text; in doubt a sign is `near`, so that one question settles it. */
import type { Sign } from '#machines/facts.ts';
import { feverSaid } from './fever.ts';
import type { Lexicon } from './lexicon.ts';
import { part, type Said, sentencesOf } from './said.ts';

type Words = Lexicon['signs'];

/** `sure` is the sign itself, `near` a small or doubtful way of saying it. */
export interface SignWords {
  readonly sign: Sign;
  readonly sure: RegExp;
  readonly near?: RegExp;
}

export interface SignsHeard {
  readonly sure: readonly Sign[];
  readonly near: readonly Sign[];
  /** Signs said not to be there. */
  readonly denied: readonly Sign[];
  /** The plain text without the words that deny a sign, so that their "no" answers nothing else. */
  readonly rest: string;
  /** The language next door that a sign was heard in alone. */
  readonly heardIn: Lexicon | null;
}

type Standing = 'sure' | 'near' | 'denied';

/** What each sentence says, and whether it asks; a question denied at once asks nothing. */
function saidOrAsked(plain: string, words: Words): { text: string; asks: boolean }[] {
  return sentencesOf(plain.replace(words.askedAndDenied, ' ')).map((text) => ({
    text: text.replace(/[.!?;]+$/, ' ').trim(),
    asks: text.trimEnd().endsWith('?'),
  }));
}

/** Statements inside a sentence: "but", "and she" and a comma begin a new one, except inside a list that ends with "or". */
function statementsOf(sentence: string, words: Words): string[] {
  // "Bleeding/fever" is a list too.
  const spoken = sentence.replace(/(?<=[a-z])\/(?=[a-z])/g, words.or);
  const marked = words.listed.test(spoken) ? spoken : spoken.replace(/,(?!\d)/g, ' | ');
  return marked
    .replace(/,(?!\d)/g, ' ')
    .split(words.statementEnd)
    .map((statement) => statement.replace(/ {2,}/g, ' ').trim())
    .filter((statement) => statement !== '');
}

interface Hit {
  readonly sign: Sign;
  readonly at: number;
  readonly end: number;
  readonly near: boolean;
}

/** "Not much blood" and "almost no blood" are some blood: what is denied is how much. */
function isSomeOf(statement: string, { at, end }: Hit, negator: RegExpExecArray | undefined, words: Words): boolean {
  const from = negator === undefined ? at : negator.index + negator[0].length;
  const quantity = words.muchOf.test(statement.slice(from, end)) || words.muchAfter.test(statement.slice(end));
  return quantity || words.hardlyNo.test(statement.slice(0, from));
}

/** Whether a negation before a sign reaches it. One without "or" reaches only the first sign after it. */
function denial(statement: string, hit: Hit, otherSigns: readonly Hit[], words: Words): 'denied' | 'some' | null {
  const { at, end } = hit;
  if (words.deniedAfter.test(statement.slice(end))) return 'denied';
  // Looked for in the whole statement: what follows a negation can belong to the sign.
  const negator = [...statement.matchAll(words.negator)].findLast(({ 0: word, index }) => index + word.length <= at);
  if (!negator) return null;
  const from = negator.index + negator[0].length;
  const between = otherSigns
    .filter((other) => other.at >= from && other.end <= at)
    .reduce(
      (text, other) => text.slice(0, other.at) + ' '.repeat(other.end - other.at) + text.slice(other.end),
      statement,
    )
    .slice(from, at);
  const listed = between.trim() !== statement.slice(from, at).trim();
  // Word by word: one pattern over all of them could read a run of words in more ways than it can try.
  const isReached = between.split(' ').every((word) => word === '' || words.reach.test(word));
  if (!isReached || (listed && !words.listed.test(statement.slice(from)))) return null;
  return isSomeOf(statement, hit, negator, words) ? 'some' : 'denied';
}

function isDoubted(statement: string, sentence: string, asks: boolean, { open, words: { signs: words, clock } }: Said) {
  // A day later, last night is since the tube went in.
  const lately = open.asking === 'next-day' ? statement.replace(clock.lastNight, ' ') : statement;
  const onwards = sentence.slice(Math.max(0, sentence.indexOf(statement)));
  return (
    asks ||
    words.unsureOfSign.test(statement) ||
    words.supposed.test(sentence) ||
    words.past.test(lately.replace(words.sinceThen, ' ')) ||
    words.over.test(onwards) ||
    words.other.test(statement)
  );
}

/** Most statements hold no sign: looking first is much cheaper than listing. */
function matchesIn(statement: string, pattern: RegExp): RegExpMatchArray[] {
  return statement.search(pattern) === -1 ? [] : [...statement.matchAll(pattern)];
}

function hitsIn(statement: string, words: Words): Hit[] {
  return words.signWords.flatMap(({ sign, sure, near }) => {
    const hit = (isNear: boolean) => (match: RegExpMatchArray) => ({
      sign,
      at: match.index ?? 0,
      end: (match.index ?? 0) + match[0].length,
      near: isNear,
    });
    const surely = matchesIn(statement, sure).map(hit(false));
    const nearly = near ? matchesIn(statement, near).map(hit(true)) : [];
    return [...surely, ...nearly];
  });
}

function withoutLookalikes(text: string, words: Words): string {
  return words.lookalikes.reduce((rest, pattern) => rest.replace(pattern, ' - '), text);
}

/** Blood that comes out around the tube is no leak of what is in the stomach. */
function leaksBlood({ sign }: Hit, hits: readonly Hit[], standings: readonly Standing[]): boolean {
  const isBlood = (other: Hit) => !other.near && (other.sign === 'bleeding' || other.sign === 'fresh-blood');
  return sign === 'leak' && hits.some((other, place) => isBlood(other) && standings[place] !== 'denied');
}

function isFeared(statement: string, { at, end }: Hit, words: Words): boolean {
  return matchesIn(statement, words.feared).some(
    ({ index = 0, 0: feared }) => at >= index && end <= index + feared.length,
  );
}

function standing(hit: Hit, statement: string, doubted: boolean, hits: readonly Hit[], words: Words): Standing {
  const denied = denial(statement, hit, hits, words);
  if (denied === 'denied') return 'denied';
  if (hit.sign === 'breathing') return isFeared(statement, hit, words) ? 'near' : 'sure';
  if (hit.near || doubted || denied === 'some') return 'near';
  // A bit blue is blue.
  if (hit.sign === 'colour') return 'sure';
  return words.small.test(statement.slice(0, hit.end + 16)) ? 'near' : 'sure';
}

/** What the text says of one sign is settled by its strongest word; only a temperature below fever outdoes "feels warm". */
class Notes {
  readonly standings = new Map<Sign, Standing>();
  /** Signs of another person. */
  readonly ofOthers = new Set<Sign>();

  note(sign: Sign, how: Standing): void {
    const before = this.standings.get(sign);
    if (before === 'sure' || (before === 'near' && how === 'denied')) return;
    this.standings.set(sign, how);
  }

  noteTemperature(how: Standing): void {
    if (how === 'denied' && this.standings.get('fever') === 'near') this.standings.set('fever', 'denied');
    else this.note('fever', how);
  }
}

/** A statement's words as the text has them: in a list they have lost their commas. */
function asWritten(statement: string, text: string): string {
  if (text.includes(statement)) return statement;
  const words = statement.split(' ').map((word) => word.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&'));
  return text.match(new RegExp(words.join('[ ,]+')))?.[0] ?? statement;
}

/** The text without the words from the negation to the last sign it takes back. */
function withoutDenial(text: string, statement: string, hits: readonly Hit[], words: Words): string {
  const end = Math.max(...hits.map((hit) => hit.end));
  const negator = [...statement.slice(0, end).matchAll(words.negator)][0];
  if (!negator) return text;
  const denial = asWritten(statement.slice(negator.index, end), text);
  // "Yes we have it and no he isn't bleeding": that no goes too; one that opens the text may be the answer.
  const before = statement.slice(0, negator.index).match(words.noBefore)?.[0] ?? '';
  const whole = `${before}${denial}`;
  return text.replace(text.indexOf(whole) > 0 ? whole : denial, ' ; ');
}

interface Heard {
  readonly notes: Notes;
  readonly rest: string;
}

/** What the words of one language say of each sign. A sign that is sure anywhere is sure; breathing is near only where it is feared. */
function hearIn(said: Said): Heard {
  const words = said.words.signs;
  const notes = new Notes();
  let rest = said.plain;
  /** What was denied last: "no blood. well, a speck" takes it back. */
  let deniedLast: readonly Sign[] = [];
  /** Statements without a sign: a text that says one again and again is not searched again and again. */
  const silent = new Set<string>();
  for (const { text, asks } of saidOrAsked(said.plain, words)) {
    for (const statement of statementsOf(withoutLookalikes(text, words), words)) {
      if (deniedLast.length === 0 && silent.has(statement)) continue;
      const hits = hitsIn(statement, words);
      // "No pain, but a bit of pink on the gauze" names what there is some of.
      if (hits.length === 0 && deniedLast.length > 0 && words.someAfterAll.test(statement))
        for (const sign of deniedLast) notes.note(sign, 'near');
      if (hits.length === 0) {
        silent.add(statement);
        continue;
      }
      const doubted = isDoubted(statement, text, asks, said);
      const standings = hits.map((hit) => standing(hit, statement, doubted, hits, words));
      const allDenied = standings.every((how) => how === 'denied');
      deniedLast = allDenied ? hits.map(({ sign }) => sign) : [];
      if (allDenied) rest = withoutDenial(rest, statement, hits, words);
      hits.forEach((hit, place) => {
        if (leaksBlood(hit, hits, standings)) return;
        // Named before the sign: "she's bleeding, her dad drives" is hers.
        const ofOther = words.otherPerson.test(statement.slice(0, hit.at));
        if (ofOther && hit.sign !== 'breathing') notes.ofOthers.add(hit.sign);
        else notes.note(hit.sign, standings[place] ?? 'sure');
      });
    }
  }
  if (said.open.asking === 'contents' && words.redContents.test(rest)) notes.note('fresh-blood', 'sure');
  const temperature = feverSaid(said);
  if (temperature) notes.noteTemperature(temperature);
  return { notes, rest };
}

/**
 * All signs of a text. Danger is heard in every language that is on: `others` are the same text in those it is not read in.
 * Of one sign the language it is read in has the word, because "no" and "pale" mean something else next door.
 */
export function hearSigns(said: Said, others: readonly Said[]): SignsHeard {
  const { notes, rest } = hearIn(said);
  const elsewhere = others.flatMap((other) => {
    const plain = withoutLookalikes(other.plain, said.words.signs);
    return [...hearIn(part(other, plain)).notes.standings].map(([sign, how]) => ({ sign, how, words: other.words }));
  });
  // "Médicament contre la fièvre" has the word and means no fever, whatever a mended "fiebre" next door would mean.
  const hasWord = (sign: Sign) =>
    sign !== 'breathing' &&
    said.words.signs.signWords.some((own) => own.sign === sign && said.plain.search(own.sure) !== -1);
  const known = (sign: Sign) => notes.standings.has(sign) || notes.ofOthers.has(sign) || hasWord(sign);
  const unheard = elsewhere.filter(({ sign, how }) => how !== 'denied' && !known(sign));
  const own = [...notes.standings.keys()].length > 0;
  for (const { sign, how } of unheard) notes.note(sign, how);
  const heardIn = own ? null : (unheard[0]?.words ?? null);
  return { ...settle(notes.standings, said), rest, heardIn };
}

/** A weaker word for what a stronger sign says already. */
const stronger: Partial<Record<Sign, Sign>> = {
  'fresh-blood': 'bleeding',
  pain: 'severe-pain',
  'tight-belly': 'hard-belly',
};

/** Drops what a stronger sign says already, and a leak while no tube is in that could leak around. */
function settle(found: ReadonlyMap<Sign, Standing>, { open }: Said): Omit<SignsHeard, 'rest' | 'heardIn'> {
  const of = (how: Standing) => [...found].filter(([, is]) => is === how).map(([sign]) => sign);
  const counts = (sign: Sign) => {
    const above = stronger[sign];
    if (sign === 'leak' && !open.tubeIn) return false;
    return above === undefined || found.get(above) !== 'sure';
  };
  return { sure: of('sure').filter(counts), near: of('near').filter(counts), denied: of('denied') };
}
