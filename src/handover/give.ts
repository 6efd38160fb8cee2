/** Gives the handover: a short text to the day team, the sheet kept with it; and where nobody takes it, a text to whoever is on call. */
import type { Site } from '#machines/protocol/settings.ts';
import type { Parts } from '#src/line/parts.ts';
import { onCallNow, phonesOf } from '#src/line/reach.ts';
import type { Turn } from '#src/line/turn.ts';
import { writeMessages } from '#src/line/write.ts';
import { statement } from '#src/store/database.ts';
import type { HandoverText, NurseSay } from '#src/wording/nurseSays.ts';
import { gather } from './gather.ts';
import { type Handover, hasNews } from './handover.ts';
import { handoverSheet } from './sheet.ts';

const keep = statement('handover.keep', 'INSERT INTO handover (at_ms, sheet, mail) VALUES ($1, $2, $3)');
const unacknowledged = statement(
  'handover.unacknowledged',
  'SELECT at_ms FROM handover WHERE acknowledged_ms IS NULL AND id = (SELECT max(id) FROM handover)',
);

/** Hands over what there is; true where it now waits to be acknowledged. Nothing is sent where there is nothing to hand over. */
export async function giveHandover(parts: Parts, turn: Turn): Promise<boolean> {
  const { site } = parts.protocol;
  if (site.handoverNumber === undefined) return false;
  const handover = await gatherNow(parts, turn);
  if (!hasNews(handover)) return false;
  const sheet = handoverSheet(handover, site);
  await turn.client.query(keep, [turn.nowMs, parts.seal.seal(sheet), parts.mail === null ? 'none' : 'waiting']);
  await tell(parts, turn, site.handoverNumber, { key: 'handover', params: textOf(handover) });
  return true;
}

function gatherNow({ seal, rotaGaps, machines }: Parts, turn: Turn): Promise<Handover> {
  return gather({ seal, rotaGaps, viewCase: machines.viewCase }, turn.client, turn.nowMs);
}

/** Tells the first on call, or the fallback number, that the day team has not taken the last handover. */
export async function remindOfHandover(parts: Parts, turn: Turn): Promise<void> {
  const [row] = await turn.client.query<{ at_ms: number }>(unacknowledged);
  if (row === undefined) return;
  parts.log.error({ atMs: row.at_ms }, 'the day team has not acknowledged the handover');
  const [first] = await onCallNow(parts, turn.client, turn.nowMs);
  const handover = { ...(await gatherNow(parts, turn)), atMs: row.at_ms };
  const number = first?.number ?? parts.protocol.site.fallbackNumber;
  await tell(parts, turn, number, { key: 'handoverAgain', params: textOf(handover) });
}

/** Tells the day team that there is no handover to be had from the line. */
export async function tellOfFailure(parts: Parts, turn: Turn): Promise<void> {
  const number = dayTeam(parts.protocol.site);
  await tell(parts, turn, number, { key: 'handoverFailed', params: {} });
}

function dayTeam({ handoverNumber, fallbackNumber }: Site): string {
  return handoverNumber ?? fallbackNumber;
}

async function tell(parts: Parts, turn: Turn, number: string, say: NurseSay): Promise<void> {
  const body = parts.wordForNurse(say, { site: parts.protocol.site, nowMs: turn.nowMs });
  const phones = await phonesOf(turn.client, parts.seal, [number], 0);
  const messages = [...phones.values()].map(({ phoneId }) => ({ phoneId, kind: 'text' as const, body, urgent: false }));
  await writeMessages(parts.seal, turn, null, messages);
}

/** What the text has of it. */
export function textOf({ atMs, cases, tubes, gaps, clearances }: Handover): HandoverText {
  const counted = tubes.flatMap(({ daysLeft }) => daysLeft ?? []);
  return {
    atMs,
    pressing: cases
      .filter(({ severity }) => severity !== 'settled')
      .map(({ child, code, view, unanswered }) => ({
        child,
        code,
        disposition: view?.disposition ?? null,
        unanswered: unanswered !== null,
        fault: view === null,
      })),
    cases: cases.length,
    tubes: tubes.length,
    leastDaysLeft: counted.length === 0 ? null : Math.min(...counted),
    rechecks: cases.filter(({ due }) => due.some(({ what }) => what === 'recheck')).length,
    unanswered: cases.filter(({ unanswered }) => unanswered !== null).length,
    gaps: gaps.length,
    clearances: clearances.length,
  };
}
