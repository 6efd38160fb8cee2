/** What counts once two answers to one question could not be read: "unknown" where it has that value, else the careful one. */
import type { Bystander } from './bystander.ts';
import { noneOfThem } from './hearsChildren.ts';

export function givesUp(b: Bystander): Bystander {
  switch (b.open) {
    case 'unwell':
      // Whether anything is wrong is for the nurse then; the danger signs were answered before.
      if (b.clarifying === 'trouble') return b;
      return { ...b, unwell: 'unread' };
    case 'which-child':
      return noneOfThem(b);
    case 'confirm':
      return { ...b, fileOpen: false, kind: null, tract: null, weight: null };
    case 'tube-kind':
      return { ...b, kind: 'unknown' };
    case 'first-placed':
      return { ...b, tract: 'unknown' };
    case 'own-tube':
      return { ...b, ownTube: 'unknown' };
    case 'kit':
      return { ...b, kit: 'no' };
    case 'weight':
      return { ...b, weight: 'unknown', bareWeight: null };
    case 'came-out':
      return { ...b, cameOutAtMs: 'unknown' };
    case 'after-in':
      return { ...b, warning: true };
    case 'strips':
      return { ...b, strips: 'no' };
    default:
      return givesUpOnTube(b);
  }
}

function givesUpOnTube(b: Bystander): Bystander {
  const { tube } = b;
  switch (b.open) {
    case 'tube-in':
    case 'own-tube-in':
      return tube === null ? { ...b, triesFailed: b.triesFailed + 1 } : { ...b, tube: { ...tube, how: 'hard' } };
    case 'fed-lately':
      return tube === null ? b : { ...b, tube: { ...tube, fed: 'unknown' } };
    case 'looks':
      return tube === null ? b : { ...b, tube: { ...tube, looks: 'unknown' } };
    case 'contents':
    case 'ph':
    case 'secured':
      return tube === null ? b : { ...b, tube: { ...tube, stopped: true } };
    default:
      return b;
  }
}
