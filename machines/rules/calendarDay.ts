/** A calendar day of the clinic, kept in UTC so that counting days never meets a clock change. */

const shape = /^\d{4}-\d{2}-\d{2}$/;
const dayMs = 86_400_000;

/**
 * The midnight in UTC at which the day `yyyy-mm-dd` begins. Dates are checked where they enter, so another shape, or a day
 * no month has, is a fault in the code and throws `RangeError`.
 */
export function dayBeginsAtMs(date: string): number {
  const atMs = shape.test(date) ? Date.parse(date) : Number.NaN;
  // The platform takes the 31st of a shorter month for a day of the next, and no day for not a number.
  if (new Date(atMs).getUTCDate() !== Number(date.slice(-2))) {
    throw new RangeError(`not a calendar day: ${date}`);
  }
  return atMs;
}

/** Whole days from one calendar day to another, negative where the second comes first. */
export function daysBetween(from: string, to: string): number {
  return (dayBeginsAtMs(to) - dayBeginsAtMs(from)) / dayMs;
}
