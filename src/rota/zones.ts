/** A calendar's time zones, each with the one offset RFC 5545 gives a local time, also where that time is missing or doubled. */
import ICAL from 'ical.js';
import { IANAZone } from 'luxon';

const dayS = 86_400;
const minuteMs = 60_000;

/** Finds a calendar's zones by name. */
export type Zones = (name: string) => ICAL.Timezone;

/**
 * The zones of a calendar: a name of the IANA list by the rules kept up to date with the runtime, any other by the calendar's own
 * description. Throws `RangeError` for a name that is neither.
 */
export function zonesOf(calendar: ICAL.Component): Zones {
  const described = calendar.getAllSubcomponents('vtimezone');
  return (name) => {
    const listed = name.replace(/^\//, '');
    if (IANAZone.isValidZone(listed)) return listedZone(listed);
    const component = described.find((zone) => zone.getFirstPropertyValue('tzid') === name);
    if (component === undefined) throw new RangeError('a time zone that is neither listed nor described');
    return new DescribedZone(name, component);
  };
}

/** A zone of the IANA list. */
export function listedZone(name: string): ICAL.Timezone {
  return new ListedZone(name);
}

/**
 * RFC 5545, 3.3.5: a local time that does not exist counts by the offset before the gap, one that comes twice is the first. Both
 * are the offset before the change.
 */
class ListedZone extends ICAL.Timezone {
  readonly #zone: IANAZone;

  constructor(name: string) {
    super({ tzid: name });
    this.#zone = IANAZone.create(name);
  }

  override utcOffset(local: ICAL.Time): number {
    const { year, month, day, hour, minute, second } = local;
    const wallMs = Date.UTC(year, month - 1, day, hour, minute, second);
    const [before, after] = [-dayS, dayS].map((seconds) => this.#zone.offset(wallMs + seconds * 1000));
    const holds = (offset: number | undefined) =>
      offset !== undefined && this.#zone.offset(wallMs - offset * minuteMs) === offset;
    return ([before, after].find(holds) ?? before ?? 0) * 60;
  }
}

/**
 * The library counts a missing local time by the later offset, takes the second of two, and knows nothing before the first change.
 * So a time is looked up as far earlier as the change is wide, where both are still before it.
 */
class DescribedZone extends ICAL.Timezone {
  /** As the calendar writes local times, and in seconds. */
  readonly #first: { readonly start: string; readonly offsetBefore: number };

  constructor(tzid: string, component: ICAL.Component) {
    super({ component, tzid });
    const changes = component.getAllSubcomponents().map((change) => ({
      start: String(change.getFirstPropertyValue('dtstart')),
      offsetBefore: secondsOf(change.getFirstPropertyValue('tzoffsetfrom')),
    }));
    const [first] = changes.sort((a, b) => (a.start < b.start ? -1 : 1));
    if (first === undefined) throw new RangeError('a time zone without an offset');
    this.#first = first;
  }

  override utcOffset(local: ICAL.Time): number {
    const offsetAt = (seconds: number) => {
      const near = local.clone();
      near.adjust(0, 0, 0, seconds);
      return near.toString() < this.#first.start ? this.#first.offsetBefore : super.utcOffset(near);
    };
    return offsetAt(-Math.abs(offsetAt(dayS) - offsetAt(-dayS)));
  }
}

function secondsOf(offset: unknown): number {
  if (!(offset instanceof ICAL.UtcOffset)) throw new RangeError('a time zone without an offset');
  return offset.toSeconds();
}
