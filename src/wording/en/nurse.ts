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
function nameReasons({ reasons, dangerSigns }: Pick<NursePage, 'reasons' | 'dangerSigns'>, most = mostReasons): string {
  const gravity = (reason: PageReason) => pageLevels.indexOf(levelOf[reason]);
  const gravestFirst = [...reasons].sort((a, b) => gravity(b) - gravity(a));
  const named = gravestFirst
    .slice(0, most)
    .map((reason) => (reason === 'danger-sign' ? nameDanger(dangerSigns) : reasonNames[reason]));
  const rest = reasons.length - named.length;
  return [...named, ...(rest > 0 ? [`${rest} more`] : [])].join('; ');
}

/** A plain yes to the list of signs names none. */
function nameDanger(dangerSigns: readonly Sign[]): string {
  const names = dangerSigns.slice(0, mostSigns).map((sign) => signNames[sign]);
  return [reasonNames['danger-sign'], ...(names.length > 0 ? [names.join(', ')] : [])].join(': ');
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

function background(page: NursePage): string {
  return [
    // A tube that never came out was not asked about.
    ...(page.inside === 'in-place' && page.tubeKind === null ? [] : [kindName(page.tubeKind)]),
    ...(page.tract === null ? [] : [tractNames[page.tract]]),
    ...(page.firstPlaced === null ? [] : [`first placed ${dates(page.firstPlaced)}`]),
    ...(page.minutesOut === null ? [] : [timeOut(page.minutesOut)]),
  ].join(', ');
}

function assessment(page: NursePage): string {
  return [
    insideNames[page.inside],
    ...(page.ph === null ? [] : [`pH ${number(page.ph)}`]),
    ...(page.disposition === null ? [] : [`told: ${dispositionNames[page.disposition]}`]),
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

function pageText(page: NursePage): string {
  return (
    `${page.again ? 'AGAIN ' : ''}${page.level.toUpperCase()} ${nameCase(page)}: ${nameReasons(page, page.cannotWait === null ? mostReasons : 1)}. ` +
    `${page.gap ? 'NO ONE ON ROTA. ' : ''}` +
    `${background(page)}. ${assessment(page)}. Family ${page.caregiver}.${request(page)}\nReply TAKE, PASS or MORE`
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
    const fits = [page, undated].map(pageText).find(({ length }) => length <= twoSegments);
    return fits ?? pageText({ ...undated, dangerSigns: [] });
  },
  pageCall: (page) =>
    `This is the feeding tube line${page.again ? ', calling again' : ''}, with a page at level ${page.level}. ` +
    `${page.gap ? 'The rota names nobody now, so it comes to you. ' : ''}` +
    `${nameChild(page.child)}: ${nameReasons(page)}. ${background(page)}. ${assessment(page)}.${page.clearable ? ' It waits for your clearance.' : ''} ` +
    'The details are in your texts. To take this page, press 1, or reply to the text with the word take.',
  news: ({ level, reason, ph, disposition, ...name }) =>
    `${level.toUpperCase()} news on ${nameCase(name)}: ${reasonNames[reason]}. ` +
    `${ph === null ? '' : `pH ${number(ph)}. `}${disposition === null ? '' : `Family told: ${dispositionNames[disposition]}. `}You have this case.`,
  taken: ({ cases, clear }) =>
    `You have ${cases.map(nameCase).join(', ')}. The family is told. To reach them: TELL and your words, or CALL. ` +
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
