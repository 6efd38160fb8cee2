/** Short forms for the aftercare tests: begin, answer, and read what came as one line each, in hours. */
import type { AftercareEvent } from '#machines/aftercare/kit.ts';
import { aftercare } from '#machines/aftercare/machine.ts';
import type { QuestionKey } from '#machines/facts.ts';
import type { Clinical, Site } from '#machines/protocol/settings.ts';
import { site } from '#tests/dislodgement/night.ts';
import { type Did, Simulated } from '#tests/machines/simulated.ts';

/** Its clock runs on universal time, so the simulation starts on a Saturday at 07:10, just out of the quiet hours. */
export const awake: Site = { ...site, timeZone: 'utc', clinicCloses: '17:10' };

export const later = (clinical?: Clinical, at: Site = awake) => new Simulated<AftercareEvent>(aftercare, clinical, at);

export const hour = 60;
export const day = 24 * hour;

export const beginOwn = { type: 'begin.use', tube: 'own' } as const;
export const beginTemporary = { type: 'begin.use', tube: 'temporary' } as const;
export const beginGoIn = { type: 'begin.goIn' } as const;
export const unclear = { type: 'unclear', why: 'unreadable', told: {}, person: false, corrects: false } as const;

type Asked = 'first-feed' | 'next-day' | 'clinic' | 'arrived';
export const answer = (key: Asked, value: 'yes' | 'no') =>
  ({ type: `answer.${key}`, value, told: {}, person: false, corrects: false }) as const;

export const takeBack = (key: QuestionKey) =>
  ({ type: 'correct', key, told: {}, person: false, corrects: true }) as const;

/** The open question, as the case reads it: the `asking` of an active state. */
export function asking(line: ReturnType<typeof later>): QuestionKey | null {
  const metas: { readonly asking: QuestionKey }[] = Object.values(line.snapshot.getMeta());
  return metas[0]?.asking ?? null;
}

interface Params {
  readonly key?: string;
  readonly params?: { readonly asking?: string; readonly daysLeft?: number; readonly tube?: string };
  readonly preface?: readonly { readonly key: string; readonly why?: string }[];
  readonly reason?: string;
}

/** As `3h askFirstFeed`, `4h nudge first-feed`, `5h page silence`; prefaces come before in brackets. */
export const lines = (did: readonly Did[]): string[] =>
  did.map(({ minute, type, params }) => {
    const { key, params: inner, preface = [], reason } = params as Params;
    const prefaces = preface.map((one) => `[${one.key}${one.why ? ` ${one.why}` : ''}]`);
    const words = type === 'say' ? [...prefaces, key, ...Object.values(inner ?? {})] : [type, reason];
    return [`${minute / hour}h`, ...words].filter((word) => word !== undefined && word !== null).join(' ');
  });
