/** The table of what each text does at each place of a case, for a reader who knows the rules. */
import type { CaseView } from '#machines/case.ts';
import type { Move, Place } from '#tests/golden/places.ts';
import { Night } from '../night.ts';
import { plain, textsAt } from './texts.ts';

const minuteMs = 60_000;

/** The lines of one place. */
export function linesOf(place: Place): readonly string[] {
  return linesAt(nightAt(place));
}

/** A case that has come to this place. */
export function nightAt({ file, moves }: Place): Night {
  return moves.reduce(move, new Night(file));
}

function move(night: Night, next: Move): Night {
  if ('waitMinutes' in next) return night.wait(next.waitMinutes);
  if (next.type === 'take') return night.take(next.nurse);
  if (next.type === 'nurse.clear') return night.clear();
  if (next.type === 'nurse.close') return night.close();
  return night.text(next);
}

/** Texts that do the same stand together, with what they do below them. */
function linesAt(place: Night): readonly string[] {
  const texts = new Map<string, string[]>();
  const before = place.view;
  for (const [name, text] of Object.entries(textsAt(place.asking))) {
    const night = place.branch();
    text(night);
    const outcome = [stands(night.view, before), ...night.all.slice(place.all.length).flatMap(did)].join('; ');
    texts.set(outcome, [...(texts.get(outcome) ?? []), name]);
  }
  return [...texts].flatMap(([outcome, names]) => [names.join(' | '), `  ${outcome}`]);
}

/** Where the case now stands, and what it has come to know. */
function stands(view: CaseView, before: CaseView): string {
  const words = [
    view.asking ?? 'asks nothing',
    view.clarifying,
    view.disposition,
    view.tubeIn,
    view.clearable && 'clearable',
    view.closed && 'closed',
  ];
  const facts = Object.entries(view.facts).filter(
    ([name, value]) =>
      JSON.stringify(value) !== JSON.stringify(Object.entries(before.facts).find(([other]) => other === name)?.[1]),
  );
  return [...words, ...(facts.length > 0 ? [plain(Object.fromEntries(facts))] : [])].filter(Boolean).join(', ');
}

function did(effect: Night['all'][number]): string[] {
  switch (effect.type) {
    case 'say': {
      const { key, params, preface } = effect.say;
      const prefaces = preface.map(
        ({ key: first, ...rest }) => `[${first}${Object.keys(rest).length > 0 ? ` ${plain(rest)}` : ''}] `,
      );
      const words = Object.keys(params).length > 0 ? ` ${plain(params)}` : '';
      return [`${effect.by === 'call' ? 'calls: ' : ''}${prefaces.join('')}${key}${words}`];
    }
    case 'callNurse':
      return [`page ${effect.place} ${effect.level} ${effect.reasons.join(',')} by ${effect.by.join('+')}`];
    case 'tellNurse':
      return [`tell nurse ${effect.level} ${effect.reason}`];
    case 'tellStands':
      return [`tell nurse it stands at ${effect.disposition}`];
    case 'startTimer':
      // When a page goes on is the climb's own business, see `tests/paging`.
      return effect.what === 'page' ? [] : [`in ${effect.delayMs / minuteMs} min ${effect.what}`];
    case 'closeCase':
      return ['close'];
    default:
      return [];
  }
}
