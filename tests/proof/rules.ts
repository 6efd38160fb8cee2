/** The safety rules S1 to S9, a second time: predicates over what was said, paged and timed, as a bystander sees it. */
import { mayBeReal } from '#machines/rehearsal.ts';
import { endRules } from './endRules.ts';
import { gradeOf } from './hears.ts';
import { sayRules } from './sayRules.ts';
import { type Holds, holding, type Seen, type Verdict } from './verdict.ts';

/** Holds every rule against one step. */
export function judge(seen: Seen, verdict: Verdict): void {
  const holds = holding(verdict);
  if (seen.before.over) return;
  signRules(seen, holds);
  childRules(seen, holds);
  sayRules(seen, holds);
  endRules(seen, holds);
}

/** S4: a danger sign is answered by the emergency before anything else, a warning sign voids what was allowed. */
function signRules({ before, heard, after, event, outputs, setting }: Seen, holds: Holds): void {
  const namesDanger =
    event.type === 'signs' && event.sure.some((sign) => gradeOf(sign, before, setting, event.at) === 'danger');
  if (namesDanger || (before.danger === null && heard.danger !== null)) {
    holds('S4', outputs.says[0]?.key === 'emergency', 'a danger sign is not answered by the emergency first');
    holds('S4', outputs.pages.includes('danger-sign'), 'a danger sign pages nobody');
  }
  rehearsal({ before, after, event, outputs }, holds);
  doubtful({ before, after, event, outputs, setting }, holds);
  if (!before.warning && after.warning && after.danger === null) {
    const paged = outputs.pages.some((reason) => reason === 'warning-sign' || reason === 'not-well-after');
    const stopped = outputs.says.some(
      ({ key, preface }) => key === 'goIn' || preface.some((before) => before.key === 'feverOrWarning'),
    );
    holds('S4', paged, 'a warning sign pages nobody at once');
    holds('S4', stopped, 'a warning sign is not answered by stopping the feed or going in');
  }
}

/** Were it a rehearsal, it would end here: no danger, no warning and no doubtful sign is played. */
function rehearsal(
  { before, after, event, outputs }: Pick<Seen, 'before' | 'after' | 'event' | 'outputs'>,
  holds: Holds,
) {
  if (!('person' in event)) return;
  const worse = (before.danger === null && after.danger !== null) || (!before.warning && after.warning);
  if (!worse && event.type !== 'signs') return;
  const ends = mayBeReal(event, { raised: outputs.pages, disposition: after.standing });
  holds('S4', ends, 'a rehearsal would go on through a sign');
}

/** A sign said in a small or doubtful way is asked about, unless the whole list is. */
function doubtful({ before, after, event, outputs, setting }: Omit<Seen, 'heard'>, holds: Holds): void {
  if (event.type !== 'signs' || after.danger !== null || after.warning) return;
  const heard = [...event.near, ...event.sure];
  if (!heard.some((sign) => gradeOf(sign, before, setting, event.at) !== 'nothing')) return;
  const asked = outputs.says.some(({ key }) => key === 'clarifySign' || key === 'opening' || key === 'openingTubeIn');
  holds('S4', asked, 'a sign said in a doubtful way is not asked about');
}

/** S9: another child than the one it is about is never named without a nurse hearing of it. */
function childRules({ before, after, event, outputs }: Seen, holds: Holds): void {
  if (!('person' in event) || typeof before.which !== 'number' || before.children.length === 0) return;
  const other = event.told.children?.some((child) => child !== before.which) ?? false;
  if (!other || after.over) return;
  const paged = [...before.paged, ...outputs.pages];
  const heard = paged.includes('other-child') || paged.includes('child-corrected');
  holds('S9', heard, 'another child is named and nobody is paged');
}
