/** A site's time zone whose offsets are remembered: asking the platform for one costs as much as a whole step of a case. */
import { IANAZone } from 'luxon';

/** Zones change their offset only at whole minutes (the tz database, all rules since 1972). */
const minuteMs = 60_000;
/** A night asks for a few hundred; past this it begins anew. */
const mostKept = 10_000;

class RememberingZone extends IANAZone {
  readonly #offsets = new Map<number, number>();

  override offset(atMs: number): number {
    const minute = Math.floor(atMs / minuteMs);
    const known = this.#offsets.get(minute);
    if (known !== undefined) return known;
    const offset = super.offset(atMs);
    if (this.#offsets.size >= mostKept) this.#offsets.clear();
    this.#offsets.set(minute, offset);
    return offset;
  }
}

const zones = new Map<string, RememberingZone>();

/** The IANA time zone of this name, the same object each time. A name that is none gives a zone that is not valid, as the library does. */
export function zoneOf(name: string): IANAZone {
  const known = zones.get(name);
  if (known !== undefined) return known;
  const zone = new RememberingZone(name);
  zones.set(name, zone);
  return zone;
}
