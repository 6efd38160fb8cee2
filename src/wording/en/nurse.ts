/** English: texts and calls to a nurse's phone. Pages run situation, background, assessment, request. */
import { type PageReason, pageLevels, type Sign, type TubeKind } from '#machines/facts.ts';
import { levelOf } from '#machines/paging/levels.ts';
import type { Left } from '#machines/says.ts';
import type { NurseCatalogue } from '../catalogue.ts';
import type { HandoverKey, NurseOffer, NursePage, PauseKey, RehearsalKey, SwapKey } from '../nurseSays.ts';
import { clip, plainText } from '../plain.ts';
import { dates, number, tubeKindNames } from './facts.ts';
import { dispositionNames, insideNames, reasonNames, tractNames } from './nurseNames.ts';
import { languageNames, nameCase, nameChild, replies } from './nurseReplies.ts';
import { signNames } from './safety.ts';

/** A page stays within two segments; the whole of it is in the family's own text. */
const mostCannotWait = 33;

/** The first reasons by name, the rest by number: a page stays within two segments. */
const mostReasons = 2;

const mostSigns = 2;

/** The gravest reasons come first, whatever came to be known first. */
function nameReasons(
  { reasons, dangerSigns, warningSigns }: Pick<NursePage, 'reasons' | 'dangerSigns' | 'warningSigns'>,
  most = mostReasons,
): string {
  const gravity = (reason: PageReason) => pageLevels.indexOf(levelOf[reason]);
  const gravestFirst = [...reasons].sort((a, b) => gravity(b) - gravity(a));
  const named = gravestFirst
    .slice(0, most)
    .map((reason) => nameReason(reason, reason === 'danger-sign' ? dangerSigns : warningSigns));
  const rest = reasons.length - named.length;
  return [...named, ...(rest > 0 ? [`${rest} more`] : [])].join('; ');
}

/** A plain yes to the list of signs names none. */
function nameReason(reason: PageReason, signs: readonly Sign[]): string {
  const names = reason === 'danger-sign' || reason === 'warning-sign' ? signs.slice(0, mostSigns) : [];
  return [reasonNames[reason], ...(names.length > 0 ? [names.map((sign) => signNames[sign]).join(', ')] : [])].join(
    ': ',
  );
}

/** What the family's own words say better than the reason's name. */
const inWords: ReadonlySet<PageReason> = new Set<PageReason>([
  'unread',
  'unwell-unread',
  'danger-sign',
  'warning-sign',
  'not-well-after',
  'person-wanted',
  'tube-problem',
]);

const leastWords = 4;
const mostNewsWords = 120;

/** The family's words in quotes, in as much room as there is. */
function quoted(words: string | null, reasons: readonly PageReason[], room: number): string {
  const plain = plainText(words ?? '');
  const most = room - ' Wrote: "".'.length;
  const shown = plain.length >= leastWords && most >= 20 && reasons.some((reason) => inWords.has(reason));
  return shown ? ` Wrote: "${clip(plain, most)}".` : '';
}

function timeOut(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  // Days later the minutes no longer say anything.
  if (hours >= 48) return `out ${Math.floor(hours / 24)} days`;
  return hours === 0 ? `out ${minutes} min` : `out ${hours} h ${minutes % 60} min`;
}

function kindName(tubeKind: TubeKind | null): string {
  return tubeKind === null || tubeKind === 'unknown' ? 'Kind of tube unknown' : tubeKindNames[tubeKind];
}

/** Among the reasons that are named. */
const saysHard = ({ reasons }: NursePage) => reasons.length <= mostReasons && reasons.includes('hard-insertion');

const isIn = ({ inside }: NursePage) => inside === 'own' || inside === 'temporary';

function background(page: NursePage): string {
  return [
    // A tube that never came out was not asked about.
    ...(page.inside === 'in-place' && page.tubeKind === null ? [] : [kindName(page.tubeKind)]),
    ...(page.tract === null ? [] : [tractNames[page.tract]]),
    ...(page.firstPlaced === null ? [] : [`first placed ${dates(page.firstPlaced)}`]),
    ...(page.minutesOut === null ? [] : [`${isIn(page) ? 'was ' : ''}${timeOut(page.minutesOut)}`]),
  ].join(', ');
}

function told({ optedOut, disposition, cleared }: NursePage): string[] {
  if (optedOut) return ['OPTED OUT: phone them'];
  if (disposition === null) return [];
  return [disposition === 'hold' && cleared ? 'cleared, being secured' : `told: ${dispositionNames[disposition]}`];
}

function assessment(page: NursePage): string {
  return [
    `${insideNames[page.inside]}${page.hard && !saysHard(page) ? ', hard' : ''}`,
    ...(page.ph === null ? [] : [`pH ${number(page.ph)}`]),
    ...told(page),
    ...(page.cannotWait === null ? [] : [`can't wait: ${clip(plainText(page.cannotWait), mostCannotWait)}`]),
  ].join(', ');
}

/** What she adds to her own care: the family's language, a call ahead where the child goes in, a clearance where one is possible. */
function request({ language, disposition, clearable }: NursePage): string {
  return [
    ...(language === 'en' ? [] : [` Speaks ${languageNames[language]}.`]),
    ...(disposition === 'go-in' ? [' Ring ED ahead.'] : []),
    ...(clearable ? [' Wants CLEAR.'] : []),
  ].join('');
}

