/** Turns one text of a caregiver into exactly one event: danger first, then wishes, then the open question, then facts. */

import { type LanguageCode, languageCodes, type QuestionKey } from '#machines/facts.ts';
import { type About, aboutOf } from './about.ts';
import { besideAnswer, type Event, type HeardBeside, readers } from './answers.ts';
import { saysArrived, saysNoWayThere } from './arrival.ts';
import { childrenTold, type Named, namedIn, notOnFileTold, saysNone } from './children.ts';
import { clean } from './clean.ts';
import { carrierKeyword } from './keyword.ts';
import { detectLanguage, languageWish } from './language.ts';
import { asCorrection, canOnlyCorrect, saysMeant } from './lastAnswer.ts';
import { lexicons } from './lexicon.ts';
import { childMeant } from './nickname.ts';
import { firstFeed, saysOver } from './plainAnswers.ts';
import { type RehearsalSaid, rehearsalSaid } from './rehearsal.ts';
import { hear, type Open, part, type Said, sentencesOf } from './said.ts';
import { hearSigns, type SignsHeard } from './signs.ts';
import { wordsOf } from './spell.ts';
import { gatherTold } from './told.ts';
import { deniesHalfOut, namesUnknownDevice } from './tubeKind.ts';
import { saysWho } from './who.ts';
import * as wishes from './wishes.ts';
import { withoutCorrection, yesNo } from './yesNo.ts';

export type { Open } from './said.ts';

/** `about` matters for a first text: a feeding tube that is out or in trouble, a thank-you, or something else; `start` ends a STOP. */
export interface Reading {
  readonly event: Event;
  readonly about: About | 'start';
  /** The language it asks for in words, and the one it is clearly written in; null where neither is said. */
  readonly wantsLanguage: LanguageCode | null;
  readonly writtenIn: LanguageCode | null;
  /** It says what its writer is to the child, in any language. */
  readonly saysWho: boolean;
  /** What it says of a rehearsal, in any language. */
  readonly rehearsal: RehearsalSaid | null;
}

/** Questions whose answer a sign beside it leaves as it is; what is asked about the child or its contents is asked again. */
const keptBesideSigns: ReadonlySet<QuestionKey | null> = new Set<QuestionKey | null>([
  'own-tube-in',
  'kit',
  'tube-in',
  'strips',
  'contents',
]);

function signsEvent(said: Said, signs: SignsHeard, heard: HeardBeside): Event | null {
  const { sure, near } = signs;
  if (sure.length + near.length === 0) return null;
  const asked = part(said, said.plain.replace(said.words.answers.noThermometer, ' | '));
  const settled = said.open.clarifying === 'sign' ? yesNo(asked) : null;
  if (sure.length === 0 && (saysOver(said) || (settled && 'value' in settled))) return null;
  const found = keptBesideSigns.has(said.open.asking) ? answerEvent(said, signs, heard) : null;
  const answer = found !== null && isAnswer(found) ? found : null;
  return { ...heard, type: 'signs', sure, near, ...(answer && { answer }) };
}

type AnswerRead = Extract<Event, { readonly type: `answer.${string}` }>;

const isAnswer = (event: Event): event is AnswerRead => 'value' in event;

/** Wishes to correct: facts in the text correct by themselves; else the answer to correct, as far as it is named. */
function correctionEvent(said: Said, heard: HeardBeside): Event | null {
  const correction = wishes.wantsCorrection(said);
  if (!correction || said.open.asking === 'confirm') return null;
  return tellsFacts(heard) ? { ...heard, type: 'told' } : { ...heard, type: 'correct', key: correction.key };
}

function tellsFacts({ told }: HeardBeside): boolean {
  return Object.keys(told).length > 0;
}

