/** The shapes of the practice interface: every request is parsed here once and trusted afterwards. */
import { DateTime, Duration } from 'luxon';
import { z } from 'zod';
import { fileFields, siblingFields, words } from '#src/families/file.ts';
import { Refused } from './refusal.ts';

/** Characters as a reader counts them: an emoji is one. */
export const mostCharacters = 1600;
export const mostAdvanceDays = 45;

const earliestMs = Date.UTC(2000, 0, 1);
const latestMs = Date.UTC(2100, 0, 1);

/** An instant as ISO 8601 with an offset, to epoch ms. */
const instant = z.string().transform((text, context) => {
  const offset = /T.*(?:Z|[+-]\d{2}(?::?\d{2})?)$/i.test(text);
  const atMs = offset ? DateTime.fromISO(text).toMillis() : Number.NaN;
  if (atMs >= earliestMs && atMs < latestMs) return atMs;
  context.addIssue({ code: 'custom', message: 'a time is ISO 8601 with an offset, from 2000 to 2099' });
  return z.NEVER;
});

/** An ISO 8601 duration to ms; a day is 24 hours, a month is refused as it has no one length. */
const duration = z.string().transform((text, context) => {
  const parsed = Duration.fromISO(text);
  const hasPart = /\d/.test(text);
  if (hasPart && parsed.isValid && parsed.years === 0 && parsed.quarters === 0 && parsed.months === 0)
    return parsed.toMillis();
  context.addIssue({ code: 'custom', message: 'a duration is ISO 8601 in weeks, days, hours, minutes and seconds' });
  return z.NEVER;
});

/** What the store can keep: no NUL, no half of a character. */
const plain = (text: string) => text.isWellFormed() && !text.includes('\0');

const number = z.string().regex(/^\+[0-9]{7,15}$/);

const id = z.string().min(1).max(200).refine(plain, 'plain text').optional();

/** As a practice phone sends it; at most ten, as the carrier's. */
const media = z.strictObject({
  type: z.string().regex(/^(?:image|audio)\/(?!svg)[a-z0-9.+-]{1,60}$/),
  base64: z.base64().min(1),
});

export const textShape = z.strictObject({ body: z.string(), id, media: z.array(media).max(10).default([]) });
export const callShape = z.strictObject({ id });
export const keyShape = z.strictObject({ digit: z.string().regex(/^[0-9*#]$/, 'one key of a telephone') });

export const resetShape = z.strictObject({ now: instant });

export const clockShape = z.union([z.strictObject({ advance: duration }), z.strictObject({ to: instant })], {
  error: 'give either advance, an ISO 8601 duration, or to, an ISO 8601 time with an offset',
});

const named = { child: words };

export const familyShape = z
  .strictObject({
    ...fileFields,
    ...named,
    phones: z.array(number).max(9).default([]),
    children: z
      .array(z.strictObject({ ...siblingFields, ...named }))
      .max(9)
      .default([]),
  })
  .refine(({ child, children }) => haveOwnNames([child, ...children.map((each) => each.child)]), {
    path: ['children'],
    message: 'children of one phone have names of their own',
  })
  .transform(({ children, ...family }) => ({ ...family, siblings: children }));

function haveOwnNames(names: readonly string[]): boolean {
  return new Set(names.map((name) => name.toLowerCase())).size === names.length;
}

/** Parses a request body. Throws `Refused` naming each field at fault, never its value. */
export function parseBody<T>(shape: z.ZodType<T>, body: unknown): T {
  const parsed = shape.safeParse(body ?? {});
  if (parsed.success) return parsed.data;
  const faults = parsed.error.issues.map((issue) => `${issue.path.join('.') || 'body'}: ${issue.message}`);
  throw new Refused('bad-request', faults.join('; '));
}

/** Parses the phone number of a path. Throws `Refused`. */
export function parseNumber(text: string): string {
  const parsed = number.safeParse(text);
  if (!parsed.success) throw new Refused('bad-number');
  return parsed.data;
}
