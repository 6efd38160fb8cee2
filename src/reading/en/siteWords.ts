/** English for what a site has its own words for: these are put in their place. */

export const g = 'g tube';
export const gj = 'gj tube';
export const j = 'j tube';
export const nose = 'ng tube';
export const hospital = 'hospital';