/** A "not" in "the pH was 6, not 5" corrects a fact told before; it is no answer to the open question. */
function correctsAnother(said: Said, answer: Event, beside: HeardBeside): boolean {
  const saysNo = !('value' in answer) || answer.value === 'no' || answer.value === 'unknown';
  if (said.open.asking === 'confirm' || !saysNo) return false;
  if (!tellsFacts(beside) && wishes.wantsCorrection(said) === null) return false;
  // "No wait, 7 kg not 17": both of its noes belong to the correction.
  const rest = withoutCorrection(said);
  const takesBack = rest !== said.plain || ('value' in answer && wishes.corrects(said));
  return takesBack && yesNo(part(said, rest), { strictNo: true }) === null;
}

/** Questions whose readers look at the signs denied themselves. */
const readsDenials: ReadonlySet<QuestionKey> = new Set<QuestionKey>(['unwell', 'after-in', 'first-feed', 'next-day']);

/** Questions that the kit or the strips are the matter of. */
const ofSupplies: ReadonlySet<QuestionKey> = new Set<QuestionKey>(['kit', 'strips', 'confirm']);

/** "Yes, but I don't have the kit": what is said of the kit answers no other question. */
function ownMatter(said: Said, asking: QuestionKey): Said {
  if (ofSupplies.has(asking)) return said;
  const { noKit, noStrips } = said.words.told;
  const own = said.clauses.filter((clause) => !noKit.test(clause) && !noStrips.test(clause));
  return own.length === 0 || own.length === said.clauses.length ? said : part(said, own.join('. '));
}

/** "No idea. Should I throw it out?": what they ask back beside a statement answers nothing. */
function withoutQuestions(said: Said): Said {
  const { question, echo, asksMeaning, asksAtEnd } = said.words.yesNo;
  const ended = said.plain.replace(asksAtEnd, '');
  const sentences = sentencesOf(ended === '' ? said.plain : ended);
  const asks = (one: string) => asksMeaning.test(one) || (one.includes('?') && (question.test(one) || echo.test(one)));
  const stated = sentences.filter((one) => !asks(one.trim()));
  const rest = stated.join('').trim();
  return rest === '' || rest === said.plain ? said : part(said, rest);
}

/** Questions about a tube that came out, or goes in. */
const ofTubeOut: ReadonlySet<QuestionKey> = new Set<QuestionKey>([
  'own-tube',
  'own-tube-in',
  'kit',
  'tube-in',
  'came-out',
]);

function readAnswer(said: Said, signs: SignsHeard, beside: HeardBeside, asking: QuestionKey): Event | null {
  const readFrom = readsDenials.has(asking) ? said : withoutQuestions(ownMatter(part(said, signs.rest), asking));
  return readers[asking](readFrom, signs, beside);
}

/** The answer given before, corrected; `now` is what the text says to the question that is asked. */
function correctionOfLast(said: Said, signs: SignsHeard, heard: HeardBeside, now: Event | null): Event | null {
  const { answered } = said.open;
  if (answered === null || tellsFacts(heard) || isQuestion(said)) return null;
  const isMeant = saysMeant(said);
  const unread = said.open.asking !== null && (now === null || now.type === 'unclear');
  if (!isMeant && !unread) return null;
  const before: Said = { ...said, open: { ...said.open, asking: answered, clarifying: null } };
  const answer = readAnswer(before, signs, heard, answered);
  if (answer === null) return null;
  return isMeant || canOnlyCorrect(said, answer) ? asCorrection(said, answer, heard) : null;
}

