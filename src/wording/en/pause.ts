/** English: the line paused and resumed by a nurse lead's text. */
import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/settings.ts';
import type { NurseCatalogue } from '../catalogue.ts';
import type { PauseKey, PauseShown } from '../nurseSays.ts';
import { plainName } from '../plain.ts';

function since({ by, atMs }: PauseShown, site: Site): string {
  const at = DateTime.fromMillis(atMs, { zone: site.timeZone, locale: 'en' }).toFormat('ccc d LLL HH:mm');
  return `by ${plainName(by) ?? 'somebody'}, ${at}`;
}

export const pause: Pick<NurseCatalogue, PauseKey> = {
  pauseConfirm: ({ open }) =>
    `Pause the line? No family gets advice then: each text gets the emergency number, nothing through the tube, and a page to ` +
    `everybody on call. Open cases now: ${open}.\nReply YES or NO.`,
  resumeConfirm: (shown, { site }) =>
    `Paused ${since(shown, site)}. Let the line give advice again? Cases it gave to a person stay with her until she closes them.` +
    '\nReply YES or NO.',
  pausedNow: (shown, { site }) =>
    `The line is PAUSED, ${since(shown, site)}. It gives no advice until a lead texts RESUME THE LINE. Ring your open families.`,
  resumedNow: () => 'The line gives advice again. Close the cases it gave to you once you have seen to them.',
  pausedAlready: (shown, { site }) => `The line is paused already, ${since(shown, site)}. RESUME THE LINE ends it.`,
  notPaused: () => 'The line is not paused.',
  pauseLeads: ({ leads }) =>
    leads.length === 0
      ? 'Nobody on the rota may pause the line by text. Nothing was changed: whoever runs it has a command for it.'
      : `Only a lead may: ${leads.map((name) => plainName(name) ?? 'unnamed').join(', ')}. Nothing was changed.`,
  pausedNoAdvice: (shown, { site }) =>
    `The line is paused, ${since(shown, site)}, and advises nobody. Nothing was changed. CALL puts you through to the family.`,
};
