/** How grave a sign is, by where the case stands and how old the child may be. */

import { DateTime } from 'luxon';
import type { DateRange, Sign, Weight } from '#machines/facts.ts';
import { dayBeginsAtMs } from './calendarDay.ts';
import { surelyOverKg } from './weight.ts';

/** `danger`: the emergency number now. `warning`: the tube is never used, go in. `clarify`: ask. `ignore`: says nothing yet. */
export type SignGrade = 'danger' | 'warning' | 'clarify' | 'ignore';

/** What the grade hangs on; `today` is the site's day, `yyyy-mm-dd`. */
export interface SignStage {
  readonly tubeIn: boolean;
  readonly born: DateRange | null;
  readonly weight: Weight | null;
  readonly today: string;
}

/** Under this age any fever is an emergency; common practice, no source. */
const feverDangerMonths = 3;
/**
 * A child of unknown age over this weight is taken to be older than that; common practice, no source. It is no proof: by the WHO
 * weight-for-age tables half of all boys weigh over 6.37 kg at 3 months, so a heavy younger baby is only graded as a warning.
 */
const feverDangerKg = 6;

/**
 * Grades one sign. Sources: warning signs once a tube is in, NPSA/2010/RRR010 (pain on feeding, severe pain, fresh bleeding,
 * leakage: stop at once); the danger signs are common practice, no source.
 */
export function gradeSign(sign: Sign, stage: SignStage): SignGrade {
  switch (sign) {
    case 'breathing':
    case 'colour':
    case 'limp':
    case 'bleeding':
    case 'hard-belly':
    case 'severe-pain':
    case 'vomit':
      return 'danger';
    case 'fever':
      return maybeYoungBaby(stage) ? 'danger' : 'warning';
    case 'pain':
    case 'fresh-blood':
    case 'tight-belly':
      return stage.tubeIn ? 'warning' : 'clarify';
    case 'leak':
      return stage.tubeIn ? 'warning' : 'ignore';
  }
}

/** Whether the child may be under 3 months, at the youngest age it could be. */
function maybeYoungBaby(stage: SignStage): boolean {
  if (stage.born === null) return !surelyOverKg(stage.weight, feverDangerKg);
  const born = DateTime.fromMillis(dayBeginsAtMs(stage.born.latest)).toUTC();
  return dayBeginsAtMs(stage.today) < born.plus({ months: feverDangerMonths }).toMillis();
}
