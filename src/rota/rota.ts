/** Who is on call: up to three lines of shifts, in the order a page climbs. */

/** A nurse as families and pages know her: the first name, and an E.164 number. */
export interface Nurse {
  readonly name: string;
  readonly number: string;
  /** She may pause the line. */
  readonly lead?: boolean;
}

/** A time on call, epoch ms: from its start on, up to but not at its end. */
export interface Shift {
  readonly nurse: Nurse;
  readonly startMs: number;
  readonly endMs: number;
}

/** One line of the climb: all its shifts that touch a span of time (epoch ms), by their start. */
export type RotaLine = (fromMs: number, toMs: number) => readonly Shift[];

export interface Rota {
  /** Everybody a page may reach. */
  readonly nurses: readonly Nurse[];
  /** First on call to last. */
  readonly lines: readonly RotaLine[];
}

/** A rota without shifts: the nurses are on call at every hour, in their order, without gaps. */
export function alwaysOn(nurses: readonly Nurse[]): Rota {
  const lines = nurses.map((nurse) => {
    const always = [{ nurse, startMs: Number.NEGATIVE_INFINITY, endMs: Number.POSITIVE_INFINITY }];
    return () => always;
  });
  return { nurses, lines };
}

/**
 * Who is on call at `atMs` (epoch ms), by place in the climb; null where that line has a gap. Where two have the same
 * line, it is the one whose shift began last.
 */
export function onCall(rota: Rota, atMs: number): readonly (Nurse | null)[] {
  return rota.lines.map((line) => line(atMs, atMs + 1).at(-1)?.nurse ?? null);
}

/** The nurse with this E.164 number, or null when it is nobody's on the rota. */
export function nurseOf(rota: Rota, number: string): Nurse | null {
  return rota.nurses.find((nurse) => nurse.number === number) ?? null;
}
