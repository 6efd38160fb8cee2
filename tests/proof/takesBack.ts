/** What a bystander no longer knows once an answer is taken back without a new one. */
import type { QuestionKey } from '#machines/facts.ts';
import type { Bystander, TubeSeen } from './bystander.ts';
import { notThatChild } from './hearsChildren.ts';

const about = (b: Bystander, tube: Partial<TubeSeen>): Bystander =>
  b.tube === null ? b : { ...b, tube: { ...b.tube, ...tube } };

/** Only a plain yes to the danger signs can be taken back; a sign once named, and a warning, stay. */
export function takesBack(b: Bystander, key: QuestionKey | null): Bystander {
  if (b.danger === 'plain' && (key === null || key === 'unwell'))
    return { ...b, danger: null, unwell: 'unasked', sign: null };
  if (b.danger !== null || key === null) return b;
  // Whoever is shown the file and says what is wrong in it has confirmed the rest.
  const shown = b.open === 'confirm' ? { ...b, fileOpen: false } : b;
  switch (key) {
    case 'unwell':
      return { ...b, unwell: 'unasked', sign: null };
    case 'which-child':
      return notThatChild(b);
    case 'confirm':
      return { ...b, fileOpen: false, kind: null, tract: null, weight: null };
    case 'tube-kind':
      return { ...shown, kind: null };
    case 'first-placed':
      return { ...shown, tract: null };
    case 'own-tube':
      return about({ ...b, ownTube: null }, { whole: b.tube?.which === 'temporary' });
    case 'kit':
      return { ...b, kit: null };
    case 'weight':
      return { ...shown, weight: null, bareWeight: null };
    case 'came-out':
      return { ...b, cameOutAtMs: null };
    case 'tube-in':
    case 'own-tube-in':
      return about(b, { how: b.tube?.heldHard ? 'hard' : null, cleared: false });
    case 'strips':
      return { ...b, strips: null };
    default:
      return takesBackPlacement(b, key);
  }
}

function takesBackPlacement(b: Bystander, key: QuestionKey): Bystander {
  switch (key) {
    case 'after-in':
      return about(b, { well: false });
    case 'contents':
      return about(b, { contents: false, reading: null, secured: false, cleared: false });
    case 'ph':
      return about(b, { reading: null, contents: false, fed: null, looks: null, secured: false, cleared: false });
    case 'fed-lately':
      return about(b, { fed: null });
    case 'looks':
      return about(b, { looks: null });
    case 'secured':
      return about(b, { secured: false });
    default:
      return b;
  }
}
