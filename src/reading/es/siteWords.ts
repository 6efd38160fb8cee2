/** Spanish for what a site has its own words for: these are put in their place. */

export const g = 'sonda g';
export const gj = 'sonda gj';
export const j = 'sonda j';
export const nose = 'sonda nasogastrica';
export const hospital = 'hospital';
