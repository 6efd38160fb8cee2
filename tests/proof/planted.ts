/** Wrong machines, each by one small edit; the proof has to catch every one. */
import type { Context } from '#machines/dislodgement/context.ts';
import type { Effect } from '#machines/effects.ts';
import type { PhReading } from '#machines/facts.ts';
import type { Say } from '#machines/says.ts';
import {
  type Fault,
  ignored,
  misheard,
  neverLeaves,
  pageDropped,
  provided,
  said,
  tampered,
  thrown,
  timerLost,
} from './faults.ts';
import { nurseFaults } from './plantedNurse.ts';

const dayMs = 86_400_000;
const dayEarlier = (date: string) => new Date(Date.parse(date) - dayMs).toISOString().slice(0, 10);

const comparisons: readonly Fault[] = [
  misheard('a tract of exactly the setting counts as usable', (event) =>
    event.type === 'answer.first-placed' && event.value !== 'unknown'
      ? { ...event, value: { ...event.value, latest: dayEarlier(event.value.latest) } }
      : event,
  ),
  readingHeard('a range counts at its lower end', ({ low }) => ({ low, high: low })),
  readingHeard('a reading at the limit passes', ({ low, high }) => ({ low, high: high === 6 ? 5.5 : high })),
  readingHeard('a reading between two steps counts as the lower', ({ low, high }) => ({
    low: Math.min(low, Math.floor(high * 2) / 2),
    high: Math.floor(high * 2) / 2,
  })),
  misheard('out exactly as long as allowed is told as out longer than it was', (event) =>
    event.type === 'answer.came-out' && event.value !== 'unknown' ? { ...event, value: event.at } : event,
  ),
];

function readingHeard(name: string, read: (reading: PhReading) => PhReading): Fault {
  return misheard(name, (event) => (event.type === 'answer.ph' ? { ...event, value: read(event.value) } : event));
}

const afterFeed = ({ placed }: Context) => placed !== null && placed.reading !== null && placed.reading.high <= 7;

const gates: readonly Fault[] = [
  provided('the tract and the kind are no gate', { guards: { mayBeUsed: () => true } }),
  provided('a tract too young is not seen', { guards: { tractTooYoung: () => false } }),
  provided('a hard insertion needs no nurse', { guards: { hardUncleared: () => false } }),
  provided('securing is skipped', { guards: { secured: () => true } }),
  provided('nobody asks how the child is', { guards: { afterInUnasked: () => false } }),
  provided('the own tube goes back whatever the tract', {
    guards: {
      ownTubeWorthAsking: ({ context }) => context.facts.ownTube === null,
      ownTubeGoesBack: ({ context }) => context.facts.ownTube === 'yes' && !context.ownTried,
    },
  }),
  provided('tries are not counted', { guards: { noTriesLeft: () => false } }),
  provided('the length is told without the weight', {
    guards: { weightUnasked: () => false, unitUnclear: () => false },
  }),
  {
    ...provided('a weight that hardly fits the age is believed at once', { guards: { weightInDoubt: () => false } }),
    world: 1,
  },
  provided('a kit nobody was shown counts', {
    guards: { kitIs: ({ context }, { kit }) => kit === context.facts.kit && kit !== 'not-shown' },
  }),
  provided('the danger signs are not waited for', { guards: { unwellUnasked: () => false, openingSaid: () => true } }),
  provided('the after-feed exception holds for a second reading', {
    guards: {
      readingIs: ({ context }, { verdict }) =>
        context.placed?.reading == null ? verdict === 'none' : verdict === (afterFeed(context) ? 'passed' : 'recheck'),
    },
  }),
  provided('the looks are not asked for', {
    guards: {
      readingIs: ({ context }, { verdict }) =>
        context.placed?.reading == null
          ? verdict === 'none'
          : afterFeed(context) && verdict === 'ask-feed' && context.placed.fedLately === null,
    },
  }),
  { ...provided('nobody asks which child it is', { guards: { childUnknown: () => false } }), world: 4 },
  { ...pageDropped('other-child'), world: 4 },
  { ...provided('a file nobody confirmed is believed', { guards: { fileUnconfirmed: () => false } }), world: 1 },
];

const forgets: readonly Fault[] = [
  provided('a tube that came out again keeps its reading', { actions: { noteOutAgain: () => {} } }),
  provided('a warning sign is not remembered', { actions: { noteWarning: () => {} } }),
  provided('an answer taken back still stands', { actions: { takeBack: () => {} } }),
  misheard('pain after the insertion is taken for none', (event) =>
    event.type === 'answer.after-in' ? { ...event, value: 'no' } : event,
  ),
  misheard('a reading sent early ends the wait', (event, { value }) =>
    event.type === 'told' && event.told.ph !== undefined && JSON.stringify(value) === '{"recheck":"waiting"}'
      ? { type: 'xstate.after.recheckAfter.dislodgement.recheck.waiting', at: event.at, clinicOpen: event.clinicOpen }
      : event,
  ),
  ignored(
    'a fact told while a tube is in use is not heard',
    (event, { outcome }) => event.type === 'told' && outcome?.to === 'use',
    { key: 'useStill', params: { tube: 'temporary' }, preface: [] },
  ),
  ignored(
    'a danger sign is not heard while contents are drawn',
    (event, { placed }) => event.type === 'signs' && placed?.contents === false && placed.afterIn === 'well',
    { key: 'askContents', params: { attempt: 1, newStrip: false }, preface: [] },
  ),
];

