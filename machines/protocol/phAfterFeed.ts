/** The one clinical setting that is a choice, not a number: up to which pH a first reading may pass after a feed. */

/** Its choices, default, meaning and source, as `clinicalSettings` has them for the numbers. */
export const phAfterFeedSetting = {
  default: 7,
  choices: ['off', 6.5, 7],
  unit: 'pH',
  meaning:
    'a first reading from the limit to this may pass after a feed or medicine, under further conditions; off forbids it',
  source:
    'common practice, no source; milk itself reads 6.6 to 6.8 (Sondheimer et al, Pediatr Res 1984, abstract 1609), and NPSA/2011/PSA002 has no such exception',
} as const;
