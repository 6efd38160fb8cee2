/** Every language the line speaks to families, with what the tests look for in it. A language is one file here and one line. */
import { en } from './en.ts';
import { es } from './es.ts';
import { fr } from './fr.ts';
import type { Phrases } from './phrases.ts';

export const spoken: readonly Phrases[] = [en, es, fr];
