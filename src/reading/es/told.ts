/** Spanish for facts told unasked: ages, births, allergies, and what is not at hand. */
import type { TimeUnit } from '../durations.ts';

const unit = '(anos?|anitos|mes(?:es)?|semanas?|dias?)';
const child = '(?:hij[oa]|hijit[oa]|nin[oa]|nene|nena|bebe|niet[oa]|sobrin[oa]|peque\\w*)';

/** An age: the count and its unit. */
export const age = new RegExp(
  `\\b(\\d+(?:\\.\\d+)?) ?${unit}(?= de (?:edad|nacid[oa]|vida)\\b)|(?<=\\b${child}(?: es| ya)? de )(\\d+) ${unit}\\b|(?<=\\b(?:ella|el|(?:mi|la|el) ${child}) tiene )(\\d+) ${unit}(?= ?$| ?[,.;!])`,
  'g',
);
export const ageUnits: readonly { readonly unit: TimeUnit; readonly form: RegExp }[] = [
  { unit: 'year', form: /^a/ },
  { unit: 'month', form: /^m/ },
  { unit: 'week', form: /^s/ },
  { unit: 'day', form: /^d/ },
];
/** An age at another time, or of something else. */
export const notAge =
  /\b(?:cuando tenia|tenia|sonda de|tubo de|boton de|kit de|tiras de|a los|desde los|era de)(?: (?:como|unos|casi|apenas))*\s*$/;
export const born =
  /\b(?:nacio|nacid[oa]|fecha de nacimiento|nacimiento|cumpleanos)(?: (?:el|en|es|fue|:))*:? ?([a-z0-9 ,/.-]{4,24})/;
export const latexAllergy =
  /\b(?:alergi\w* (?:\w+ ){0,2}latex|latex alergi\w*|reaccion\w* al latex|latex\b.{0,24}\b(?:es|tiene) (?:muy )?alergi\w+|no (?:puede|tolera) (?:usar |tener |tocar )?(?:el )?latex)\b/;
/** An allergy whose matter is not named. */
export const bareAllergy =
  /(?<!\b(?:al|a el|de|del) )\balergi(?:c[oa]|as?)\b(?! (?:al|a (?!eso\b|esto\b|ese\b|ella\b)|de|del|por|estacional\w*|alimentari\w*) ?)/;
export const noAllergy =
  /\b(?:no|ni|sin|nunca|ninguna)(?: (?:es|tiene|ha|tenido|sufre|de|que|yo|sepa|ninguna|conocidas?)){0,4} alergi/;
/** The tube at hand is not said to be free of it. */
export const notLatexFree =
  /\bno (?:\w+ ){0,3}(?:sin|libre de) latex\b|\bno (?:dice|menciona|trae|pone)(?: \w+){0,3} latex\b/;
export const noLatexAllergy =
  /\blatex\b.{0,24}\bno (?:es|tiene) (?:muy )?alergi\w+|\b(?:no|sin|ni|ninguna|nunca) (?:\w+ ){0,3}(?:alergi\w* (?:\w+ ){0,2}latex|latex)\b(?<!no (?:puede|tolera) (?:usar |tener |tocar )?(?:el )?latex)/;
export const noKit =
  /\b(?:no (?:tengo|tenemos|hay|traigo|encuentro|encontramos|me dieron|nos dieron) (?:el |un |ningun |nuestro )?|sin (?:el )?|perdi (?:el )?|perdimos (?:el )?)kit\b/;
export const noStrips =
  /\b(?:no (?:tengo|tenemos|hay|encuentro|me quedan|quedan|nos quedan) (?:las |ningunas? )?|sin |se (?:me |nos )?acabaron las )(?:tiras|tiritas)\b/;
/** Test strips made for something else. */
export const otherStrips =
  /(?<!\b(?:parec\w+|igual|como|color|tipo) (?:a |de )?(?:la |el |su )?)(?<!\bno (?:son |es |tengo |use |eran )?(?:las? |los? )?(?:tiras |tiritas |de |para )*(?:la |el |las )?)(?<=\b(?:tiras?|tiritas?|papel\w*|prueba|pruebas|kit|las?|los?|unas?|unos|si,?) (?:(?:son|que|tengo|tenemos|use|usamos|de|del|para|ph|reactivas|medir|probar|es|las?|el|los?|unas) )*)(?:alberca|piscina|pileta|jacuzzi|acuario|pecera|peces|orina|pipi|glucosa|azucar|cetonas?|diabet\w+|tierra|jardin)\b/;
export const haveKit =
  /^(?:(?:si|y|yo|ya|tambien|ok|pero|aqui) )*(?:tengo|tenemos|traigo|hay) (?:el|un|nuestro|mi|su) kit(?: (?:aqui|listo|tambien|de|emergencia|conmigo|en|casa|a|mano|la))*$|(?<!\b(?:no|si|cuando|ni) )\b(?:tengo|tenemos|traigo) (?:el|mi|un) kit(?: (?:aqui|listo|conmigo|de emergencias?))*$/;
