/** English: how a nurse reads why she is called, the age of a tract, what is in the stoma, and what a family was told. */
import type { Disposition, PageReason } from '#machines/facts.ts';
import type { TractVerdict } from '#machines/rules/tractAge.ts';
import type { Card } from '#machines/says.ts';

export const reasonNames: Readonly<Record<PageReason, string>> = {
  'danger-sign': 'DANGER SIGN',
  'warning-sign': 'warning sign',
  'tract-too-young': 'tract too young to insert',
  'tract-nearly-too-young': 'very young tract, one try',
  'unwell-unread': 'danger signs not answered clearly',
  'restricted-kind': 'tube kind not for use at home',
  'restricted-tract': 'tract not usable',
  'half-out': 'tube half out',
  'in-place': 'tube in, never out',
  'in-blocked': 'tube in, blocked',
  'in-sore': 'tube in, hole sore or pus',
  'in-leaking': 'tube in, leaking',
  'nose-tube': 'nose tube',
  latex: 'latex allergy, no latex-free tube',
  'no-kit': 'no kit',
  'not-shown': 'no one shown how',
  'will-not-go-in': 'tube will not go in',
  'out-too-long': 'out too long',
  'hard-insertion': 'hard insertion',
  'no-strips': 'no pH strips',
  'no-contents': 'no contents drawn',
  'second-high': 'second pH high',
  unread: 'answers not readable',
  'not-secured': 'not secured',
  'tube-problem': 'flow or balloon problem',
  'came-out-again': 'came out again',
  stopped: 'opted out, please phone',
  'person-wanted': 'asks for a person',
  rang: 'rang the line',
  'cannot-wait': "feed or medicine can't wait",
  silence: 'no answer',
  'unread-in-use': 'a text not readable, tube in use',
  'aftercare-silence': 'no answer to a check-up text',
  'not-arrived': 'not at the hospital',
  'not-reached': 'our texts do not reach the family, ring them',
  untouched: 'family waits, no text from its nurse',
  'not-well-after': 'not well after',
  'sick-line': 'line fault, needs a person',
  'weight-unknown': 'weight unknown',
  'which-child': 'which child is not known',
  'same-child': "may be another open case's child",
  'child-corrected': 'another child than told first',
  'other-child': 'more than one child, maybe out',
  'weight-doubtful': 'weight unusual for age, told twice',
  'reading-corrected': 'pH reading changed by the family',
  'after-feed-reading': 'after-feed pH rule applied',
  'clinic-not-called': 'clinic not called',
  'stay-limit': 'stay limit reached',
};

export const tractNames: Readonly<Record<TractVerdict, string>> = {
  unknown: 'tract age unknown',
  'too-young': 'tract too young',
  'nearly-too-young': 'tract very young',
  young: 'tract young',
  usable: 'mature tract',
};

export const insideNames: Readonly<Record<Card['inside'], string>> = {
  own: 'Own tube in',
  temporary: 'Temporary tube in',
  'half-out': 'Half out',
  'in-place': 'Never came out',
  nose: 'Not put back',
  nothing: 'Nothing in',
};

export const dispositionNames: Readonly<Record<Disposition, string>> = {
  emergency: 'call emergency',
  'go-in': 'go in',
  hold: 'hold, nothing through it',
  recheck: 'wait, retest',
  use: 'may use it',
  'own-tube': 'may use it',
  nurse: 'wait for nurse',
};
