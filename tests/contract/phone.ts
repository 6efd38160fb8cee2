/** A client of the practice interface: every answer parsed by the shape the contract gives it. */
import { expect } from 'vitest';
import { z } from 'zod';

const instant = z.iso.datetime({ offset: true });
const kind = z.enum(['text', 'call']);
const number = z.string().regex(/^\+[0-9]{7,15}$/);

const sentShape = z.array(z.strictObject({ to: number, body: z.string().min(1), at: instant, kind }));
const textsShape = z.strictObject({
  texts: z.array(z.strictObject({ direction: z.enum(['in', 'out']), body: z.string(), at: instant, kind })),
});
const pressShape = z.strictObject({ sent: sentShape, rings: z.array(number) });
const ringShape = z.strictObject({ sent: sentShape, spoken: z.string().min(1), rings: z.array(number) });
const dispositions = ['emergency', 'go-in', 'hold', 'recheck', 'use', 'own-tube', 'nurse'];
const factsShape = z.strictObject({
  tubeKind: z.string().optional(),
  firstPlaced: z.strictObject({ earliest: z.iso.date().nullable(), latest: z.iso.date() }).optional(),
  weightKg: z.number().optional(),
  weightBand: z.enum(['under-3', '3', 'over-3']).optional(),
  ph: z.number().optional(),
  cameOutAt: instant.optional(),
  insertedHow: z.enum(['easy', 'hard']).optional(),
});
const caseShape = z.object({
  id: z.string().min(1),
  asking: z.string().nullable(),
  disposition: z.enum(dispositions).nullable(),
  rehearsal: z.boolean(),
  facts: factsShape,
  pages: z.array(
    z.strictObject({
      to: number,
      level: z.enum(['emergency', 'urgent', 'routine']),
      at: instant,
      takenAt: instant.nullable(),
    }),
  ),
  due: z.array(z.strictObject({ what: z.enum(['recheck', 'silence', 'page', 'aftercare']), at: instant })),
});

export type Sent = z.infer<typeof sentShape>;
export type Case = z.infer<typeof caseShape>;

export interface Answer {
  readonly status: number;
  readonly body: unknown;
}

/** Any request; the answer has to be JSON whatever it is. */
export async function request(url: string, method: string, path: string, body?: unknown): Promise<Answer> {
  const sending =
    body === undefined ? {} : { body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } };
  const response = await fetch(url + path, { method, ...sending });
  expect(response.headers.get('content-type')).toMatch(/^application\/json/);
  return { status: response.status, body: await response.json() };
}

async function good<T>(shape: z.ZodType<T>, answer: Promise<Answer>): Promise<T> {
  const { status, body } = await answer;
  expect(status, JSON.stringify(body)).toBe(200);
  return shape.parse(body);
}

/** The world of one practice line. `url` is asked for each time: a line that was killed comes back on another port. */
export function practice(url: () => string) {
  const path = (of: string, phone: string) => `/practice/phones/${encodeURIComponent(phone)}/${of}`;
  return {
    reset: (now: string) => good(z.object({}), request(url(), 'POST', '/practice/reset', { now })),
    enrol: (phone: string, family: object) =>
      good(z.object({}), request(url(), 'PUT', `/practice/families/${encodeURIComponent(phone)}`, family)),
    clock: (move: { advance: string } | { to: string }) =>
      good(z.strictObject({ now: instant, sent: sentShape }), request(url(), 'POST', '/practice/clock', move)),
    state: () =>
      good(
        z.object({ now: instant, nurses: z.array(z.object({ name: z.string(), number })) }),
        request(url(), 'GET', '/practice/state'),
      ),
    async text(phone: string, body: string, id?: string): Promise<Sent> {
      const answer = request(url(), 'POST', path('texts', phone), id === undefined ? { body } : { body, id });
      return (await good(z.strictObject({ sent: sentShape }), answer)).sent;
    },
    ring: async (phone: string, id?: string) =>
      good(ringShape, request(url(), 'POST', path('calls', phone), id === undefined ? {} : { id })),
    press: (phone: string, digit: string) => good(pressShape, request(url(), 'POST', path('keys', phone), { digit })),
    thread: async (phone: string) => (await good(textsShape, request(url(), 'GET', path('texts', phone)))).texts,
    newestCase: async (phone: string) =>
      (await good(z.strictObject({ case: caseShape.nullable() }), request(url(), 'GET', path('case', phone)))).case,
  };
}

export type Practice = ReturnType<typeof practice>;

/** A caregiver's answers by question; what is not asked for is answered "ok". */
export type Answers = Readonly<Record<string, string>>;

/** A mature G tube of an enrolled child, no spare, a kit at hand, everything going well. */
export const goesWell: Answers = {
  unwell: 'no',
  confirm: 'yes',
  'own-tube': 'no',
  kit: 'yes',
  weight: '7.2 kg',
  'tube-in': 'easily',
  'came-out': '20 minutes ago',
  'after-in': 'no',
  strips: 'yes',
  contents: 'yes',
  ph: '4.5',
  'fed-lately': 'no',
  looks: 'yes',
  secured: 'yes',
};

const mostTexts = 40;

/** Answers question by question until one of `ends` is the disposition; `between` runs before every text. */
export async function converse(
  line: Practice,
  phone: string,
  answers: Answers,
  ends: readonly string[],
  between: () => Promise<void> = async () => {},
): Promise<Case> {
  for (let count = 0; count < mostTexts; count += 1) {
    await between();
    const theCase = await line.newestCase(phone);
    if (theCase === null) throw new Error('no case to answer in');
    if (theCase.asking === null && theCase.disposition !== null && ends.includes(theCase.disposition)) return theCase;
    await line.text(phone, answers[theCase.asking ?? ''] ?? 'ok');
  }
  throw new Error(`no ${ends.join(' or ')} after ${mostTexts} texts`);
}
