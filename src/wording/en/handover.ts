/** English: the morning handover as a text, its two segments given first to the counts, then to the cases that press, by name. */
import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/settings.ts';
import type { NurseCatalogue } from '../catalogue.ts';
import type { HandoverKey, HandoverText } from '../nurseSays.ts';
import { dispositionNames } from './nurseNames.ts';
import { nameCase } from './nurseReplies.ts';

function siteTime(atMs: number, site: Site): string {
  return DateTime.fromMillis(atMs, { zone: site.timeZone, locale: 'en' }).toFormat('ccc HH:mm');
}

/** Two segments of plain characters, 153 each (3GPP TS 23.040, 9.2.3.24.1). */
const mostCharacters = 306;

function counted(count: number, one: string, many: string): string[] {
  return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
}

function counts(handover: HandoverText): string {
  const { leastDaysLeft } = handover;
  const soonest =
    leastDaysLeft === null ? '' : leastDaysLeft < 0 ? ' (one overdue)' : ` (next due out in ${leastDaysLeft} d)`;
  return [
    ...counted(handover.cases, 'open case', 'open cases'),
    ...counted(handover.unanswered, 'PAGE UNANSWERED', 'PAGES UNANSWERED'),
    ...counted(handover.gaps, 'ROTA GAP in 24 h', 'ROTA GAPS in 24 h'),
    ...counted(handover.rechecks, 'recheck due', 'rechecks due'),
    ...counted(handover.tubes, 'temporary tube in', 'temporary tubes in').map((tubes) => `${tubes}${soonest}`),
    ...counted(handover.clearances, 'cleared', 'cleared'),
  ].join(', ');
}

function pressing({ pressing }: HandoverText, room: number): string {
  const all = pressing.map((one) => {
    const known = one.disposition === null ? 'being asked' : dispositionNames[one.disposition];
    const told = one.fault ? 'LINE FAULT' : known;
    return `${nameCase(one)}: ${told}${one.unanswered ? ', unanswered' : ''}.`;
  });
  const named: string[] = [];
  for (const [index, words] of all.entries()) {
    const left = all.length - index - 1;
    const more = left === 0 ? '' : ` ${left} more.`;
    if ([...named, words].join(' ').length + more.length + 1 > room)
      return `${named.join(' ')} ${all.length - index} more.`;
    named.push(words);
  }
  return named.join(' ');
}

function composed(opening: string, handover: HandoverText, ending: string): string {
  const start = `${opening} ${counts(handover)}.`;
  const room = mostCharacters - start.length - ending.length - 1;
  return [start, ...(handover.pressing.length === 0 ? [] : [pressing(handover, room).trim()])].join(' ') + ending;
}

export const handover: Pick<NurseCatalogue, HandoverKey> = {
  handover: (params, { site }) =>
    composed(`HANDOVER ${siteTime(params.atMs, site)}:`, params, '\nThe sheet has the rest. Reply GOT IT'),
  handoverAgain: (params, { site }) =>
    composed(
      `HANDOVER of ${siteTime(params.atMs, site)} NOT ACKNOWLEDGED by the day team:`,
      params,
      '\nRing them. Reply HANDOVER OK',
    ),
  handoverFailed: () =>
    'HANDOVER: it could not be put together. Look at every open case now, and tell whoever keeps the line.',
  handoverTaken: () => 'Noted: the handover is yours.',
  nothingHandedOver: () => 'No handover is waiting.',
};
