/** English: answers to what a nurse texts, one line each. */
import type { Resting } from '#machines/effects.ts';
import type { LanguageCode, PageReason } from '#machines/facts.ts';
import type { NurseCatalogue } from '../catalogue.ts';
import type { CaseDetails, CaseName, Fact } from '../nurseSays.ts';
import { clip, plainName, plainText, spoken } from '../plain.ts';
import { dates, number, time, tubeKindNames } from './facts.ts';
import { dispositionNames, reasonNames } from './nurseNames.ts';

type ReplyKey =
  | 'stands'
  | 'passed'
  | 'which'
  | 'noCase'
  | 'notYours'
  | 'heldBy'
  | 'takenOn'
  | 'noSuchCase'
  | 'more'
  | 'moreSaid'
  | 'sendInConfirm'
  | 'sentIn'
  | 'sentInAlready'
  | 'factConfirm'
  | 'factTaken'
  | 'factNot'
  | 'told'
  | 'notSent'
  | 'tellTooLong'
  | 'tellConfirm'
  | 'reply'
  | 'calling'
  | 'bridgeCall'
  | 'familyRings'
  | 'callThrough'
  | 'callWords'
  | 'mediaCame'
  | 'clearedByOther'
  | 'reported';

export const languageNames: Readonly<Record<LanguageCode, string>> = { en: 'English', es: 'Spanish', fr: 'French' };

export function nameChild(child: string | null): string {
  return plainName(child) ?? 'Unnamed child';
}

export function nameCase({ child, code }: CaseName): string {
  return `${nameChild(child)} (${code})`;
}

function nameFact({ tubeKind, firstPlaced, weight }: Fact): string {
  if (tubeKind !== undefined) return tubeKindNames[tubeKind];
  if (firstPlaced !== undefined && firstPlaced !== 'unknown') return `first placed ${dates(firstPlaced)}`;
  return weight !== undefined && weight !== 'unknown' && 'kg' in weight ? `weight ${number(weight.kg)} kg` : 'no fact';
}

/** What her own text calls a nurse for. */
function newReasons(raised: readonly PageReason[], paged: boolean): string {
  const names = raised.map((reason) => reasonNames[reason]).join(', ');
  return paged
    ? `New and graver: ${names}. Everybody is called afresh: TAKE if you keep it.`
    : `New: ${names}. You still have it.`;
}

const yesOrNo = '\nReply YES or NO.';
const mostFreeWords = 60;
const mostFamilyWords = 220;

/** What is not known is left out, but for what she has to know that nobody knows. */
function details(known: CaseDetails): string {
  const filed = (name: string, value: string | number | null, unit = '') =>
    value === null
      ? []
      : [`${name} ${typeof value === 'number' ? number(value) : clip(plainText(value), mostFreeWords)}${unit}`];
  const told = (name: string, value: boolean | null) => (value === null ? [] : [`${name} ${value ? 'YES' : 'no'}`]);
  const { insertedHow } = known;
  return [
    ...(known.born === null ? [] : [`born ${dates({ earliest: known.born, latest: known.born })}`]),
    ...(known.firstPlaced === null ? [] : [`first placed ${dates(known.firstPlaced)}`]),
    ...filed('chart ...', known.chartLast4),
    ...filed('tube', known.tubeSize),
    ...filed('stem', known.stemLengthCm, ' cm'),
    ...filed('fill', known.fillVolumeMl, ' mL'),
    ...filed('weight', known.weightKg, ' kg'),
    ...(insertedHow === null ? [] : [insertedHow === 'hard' ? 'HARD to get in' : 'went in easily']),
    `tries failed ${known.failedTries}`,
    `fed in the last hour: ${known.fedLately ?? 'not asked'}`,
    ...told('acid reducer', known.acidReducer),
    ...(known.latexAllergy === null ? ['latex allergy not said'] : told('latex allergy', known.latexAllergy)),
    ...filed("can't wait:", known.cannotWait),
    `family ${known.caregiver}, ${languageNames[known.language]}`,
  ].join('; ');
}