const lost: readonly Fault[] = [
  pageDropped('danger-sign'),
  pageDropped('warning-sign'),
  pageDropped('hard-insertion'),
  pageDropped('restricted-kind'),
  pageDropped('tract-nearly-too-young'),
  pageDropped('no-strips'),
  pageDropped('came-out-again'),
  pageDropped('stopped'),
  pageDropped('unread'),
  timerLost('the nudge about the strips is lost', 'quiet.dislodgement.placement.strips.open'),
  timerLost('the recheck is lost', 'recheckAfter'),
  timerLost('a hold never comes back', 'holdReview.dislodgement.close.hold'),
  tampered('the recheck is started twice', (outputs) => ({
    ...outputs,
    timers: outputs.timers.flatMap((timer) =>
      timer.start !== null && timer.id.includes('recheckAfter')
        ? [timer, { ...timer, id: `${timer.id}.again` }]
        : [timer],
    ),
  })),
  tampered('nothing follows a tube in use', (outputs) => ({ ...outputs, aftercare: null })),
  tampered('a picture is answered with silence', (outputs, event) =>
    event.type === 'media' ? { ...outputs, says: [] } : outputs,
  ),
  tampered('thanks end the case', (outputs, event) =>
    event.type === 'smallTalk' ? { ...outputs, closed: true } : outputs,
  ),
  thrown('a picture makes the turn throw', (event) => event.type === 'media'),
];

const messages: readonly Fault[] = [
  said('every child is told the longest length', 'insertMeasure', { lowCm: 4, highCm: 6 }),
  said('the balloon is filled with 10 mL', 'secureSteps', { flushMl: 5, balloonMostMl: 10, tube: 'temporary' }),
  said('the last try is not called the last', 'insertPutIn', { oneTry: false, stopAtAnyResistance: false }),
  tampered('the balloon is filled before the reading', (outputs) => ({
    ...outputs,
    says: outputs.says.flatMap((say): Say[] =>
      say.key === 'askPh'
        ? [{ key: 'secureSteps', params: { flushMl: 5, balloonMostMl: 5, tube: 'temporary' }, preface: [] }, say]
        : [say],
    ),
  })),
];

const pagingTimer = (effect: Effect, state: string) =>
  effect.type === 'startTimer' && effect.machine === 'paging' && effect.event.includes(state);

const climb: readonly Fault[] = [
  neverLeaves('the climb stops at the first person', (effect) => pagingTimer(effect, 'paging.climbing.first')),
  neverLeaves('the climb stops at the third person', (effect) => pagingTimer(effect, 'paging.climbing.third')),
  neverLeaves('the rounds stop', (effect) => pagingTimer(effect, 'paging.climbing.nobody.round')),
  neverLeaves('no call ever leaves', (effect) => effect.type === 'callNurse'),
  neverLeaves(
    'who was rung by the family is not noted',
    (effect) => effect.type === 'callNurse' && effect.by.length === 0,
  ),
  neverLeaves(
    'a family nobody answers is not told so',
    (effect) => effect.type === 'say' && (effect.say.key === 'pageUnanswered' || effect.say.key === 'goIn'),
  ),
];

const aftercareTimer = (effect: Effect, event: string) =>
  effect.type === 'startTimer' && effect.machine === 'aftercare' && effect.event.includes(event);

const follows: readonly Fault[] = [
  neverLeaves('no question follows a tube in use', (effect) => aftercareTimer(effect, 'untilNextQuestion')),
  neverLeaves('after the first feed no question follows', (effect) =>
    aftercareTimer(effect, 'untilNextQuestion.aftercare.inUse.questions.firstFeed'),
  ),
  neverLeaves('the days of the stay are not counted', (effect) => aftercareTimer(effect, 'untilStayMark')),
  neverLeaves('nobody asks whether they arrived', (effect) => aftercareTimer(effect, 'untilArrived')),
  neverLeaves('nobody asks what came of going in', (effect) => aftercareTimer(effect, 'untilOutcome')),
  neverLeaves('a nurse who lets a held case lie is not reminded', (effect) =>
    pagingTimer(effect, 'paging.taken.waits'),
  ),
  neverLeaves('a nurse asked anew who stays silent is left alone', (effect) =>
    pagingTimer(effect, 'paging.taken.asked.again'),
  ),
  neverLeaves('after the reminder nobody else is called', (effect) => pagingTimer(effect, 'paging.taken.reminded')),
];

export const faults: readonly Fault[] = [
  ...comparisons,
  ...gates,
  ...forgets,
  ...nurseFaults,
  ...lost,
  ...messages,
  ...climb,
  ...follows,
];