function answerEvent(said: Said, signs: SignsHeard, heard: HeardBeside): Event | null {
  const { asking, onTheWay } = said.open;
  if (asking === null) {
    if (onTheWay === true && saysNoWayThere(said)) return { ...heard, type: 'answer.arrived', value: 'no' };
    const arrived = onTheWay === true && !isQuestion(said) && saysArrived(said);
    if (arrived) return { ...heard, type: 'answer.arrived', value: 'yes' };
    return said.open.inUse === true && reportsWell(said, signs) ? { ...heard, type: 'smallTalk' } : null;
  }
  const beside = { ...heard, told: besideAnswer(heard.told, asking) };
  const inPlace = beside.told.inPlace !== undefined || beside.told.backIn !== undefined;
  // "It is in him, it never came out": no answer about a tube that did.
  if (inPlace && (ofTubeOut.has(asking) || isQuestion(said))) return { ...beside, type: 'told' };
  if (isQuestion(said)) return { ...beside, type: 'unclear', why: 'unreadable' };
  const answer = readAnswer(said, signs, beside, asking);
  if (answer && correctsAnother(said, answer, beside))
    return correctionEvent(said, beside) ?? { ...beside, type: 'told' };
  if (answer?.type === 'unclear' && inPlace) return { ...beside, type: 'told' };
  if (answer) return answer;
  return asking === 'tube-kind' && namesUnknownDevice(said) ? { ...beside, type: 'unknownDevice' } : null;
}

/** "Fed her, seems good", told before it is asked: nothing to answer. */
function reportsWell(said: Said, signs: SignsHeard): boolean {
  const found = said.plain.includes('?') || isQuestion(said) ? null : firstFeed(said, signs);
  return found !== null && 'value' in found && found.value === 'yes';
}

/** "Should I push?" has words of an answer and is none; "do you mean whole? yeah it's whole" goes on to answer. */
function isQuestion(said: Said): boolean {
  const { question, asksMeaning, plainNo, yes } = said.words.yesNo;
  const rest = withoutQuestions(said).plain;
  const answers = asksMeaning.test(said.plain) || rest.search(plainNo) === 0 || rest.search(yes) === 0;
  return question.test(answers ? rest : said.plain);
}

/** What is left when the text answers nothing: facts, a person, small talk, or nothing to be read. */
function otherEvent(said: Said, heard: HeardBeside, about: About): Event {
  if (Object.keys(heard.told).length > 0 || (!said.open.caseOpen && about === 'tube'))
    return { ...heard, type: 'told' };
  if (heard.person) return { ...heard, type: 'person' };
  // What was said last answers these; in use nothing but pleasantries passes unread.
  const asksBack =
    said.open.asking === null && said.open.inUse !== true && said.words.wishes.answeredAlready.test(said.plain);
  if (!said.open.caseOpen || wishes.isSmallTalk(said) || asksBack) return { ...heard, type: 'smallTalk' };
  return { ...heard, type: 'unclear', why: 'unreadable' };
}

function eventOf({ said, others, raw, named }: Heard, signs: SignsHeard, about: About): Event {
  // Later texts say what cannot wait as an event of their own; a first text opens the case with it.
  const inFirstText = said.open.caseOpen ? null : wishes.cannotWait(said, raw);
  const told = {
    ...gatherTold(said),
    ...childrenTold(named, said),
    ...notOnFileTold(raw, said),
    ...(inFirstText !== null && { cannotWait: inFirstText }),
  };
  const heard = {
    told,
    person: [said, ...others].some(wishes.wantsPerson),
    corrects: wishes.corrects(said) || named.corrects || told.ph !== undefined,
  };
  const danger = signsEvent(said, signs, heard);
  if (danger) return danger;
  if (!said.open.caseOpen) return otherEvent(said, heard, about);
  const correctsWhen = heard.corrects && told.cameOutAtMs !== undefined && !said.words.wishes.again.test(said.plain);
  if (wishes.cameOutAgain(said) && !correctsWhen) return { ...heard, type: 'outAgain' };
  if (wishes.hasTubeProblem(said)) return { ...heard, type: 'tubeProblem' };
  const what = said.open.asking === 'fed-lately' ? null : wishes.cannotWait(said, raw);
  if (what !== null) return { ...heard, type: 'cannotWait', what };
  if (said.open.halfOut === true && said.open.asking !== 'tube-kind' && deniesHalfOut(said))
    return { ...heard, type: 'correct', key: 'tube-kind' };
  const repeat = wishes.wantsRepeat(said);
  if (repeat) return { ...heard, type: 'repeat', step: repeat.step };
  const answer = answerEvent(said, signs, heard);
  const ofLast = correctionOfLast(said, signs, heard, answer);
  if (ofLast) return ofLast;
  if (answer && answer.type !== 'unclear') return answer;
  return heard.person
    ? { ...heard, type: 'person' }
    : (correctionEvent(said, heard) ?? answer ?? otherEvent(said, heard, about));
}

