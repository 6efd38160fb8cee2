/** One family's night on a line that may die: a page, its repeat, a picture, a danger, a fault, each taken by the nurse; told without what differs. */
import type { Made } from '#tests/carrier/double.ts';
import type { Stand } from './stand.ts';

const nurse = '+12125550151';
const minuteMs = 60_000;

/** What one family and the carrier saw, the same for every family that goes through the night unharmed. */
export interface Seen {
  readonly case: unknown;
  readonly thread: readonly string[];
  /** What the carrier was given because of this family, in the order of the line's own numbers. */
  readonly carried: readonly string[];
}

/** Plays the night from this phone; whatever dies on the way is brought back and the step is done again. */
export async function night(stand: Stand, phone: string): Promise<Seen> {
  const before = stand.double.made.length;
  const say = async (from: string, body: string) => {
    said += 1;
    await stand.text(from, body, `${phone}-${said}`);
    await stand.settled();
  };
  const show = async (picture: string) => {
    said += 1;
    await stand.picture(phone, picture, `${phone}-${said}`);
    await stand.settled();
  };
  let said = 0;
  await say(phone, 'my daughters g tube fell out 20 minutes ago, she got her first one two years ago');
  await say(phone, 'no shes fine');
  await say(phone, 'can i talk to a nurse please');
  await stand.advance(5 * minuteMs + 30_000); // the nudge of the silence, and the page's repeat
  await say(nurse, 'take');
  await show('stoma');
  await say(phone, 'she is blue and limp');
  await say(nurse, 'take');
  await say(nurse, 'close');
  await say(nurse, 'yes');
  const first = await look(stand, phone);
  await stand.fail(true);
  await say(phone, 'the g tube fell out again');
  await stand.fail(false);
  await say(nurse, 'take');
  await say(nurse, 'close');
  await say(nurse, 'yes');
  const { theCase, thread } = await look(stand, phone);
  return {
    case: [first.theCase, theCase].map((one) => withoutPlace(one, phone)),
    thread: (thread ?? []).map(({ direction, kind, body }) => plain(`${direction} ${kind} ${body}`, phone)),
    carried: stand.double.made
      .slice(before)
      .sort((a, b) => numberOf(a) - numberOf(b))
      .map(({ resource, form }) => plain(`${resource} ${form.To} ${form.Body ?? form.Twiml}`, phone)),
  };
}

async function look(stand: Stand, phone: string) {
  return stand.survive(() => stand.order({ order: 'look', phone }));
}

/** Our own number of the message, from the address its news come back to. */
function numberOf({ form }: Made): number {
  return Number(new URL(form.StatusCallback ?? '').searchParams.get('message'));
}

/** The phone, the case's code and our numbers of its messages differ from family to family, and so does when it was. */
function plain(text: string, phone: string): string {
  return text
    .replaceAll(phone, 'PHONE')
    .replaceAll([...phone.replace('+', '')].join(' '), 'PHONE')
    .replaceAll(/\b[A-HJ-NP-RT-Z]\d\d\b/g, 'CODE')
    .replaceAll(/\/media\/\S+/g, '/media/LINK')
    .replaceAll(/\?message=\d+/g, '?message=NUMBER')
    .replaceAll(/\b\d\d?:\d\d [ap]m\b/g, 'TIME')
    .replaceAll(/\b\d\d? Mar 2025\b/g, 'DATE');
}

function withoutPlace(value: unknown, phone: string): unknown {
  const shown = JSON.stringify(value, (key, part: unknown) =>
    ['id', 'at', 'takenAt', 'cameOutAt'].includes(key) ? key : part,
  );
  return JSON.parse(plain(shown, phone));
}
