/**
 * A picture or voice note fetched from the carrier: from its own hosts only, of a bounded size, of a kind a nurse can look at or
 * listen to. What it sends elsewhere is never followed.
 */
import type { MediaFate } from './port.ts';

/** Where the carrier keeps media behind the account, and where it sends on to, without the account. Source: its published API. */
const apiHost = 'api.twilio.com';
const mediaHosts: ReadonlySet<string> = new Set(['media.twiliocdn.com', 'mms.twiliocdn.com']);
const redirectsMost = 2;
export const bytesMost = 10_000_000;
const patienceMs = 30_000;

/** Pictures and sounds; a drawing in markup (SVG) can carry a program and is no photograph. */
const kinds = /^(?:image|audio)\/(?!svg)[a-z0-9.+-]{1,60}$/;

export interface Account {
  readonly accountSid: string;
  readonly authToken: string;
}

/** Never throws for what a network does. */
export async function download(get: typeof fetch, address: string, account: Account): Promise<MediaFate> {
  const first = URL.parse(address);
  const ours = `/2010-04-01/Accounts/${account.accountSid}/Messages/`;
  if (first === null || !isAt(first, (host) => host === apiHost) || !first.pathname.startsWith(ours))
    return { fate: 'refused', why: 'not at the carrier' };
  const secret = Buffer.from(`${account.accountSid}:${account.authToken}`).toString('base64');
  try {
    const signal = AbortSignal.timeout(patienceMs);
    let answer = await get(first.href, { redirect: 'manual', signal, headers: { Authorization: `Basic ${secret}` } });
    for (let hop = 0; hop < redirectsMost && isRedirect(answer); hop += 1) {
      const next = URL.parse(answer.headers.get('location') ?? '', first.href);
      if (next === null || !isAt(next, (host) => mediaHosts.has(host)))
        return { fate: 'refused', why: 'sent elsewhere' };
      answer = await get(next.href, { redirect: 'manual', signal });
    }
    return await kept(answer);
  } catch {
    return { fate: 'later' };
  }
}

function isAt({ protocol, hostname, port, username }: URL, known: (host: string) => boolean): boolean {
  return protocol === 'https:' && port === '' && username === '' && known(hostname);
}

const isRedirect = ({ status }: Response) => [301, 302, 303, 307, 308].includes(status);

/** The carrier may not have it yet, or be down, or not let us in while a token changes: all of that passes. */
async function kept(answer: Response): Promise<MediaFate> {
  if (!answer.ok) return isRedirect(answer) ? { fate: 'refused', why: 'sent elsewhere' } : { fate: 'later' };
  const type = (answer.headers.get('content-type') ?? '').split(';')[0]?.trim().toLowerCase() ?? '';
  if (!kinds.test(type)) return { fate: 'refused', why: 'neither picture nor sound' };
  const bytes = await bounded(answer);
  return bytes === null ? { fate: 'refused', why: 'too large' } : { fate: 'fetched', type, bytes };
}

/** Read no further than the bound, whatever its header says. */
async function bounded({ body }: Response): Promise<Buffer | null> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of body ?? []) {
    length += chunk.length;
    if (length > bytesMost) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