/** Two segments of GSM 7-bit characters: 3GPP TS 23.040. */
const twoSegments = 306;

function pageText(page: NursePage, wrote = ''): string {
  return (
    `${page.again ? 'AGAIN ' : ''}${page.level.toUpperCase()} ${nameCase(page)}: ${nameReasons(page, page.cannotWait === null ? mostReasons : 1)}. ` +
    `${page.gap ? 'NO ONE ON ROTA. ' : ''}` +
    `${background(page)}. ${assessment(page)}.${wrote} Family ${page.caregiver}.${request(page)}\nReply TAKE, PASS or MORE`
  );
}

/** Words that want more behind them. */
const offerNames: Partial<Readonly<Record<NurseOffer, string>>> = {
  TELL: 'TELL and your words',
  FACT: 'FACT and the right one',
  CLOSE: 'CLOSE and how it ended',
  PRACTICE: "PRACTICE and a child's name",
};

/** What she leaves behind: a hold outlives its case. */
const leftAs: Readonly<Record<Left, string>> = {
  'in-use': 'The family is told.',
  held: 'STILL ON HOLD: the family is told to put nothing through a tube till the clinic says so.',
  'go-in': 'The family is told to go in if it has not, and to put nothing through a tube.',
};

export const nurse: Omit<NurseCatalogue, HandoverKey | PauseKey | RehearsalKey | SwapKey> = {
  ...replies,
  page: (page) => {
    // The age of the tract says what its date would; MORE has the date, and the family's own words.
    const undated = { ...page, firstPlaced: null };
    const unsigned = { ...undated, dangerSigns: [], warningSigns: [], minutesOut: null };
    const shown = [page, undated].find((one) => pageText(one).length <= twoSegments) ?? unsigned;
    const quote = (one: NursePage) => quoted(one.words, one.reasons, twoSegments - pageText(one).length);
    const [best = shown] = [shown, undated, unsigned].filter((one) => quote(one) !== '');
    return pageText(best, quote(best));
  },
  pageCall: (page) =>
    `This is the feeding tube line${page.again ? ', calling again' : ''}, with a page at level ${page.level}. ` +
    `${page.gap ? 'The rota names nobody now, so it comes to you. ' : ''}` +
    `${nameChild(page.child)}: ${nameReasons(page)}. ${background(page)}. ${assessment(page)}.${page.clearable ? ' It waits for your clearance.' : ''} ` +
    'The details are in your texts. To take this page, press 1, or reply to the text with the word take.',
  news: ({ level, reason, ph, disposition, words, ...name }) =>
    `${level.toUpperCase()} news on ${nameCase(name)}: ${reasonNames[reason]}.${quoted(words, [reason], mostNewsWords)} ` +
    `${ph === null ? '' : `pH ${number(ph)}. `}${disposition === null ? '' : `Family told: ${dispositionNames[disposition]}. `}You have this case.`,
  taken: ({ cases, clear, optedOut }) =>
    `You have ${cases.map(nameCase).join(', ')}. ` +
    (optedOut.length === cases.length
      ? 'The family opted out and was told nothing: phone them, or CALL. '
      : `The family is told. To reach them: TELL and your words, or CALL. ${optedOut.length === 0 ? '' : `Opted out, phone them: ${optedOut.map(({ code }) => code).join(', ')}. `}`) +
    `${clear.length === 0 ? '' : `To let the family use the tube: CLEAR${cases.length === 1 ? '' : ` and ${clear.map(({ code }) => code).join(' or ')}`}. `}` +
    'When it is settled: CLOSE.',
  nothingToTake: () => 'No page is waiting for you.',
  clearConfirm: ({ child, tubeKind, ph, code }) =>
    `Clear ${nameCase({ child, code })}? ${kindName(tubeKind)}, hard insertion, ` +
    `${ph === null ? 'pH not known' : `pH ${number(ph)} passed`}. YES lets the family fill the balloon, secure it and use the tube.` +
    '\nReply YES or NO.',
  dropped: ({ why, ...name }) => {
    const reasons = {
      no: '',
      late: ' That yes came too late: text your word again.',
      unread: ' I did not read that as yes or no: text your word again.',
    };
    return `${nameCase(name)}: nothing was changed.${reasons[why]}`;
  },
  cleared: (name) => `Cleared. ${nameCase(name)}: the family now secures the tube.`,
  clearNotNow: ({ why, cases }) => {
    const names = cases.map(nameCase).join(', ');
    return {
      'nothing-held': 'Nothing to clear: no case of yours is on hold.',
      'not-hard': `${names} cannot be cleared by text. Only a hard insertion whose reading passed can.`,
      several: `More than one case could be cleared. Reply CLEAR and the code: ${names}.`,
    }[why];
  },
  closeConfirm: ({ followUp, left, ...name }) =>
    `Close ${nameCase(name)}? ${leftAs[left]} No more pages are sent.` +
    `${followUp ? ' My check-ups with the family end too.' : ''}\nReply YES or NO.`,
  closed: (name) => `Closed. ${nameCase(name)}: the family is told.`,
  notSure: ({ can }) =>
    can.length === 0
      ? 'Nothing was changed. No case waits for you.'
      : `Nothing was changed. You can text now: ${can.map((word) => offerNames[word] ?? word).join(', ')}.`,
  nothingPending: () => 'Nothing was changed.',
  stopped: () => 'You opted out, so pages may not reach this phone. Tell your team now who takes your calls.',
};