export const replies: Pick<NurseCatalogue, ReplyKey> = {
  stands: ({ disposition, tubeIn, ...name }) => {
    const allowed = `${tubeIn === 'own' ? 'own' : 'temporary'} tube in use. Reading passed, secured; feed slowly, watched. I ask after the first feed.`;
    const stands: Readonly<Record<Resting, string>> = {
      use: allowed,
      'own-tube': allowed,
      'go-in': 'told to go in, nothing through the tube. Ring the emergency department ahead.',
      emergency: 'told to call the emergency number. Ring the family.',
      hold: 'told to put nothing through the tube and to wait for you: TELL or CALL.',
      nurse: 'told to wait for you: TELL or CALL.',
    };
    return `${nameCase(name)}: ${stands[disposition]}`;
  },
  passed: ({ already, ...name }) =>
    already
      ? `${nameCase(name)}: the page had gone on from you already.`
      : `${nameCase(name)}: passed on. The next person is called now.`,
  which: ({ word, cases }) => `Which? Text ${word} and the code: ${cases.map(nameCase).join(', ')}.`,
  noCase: () => 'No open case of yours.',
  notYours: ({ nurse, ...name }) =>
    `${nurse} has ${nameCase(name)} now. Nothing was changed. To take it over: TAKE ${name.code}.`,
  heldBy: ({ nurse, sinceMs, mayTake, ...name }, scene) =>
    `${nurse} has ${nameCase(name)} since ${time(sinceMs, scene)}. MORE ${name.code} shows it. ` +
    (mayTake
      ? `Take it over? ${nurse} and the family are told.${yesOrNo}`
      : `You are not on call: ${nurse} can PASS it.`),
  takenOn: ({ nurse, ...name }) => `${nurse} has ${nameCase(name)} now. The family is told.`,
  noSuchCase: ({ code, cases }) =>
    `No open case ${code} of yours, so nothing was changed. ${cases.length === 0 ? '' : `Yours: ${cases.map(nameCase).join(', ')}.`}`.trim(),
  more: ({ child, code, ...known }) => `${nameCase({ child, code })}: ${details(known)}.`,
  moreSaid: ({ texts, ...name }) => {
    const most = Math.floor(mostFamilyWords / Math.max(1, texts.length));
    return `${nameCase(name)} wrote: ${texts.map((text) => `"${clip(plainText(text), most)}"`).join(' ')}`;
  },
  sendInConfirm: (name) =>
    `Send ${nameCase(name)} to the emergency department? The tube is then not used tonight.${yesOrNo}`,
  sentIn: (name) => `${nameCase(name)}: told to go in. Ring the emergency department ahead.`,
  sentInAlready: ({ disposition, ...name }) =>
    `${nameCase(name)}: ${disposition === 'emergency' ? 'told to call the emergency number' : 'told to go in'} already.`,
  factConfirm: ({ fact, ...name }) => `${nameCase(name)}: correct to ${nameFact(fact)}?${yesOrNo}`,
  factTaken: ({ fact, asked, told, raised, paged, ...name }) =>
    [
      `${nameCase(name)}: ${nameFact(fact)} ${asked ? 'would allow more, so the family is asked again' : 'noted; decided anew'}.`,
      ...(told === null ? [] : [`Family told: ${dispositionNames[told]}.`]),
      ...(raised.length === 0 ? [] : [newReasons(raised, paged)]),
    ].join(' '),
  factNot: () =>
    "I can correct these: FACT TUBE GJ (or G, J), FACT FIRST PLACED and a date, FACT WEIGHT and kg or lb. A reading is the family's to tell.",
  told: (name) => `Sent to the family of ${nameCase(name)}. Their replies come to you for an hour.`,
  notSent: (name) => `${nameCase(name)}: the family opted out of texts, so nothing was sent. CALL puts you through.`,
  tellTooLong: ({ most }) => `Too long: at most ${most} characters. Nothing was sent.`,
  tellConfirm: ({ language, ...name }) =>
    `${nameCase(name)}: the family reads ${languageNames[language]}. I do not translate. CALL puts you through: bring an interpreter in. ` +
    `Or YES sends it as it is.\nReply CALL, YES or NO.`,
  reply: ({ words, ...name }) => `${nameCase(name)} family: "${clip(plainText(words), mostFamilyWords)}"`,
  calling: (name) =>
    `I ring you now and put you through to the family of ${nameCase(name)}. Neither sees the other's number.`,
  bridgeCall: ({ child }) =>
    `This is the feeding tube line. Press 1 to be put through to the family of ${nameChild(child)}.`,
  familyRings: ({ family }) =>
    `This is the feeding tube line. ${family === null ? 'A caller whose number is withheld' : `The family of ${nameChild(family.child)}`} ` +
    'is on the telephone and waits for you. Press 1 to take the call.',
  callThrough: ({ child }, { site }) =>
    `If a child is in danger, hang up and call ${spoken(site.emergencyNumber)}. I put you through to the family of ` +
    `${nameChild(child)} now.`,
  callWords: ({ cases }, { site }) =>
    `If a child is in danger, hang up and call ${spoken(site.emergencyNumber)}. ` +
    `${cases === 0 ? 'You have no case now' : `You have ${cases} cases now`}. Hang up, and text me one of these words: ` +
    'take, more, or call, with the code of the case.',
  mediaCame: ({ sound, link, ...name }) =>
    link === null
      ? `${nameCase(name)}: the family sent a picture or voice note that I could not keep. Ask them for it again, or ring them.`
      : `${nameCase(name)}: a ${sound ? 'voice note' : 'picture'} from the family, never a pH reading. Opens for an hour: ${link}`,
  clearedByOther: ({ nurse, ...name }) => `${nurse} has cleared ${nameCase(name)}.`,
  reported: (name) => `${nameCase(name)}: kept for review as it is. Thank you.`,
};
