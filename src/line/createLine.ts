/** Puts the line together: hears, carries, fires, and comes back by itself while it runs. */
import { LineStopping } from '#src/errors.ts';
import { mailHandovers } from '#src/handover/mail.ts';
import { alarmCause } from './alarm.ts';
import { findCall } from './callPlan.ts';
import { hearCall } from './calls.ts';
import { enrolledFamilies, enrolOn } from './families.ts';
import { settleUnsure } from './fates.ts';
import { hearText } from './inbound.ts';
import { createLogReader } from './inboundLog.ts';
import { type KeyAnswer, pressInNewestCall, pressKey } from './keys.ts';
import type { HeardText, Line } from './line.ts';
import { fetchMedia, openMedia } from './media.ts';
import { createOutbox } from './outbox.ts';
import type { Parts } from './parts.ts';
import { pauseNow } from './pause.ts';
import { advanceClock, resetPractice, startPracticeClock } from './practice.ts';
import { keepProtocol } from './protocols.ts';
import { createQueues } from './queues.ts';
import { phonesOf } from './reach.ts';
import { newestCase, sentBecauseOf, thread } from './reports.ts';
import { startScheduled } from './scheduled.ts';
import { takeCall } from './takeCall.ts';
import { fireDue } from './timers.ts';

/** Twice a second, so that nothing due is a second late though a sweep has much to fire. */
const sweepMs = 500;
/** Cases whose timers fire side by side on a live line; a practice line fires one after the other, in order. */
const liveLanes = 4;

/** A line over a migrated database. Call `start` before the first text. */
export function createLine(parts: Parts): Line {
  const outbox = createOutbox(parts);
  const queues = createQueues();
  const lanes = parts.kind === 'live' ? liveLanes : 1;
  let sweep: NodeJS.Timeout | undefined;
  let stopping = false;

  /** Settling, moving the clock and going back to the seeds follow each other. */
  const alone = <T>(work: () => Promise<T>): Promise<T> => queues.inOrder('settling', work);

  const settle = (cause: string): Promise<void> =>
    alone(async () => {
      await fireDue(parts, cause, lanes);
      await fetchMedia(parts, cause);
      await outbox.carry();
    });

  const hear = (text: HeardText): Promise<void> => {
    if (stopping) return Promise.reject(new LineStopping());
    // In this process a phone's texts follow each other in the order they came; between processes its row's lock does.
    return queues.inOrder(text.from, async () => {
      await hearText(parts, text);
      outbox.kick();
      if (parts.kind === 'live' && (text.media?.length ?? 0) > 0) background('fetching', fetching);
    });
  };
  const pressed = (number: string, work: () => Promise<KeyAnswer>): Promise<KeyAnswer> =>
    queues.inOrder(number, async () => {
      const answer = await work();
      outbox.kick();
      return answer;
    });

  const fetching = async (): Promise<void> => {
    await fetchMedia(parts, 'media');
    outbox.kick();
  };
  const readLog = createLogReader(parts, hear);

  /** Timers never wait for a carrier: what they queue is carried in the background. */
  const wake = (): void => {
    if (stopping) return;
    background('firing', async () => {
      await fireDue(parts, alarmCause, lanes, outbox.kick);
      outbox.kick();
    });
    background('looking up', async () => {
      await settleUnsure(parts);
      outbox.kick();
    });
    background('fetching', fetching);
    background('reading the log', readLog);
    background('mailing', () => mailHandovers(parts));
  };

  const background = (name: string, work: () => Promise<void>): void => {
    queues
      .once(name, work)
      .catch((error: unknown) => parts.log.error({ error, work: name }, 'failed; the next sweep tries again'));
  };

  return {
    hear,
    pressKey: (key) => pressed(key.number, () => pressKey(parts, key)),
    pressInNewestCall: (key) => pressed(key.number, () => pressInNewestCall(parts, key)),
    hearCall: (call) => {
      if (stopping) return Promise.reject(new LineStopping());
      return queues.inOrder(call.from ?? call.id, async () => {
        const plan = await hearCall(parts, call);
        outbox.kick();
        return plan;
      });
    },
    keptCall: (id) => findCall(parts.database, parts.seal, id),
    takeCall: (key) =>
      queues.inOrder(`call ${key.id}`, async () => {
        const connected = await takeCall(parts, key);
        outbox.kick();
        return connected;
      }),
    openMedia: (token) => openMedia(parts, parts.database, token),
    settle,
    sentBecauseOf: (cause) => sentBecauseOf(parts, cause),
    thread: (number) => thread(parts, number),
    newestCase: (number) => newestCase(parts, number),
    advance: (toMs, cause) => alone(() => advanceClock(parts, outbox, toMs, cause)),
    now: () => parts.clock.now(parts.database),
    pause: () => pauseNow(parts.database, parts.seal),
    enrol: (number, family) =>
      parts.database.transaction(async (client) =>
        enrolOn(parts, client, await parts.clock.now(client), number, family),
      ),
    families: async () =>
      (await enrolledFamilies(parts, parts.database)).map(({ number, file }) => ({ number, child: file.child })),
    reset: (nowMs, seeds) => alone(() => resetPractice(parts, nowMs, seeds)),
    noteFate: async (messageId, fate, carrierId) => {
      if (/^[0-9]{1,15}$/.test(messageId)) await outbox.note(Number(messageId), fate, carrierId);
    },
    start: async () => {
      await keepProtocol(parts.database, parts.protocol);
      if (parts.kind === 'practice') {
        await startPracticeClock(parts);
        await outbox.releaseAll();
      }
      await knowNurses(parts);
      await startScheduled(parts, parts.database, await parts.clock.now(parts.database));
      await settle('start');
      if (parts.kind === 'practice') return;
      await parts.alarm.start(wake);
      sweep = setInterval(wake, sweepMs);
    },
    stop: async () => {
      stopping = true;
      clearInterval(sweep);
      await parts.alarm.stop();
      await queues.empty();
      await outbox.stop();
    },
  };
}

/** The rows of everybody on the rota exist before the first page: two turns never wait for each other over making one. */
async function knowNurses(parts: Parts): Promise<void> {
  const numbers = parts.nurses.map((nurse) => nurse.number);
  await phonesOf(parts.database, parts.seal, [...numbers, parts.protocol.site.fallbackNumber], 0);
}