/** A text as it is read: in its own language, and beside it in the others that are on. */
interface Heard {
  readonly said: Said;
  readonly others: readonly Said[];
  readonly raw: string;
  readonly named: Named;
}

/** Whether every word of a text is one of its language's own: nothing in it can mean anything in another. */
function isOwn({ plain, words }: Said): boolean {
  return wordsOf(plain).every((word) => words.language.ownWords.has(word) || /^\d/.test(word));
}

/** A text clearly written in another language that is on is read in that. */
function hearAll(text: string, open: Open, writtenIn: LanguageCode | null): Heard {
  const on = open.languages ?? languageCodes;
  const language = writtenIn !== null && on.includes(writtenIn) ? writtenIn : open.language;
  const named = namedBy(text, open, language);
  const raw = named.corrects ? named.rest : text;
  const said = hear(raw, open, language);
  const others = isOwn(said) ? [] : on.filter((code) => code !== language);
  return { said, others: others.map((code) => hear(raw, open, code)), raw, named };
}

/** Questions that a child's name answers, alone or after a no. */
const namesAnswer: ReadonlySet<QuestionKey | null> = new Set<QuestionKey | null>(['which-child', 'confirm']);

/** Which of the family's children the text names, before any spelling is mended. */
function namedBy(text: string, { children = [], asking }: Open, language: LanguageCode): Named {
  const words = lexicons[language];
  const cleaned = (written: string) => clean(written, words.grammar.marks);
  if (children.length === 0) return { children: [], corrects: false, rest: text };
  const names = children.map(cleaned);
  const named = namedIn(cleaned(text), names, namesAnswer.has(asking), words);
  if (asking !== 'which-child' || named.children.length > 0 || named.corrects) return named;
  const meant = saysNone(cleaned(text), words) ? null : childMeant(cleaned(text), names, words);
  return meant === null ? named : { ...named, children: [meant] };
}

/** Reads one text. Never throws; at most 1,600 characters are read. */
export function read(text: string, open: Open): Reading {
  const keyword = carrierKeyword(text);
  const nothingElse = { told: {}, person: false, corrects: false };
  const again = { ...nothingElse, type: 'repeat', step: null } as const;
  const wish = languageWish(text);
  const writtenIn = detectLanguage(text);
  const language = { wantsLanguage: wish?.wanted ?? null, writtenIn };
  const plainly = { ...language, saysWho: false, rehearsal: null };
  if (keyword === 'start') return { event: again, about: 'start', ...plainly };
  if (keyword) return { event: { ...nothingElse, type: keyword }, about: 'other', ...plainly };
  // A wish for a language and nothing else: the last question once more, in that.
  if (wish?.rest === '' && open.caseOpen) return { event: again, about: 'other', ...plainly };
  const heard = hearAll(wish?.rest ?? text, open, writtenIn);
  const signs = hearSigns(heard.said, heard.others);
  const about = aboutOf(heard.said, signs);
  // "No despierta bien": too short to tell its language by its words, but its danger is said in one.
  const saidIn = writtenIn ?? languageCodes.find((code) => lexicons[code] === signs.heardIn) ?? null;
  const rest = { writtenIn: saidIn, saysWho: saysWho(text), rehearsal: rehearsalSaid(text, about === 'tube') };
  return { event: eventOf(heard, signs, about), about, ...language, ...rest };
}
