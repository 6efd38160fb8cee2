/** What was said and who was called: a Communication for each text or call, a Task for each page. */
import type {
  Communication,
  Device,
  Encounter,
  Patient,
  Practitioner,
  RelatedPerson,
  Resource,
  Task,
} from '@medplum/fhirtypes';
import type { PageLevel } from '#machines/facts.ts';
import { waitsOf } from '#machines/paging/levels.ts';
import { reasonNames } from '#src/wording/en/nurseNames.ts';
import { mediaWords } from '../media.ts';
import { nameOf, type RecordedMessage, type RecordedPage } from '../read.ts';
import { coded, type Frame } from './frame.ts';
import { keyOf } from './people.ts';

export function talk(frame: Frame): Resource[] {
  const { messages, pages } = frame.record;
  return [...messages.map((message) => communication(frame, message)), ...pages.map((page) => task(frame, page))];
}

/** Whether a message left is the carrier's word; one it never took was not done. */
const statuses: Readonly<Record<RecordedMessage['state'], Communication['status']>> = {
  heard: 'completed',
  accepted: 'completed',
  delivered: 'completed',
  waiting: 'preparation',
  carrying: 'in-progress',
  refused: 'not-done',
  unknown: 'unknown',
};

function communication({ id, ref, at }: Frame, message: RecordedMessage): Communication {
  const person = message.nurse === null ? 'caregiver' : keyOf(message.nurse);
  const theirs = ref<Practitioner | RelatedPerson>(person);
  const ours = ref<Device>('line');
  const isIn = message.direction === 'in';
  return {
    resourceType: 'Communication',
    id: id(`message ${message.id}`),
    status: statuses[message.state],
    medium: [medium(message.kind)],
    subject: ref<Patient>('child'),
    encounter: ref<Encounter>('encounter'),
    ...(isIn ? { received: at(message.atMs) } : { sent: at(message.atMs) }),
    sender: isIn ? theirs : ours,
    recipient: [isIn ? ours : theirs],
    ...payloadOf(message),
  };
}

/**
 * The words, and each picture or voice note that came with them: its type and fate, without data or address, under the title that R4
 * shows in place of the data. No Media resource: that is the thing itself, its content required, and the thing stays sealed with the
 * line. A string of FHIR is never empty: a call to the line, or a picture alone, has no words.
 */
function payloadOf({ body, media }: RecordedMessage): Pick<Communication, 'payload'> {
  const words = body === '' ? [] : [{ contentString: body }];
  const attached = media.map((one) => ({
    contentAttachment: { ...(one.type !== null && { contentType: one.type }), title: mediaWords(one) },
  }));
  const payload = [...words, ...attached];
  return payload.length === 0 ? {} : { payload };
}

/** The table has no code of its own for a text message. Source: HL7 v3 ParticipationMode. */
function medium(kind: RecordedMessage['kind']) {
  const system = 'http://terminology.hl7.org/CodeSystem/v3-ParticipationMode';
  return kind === 'call'
    ? coded({ system, code: 'PHONE', display: 'telephone' }, 'Telephone call, read out')
    : coded({ system, code: 'ELECTRONIC', display: 'electronic data' }, 'Text message');
}

const priorities = { routine: 'routine', urgent: 'urgent', emergency: 'stat' } as const satisfies Record<
  PageLevel,
  string
>;

/** One page to one person. It is sought of her until her turn is over; whoever takes it has it until the case is closed. */
function task({ id, ref, at, record }: Frame, page: RecordedPage): Task {
  const { repeatMinutes } = waitsOf(page.level, record.clinical);
  const taken = page.takenMs;
  return {
    resourceType: 'Task',
    id: id(`page ${page.id}`),
    status: statusOf(page, record.closedMs),
    ...(taken === null && !page.open && { statusReason: { text: 'Somebody else took it, or the case was closed.' } }),
    intent: 'order',
    priority: priorities[page.level],
    description: `Page, ${page.level}, to ${nameOf(page.person)}`,
    focus: ref<Encounter>('encounter'),
    for: ref<Patient>('child'),
    encounter: ref<Encounter>('encounter'),
    ...(taken !== null && {
      executionPeriod: { start: at(taken), ...(record.closedMs !== null && { end: at(record.closedMs) }) },
    }),
    authoredOn: at(page.atMs),
    lastModified: at(taken ?? page.atMs),
    requester: ref<Device>('line'),
    owner: ref<Practitioner>(keyOf(page.person)),
    reasonCode: { text: page.reasons.map((reason) => reasonNames[reason]).join(', ') || 'fault of the line' },
    restriction: {
      period: { start: at(page.atMs), end: at(page.atMs + repeatMinutes * 60_000) },
      recipient: [ref<Practitioner>(keyOf(page.person))],
    },
  };
}

function statusOf({ takenMs, open }: RecordedPage, closedMs: number | null): Task['status'] {
  if (takenMs !== null) return closedMs === null ? 'accepted' : 'completed';
  return open ? 'requested' : 'cancelled';
}
