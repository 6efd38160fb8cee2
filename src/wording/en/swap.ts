/** English: a swap of a time on call, asked for, agreed on or not. */
import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/settings.ts';
import type { NurseCatalogue } from '../catalogue.ts';
import type { SwapKey } from '../nurseSays.ts';
import { plainName } from '../plain.ts';

function span(fromMs: number, toMs: number, site: Site): string {
  const [from, to] = [fromMs, toMs].map((ms) =>
    DateTime.fromMillis(ms, { zone: site.timeZone, locale: 'en' }).toFormat('ccc d LLL HH:mm'),
  );
  return `${from} to ${to}`;
}

function named(name: string): string {
  return plainName(name) ?? 'the other nurse';
}

export const swap: Pick<NurseCatalogue, SwapKey> = {
  swapAsk: ({ asker, fromMs, toMs }, { site }) =>
    `${named(asker)} asks you to swap, ${span(fromMs, toMs, site)}: you take ${named(asker)}'s place on call then, ` +
    `and ${named(asker)} takes yours if you have one.\nReply YES SWAP or NO SWAP`,
  swapAsked: ({ other, fromMs, toMs }, { site }) =>
    `Asked ${named(other)} to swap, ${span(fromMs, toMs, site)}. Nothing is changed until ${named(other)} says yes.`,
  swapAgreed: ({ other, fromMs, toMs }, { site }) =>
    `Swapped, ${span(fromMs, toMs, site)}: you and ${named(other)} stand in each other's place on call.`,
  swapRefused: ({ other }) => `${named(other)} cannot swap. Nothing is changed: you stay on call as before.`,
  swapDeclined: ({ asker }) => `No swap. ${named(asker)} is told.`,
  swapNobody: ({ other }) => `Nothing is changed: neither you nor ${named(other)} is on call then.`,
  swapForm: () =>
    'Nothing is changed. To swap, text for example: SWAP TONIGHT WITH and a first name, or SWAP FRIDAY NIGHT WITH and a first name.',
};
