/** Whether a tube may be secured and used, as a bystander knows it. */
import { type Bystander, readingHolds, type Setting, tractClass } from './bystander.ts';

/** A tube that may never be used in this child tonight, and why; null where it may. */
export function restricted(
  b: Bystander,
  setting: Setting,
  atMs: number,
): 'kind' | 'tract' | 'warning' | 'nurse' | null {
  if (b.sentIn) return 'nurse';
  if (b.warning) return 'warning';
  if (b.kind !== 'g') return 'kind';
  return tractClass(b, setting, atMs) === 'usable' ? null : 'tract';
}

/** What is missing before a tube may be secured and used; null where nothing is. */
export function missingForUse(b: Bystander, setting: Setting, atMs: number): string | null {
  const { tube } = b;
  if (b.danger !== null) return 'a danger sign was told';
  if (b.warning) return 'a warning sign was told';
  if (b.sentIn) return 'a nurse sent the child in';
  if (b.children.length > 0 && b.which === null) return 'nobody knows which child it is';
  if (b.fileOpen) return 'the file was never confirmed';
  if (b.unwell !== 'well') return 'the danger signs were not answered';
  if (b.kind !== 'g') return `the kind is ${b.kind ?? 'not known'}, not g`;
  const tract = tractClass(b, setting, atMs);
  if (tract !== 'usable') return `the tract is ${tract}`;
  if (tube === null) return 'no tube is in';
  if (tube.holderOnly) return 'a burst tube only holds the stoma open';
  if (!tube.whole) return 'the own tube is not known to be whole';
  if (tube.maybeLatex) return 'it may hold latex';
  if (tube.stopped) return 'something was wrong with it, or could not be read';
  if (!tube.well) return 'nobody asked how the child is since it went in';
  if (!readingHolds(b, setting)) return 'no reading that passed';
  if (tube.recheck === 'waiting') return 'the recheck is still waiting';
  if (tube.how === null) return 'nobody knows how it went in';
  return tube.how === 'hard' && !tube.cleared ? 'a hard insertion that no nurse cleared' : null;
}
