/** A walk: one night of random happenings on the machines, every safety rule checked after each. A seed replays it. */
import type { Effect } from '#machines/effects.ts';
import type { QuestionKey } from '#machines/facts.ts';
import { Night } from '../night.ts';
import { Dice, drawFile, drawFirstText, drawHappening, type Happening } from './alphabet.ts';
import { Ledger } from './ledger.ts';
import { rules } from './safety.ts';

export interface Walk {
  /** Names of the rules that failed at the last step, or what was thrown; empty where all held to the end. */
  readonly broken: readonly string[];
  readonly happenings: readonly Happening[];
  /** The family on file, and what was asked and said at each step, to be read by a person. */
  readonly log: readonly string[];
  /** Every key that was said. */
  readonly said: ReadonlySet<string>;
}

/** Walks one night of at most this many happenings; stops at the first broken rule of those named. */
export function walk(seed: number, most: number, named: readonly string[]): Walk {
  const dice = new Dice(seed);
  const file = drawFile(dice);
  const night = new Night(file);
  const ledger = new Ledger(file);
  const happenings: Happening[] = [];
  const log = [JSON.stringify(file)];
  const done = (broken: readonly string[]): Walk => ({ broken, happenings, log, said: new Set(night.saidEver) });
  while (happenings.length < most && !night.view.closed) {
    const happening = happenings.length === 0 ? drawFirstText(dice) : drawHappening(dice, night.asking);
    happenings.push(happening);
    const { asking: asked, clarifying } = night.view;
    try {
      happen(night, ledger, happening);
    } catch (error) {
      log.push(`${JSON.stringify(happening)} threw`);
      return done([`threw ${error instanceof Error ? error.message : String(error)}`]);
    }
    log.push(`${asked ?? '-'} ${JSON.stringify(happening)} -> ${night.said.join(' ')} [${night.view.disposition}]`);
    const step = {
      happening,
      asked,
      clarified: clarifying === 'sign' || clarifying === 'trouble',
      night,
      ledger,
      effects: night.effects,
    };
    const broken = named.filter((name) => rules[name]?.(step) === false);
    if (broken.length > 0) return done(broken);
  }
  return done([]);
}

function happen(night: Night, ledger: Ledger, happening: Happening): void {
  const { asking: open, clarifying, disposition } = night.view;
  // Whether anything is wrong is no question about the danger signs: no answer to it changes what is known of them.
  const asking = clarifying === 'trouble' ? null : open;
  const inUse = disposition === 'use' || disposition === 'own-tube';
  switch (happening.type) {
    case 'text':
      ledger.hear(happening.event, { asking, inUse, clarifying: clarifying === 'sign', atMs: night.nowMs });
      night.text(happening.event);
      break;
    case 'wait':
      night.wait(happening.minutes);
      break;
    case 'clinic':
      night.clinicOpen = happening.open;
      break;
    case 'take':
      night.take();
      break;
    case 'clear':
      night.clear();
      break;
    case 'sendIn':
      // Only whoever was called for the case has a word in it.
      if (night.callsEver.length > 0) {
        ledger.sentIn = true;
        night.sendIn();
      }
      break;
    case 'corrects':
      ledger.corrected(happening.told);
      night.corrects(happening.told);
      break;
    case 'pass':
      night.pass();
      break;
    case 'close':
      night.close();
      break;
  }
  noteSaid(ledger, night.effects, asking);
}

/** What the line's own words change in the ledger: a question given up, a clearance, a hold for a hard insertion. */
export function noteSaid(ledger: Ledger, effects: readonly Effect[], asking: QuestionKey | null): void {
  for (const effect of effects) {
    if (effect.type !== 'say') continue;
    const keys = effect.say.preface.map(({ key }) => key);
    if (keys.includes('goesToNurse')) ledger.gaveUp(asking);
    if (keys.includes('cleared')) ledger.cleared = true;
    if (effect.say.key === 'hold' && effect.say.params.reason === 'hard') ledger.heldHard = true;
  }
}
