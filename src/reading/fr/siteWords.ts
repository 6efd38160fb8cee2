/** French for what a site has its own words for: these are put in their place. */

export const g = 'sonde g';
export const gj = 'sonde gj';
export const j = 'sonde j';
export const nose = 'sonde nasogastrique';
export const hospital = 'le hopital';
