/** Spanish that binds: how people shorten words, units of time, and where a statement ends. */
import type { Marks } from '../clean.ts';
import type { TimeUnit } from '../durations.ts';
import type { Rewrite } from '../numbers.ts';
import { byEar } from './byEar.ts';

const month = '(enero|febrero|marzo|abril|mayo|junio|julio|agosto|septiembre|setiembre|octubre|noviembre|diciembre)';

/** Accents are gone already; texting spellings, and words that are written together or with another letter. */
export const contractions: readonly Rewrite[] = [
  ...byEar,
  [/\b(?:x|por) ?fa(?:vor|vorcito|s|sito)?\b/g, 'por favor'],
  [/\b(?:xq|pq|porq|xk|por que|porke|xke)\b/g, 'porque'],
  [/\b(?:q|ke|qe)\b/g, 'que'],
  [/(?<!\d ?)\bk\b/g, 'que'],
  [/\b(?:tmb|tb|tbn|tmbn|tambn)\b/g, 'tambien'],
  [/\b(?:bn|vien)\b/g, 'bien'],
  [/\bd\b(?= )/g, 'de'],
  [/\bdel (?=(?:19|20)\d{2}\b)/g, 'de '],
  // "Abril del 26" names a year.
  [new RegExp(`\\b${month} (?:del(?: ano)?|de) ([12]\\d)\\b(?![/:.]\\d| ?de )`, 'g'), '$1 de 20$2'],
  // The younger of what it may mean: the tract is no older than that.
  [/\b(lunes|martes|miercoles|jueves|viernes|sabado|domingo) antepasado\b/g, '$1 pasado'],
  // "En marzo hara 3 anos": years that are nearly full, and no date of its own.
  [new RegExp(`\\b(?:en|este|para) ${month} (?=(?:va a |ya )?(?:hara|hacer|cumple|cumplira|cumplir) )`, 'g'), ''],
  // "Ayer hizo 2 semanas" is that long ago, or a day more.
  [
    /\b(?:ayer|antier|anoche|hoy|el (?:lunes|martes|miercoles|jueves|viernes|sabado|domingo)(?: pasado)?|esta semana|la semana pasada) (?:ya )?(?:hizo|hicieron|cumplio|cumplieron|se cumplieron|hace)(?= (?:como |apenas |las |los |sus |ya )?(?:\d|una?|par|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce)\b)/g,
    'hace',
  ],
  // "La primera en 2024 esta que se salio es de hace un mes": two of them.
  [/(?<=[a-z0-9]) (?=est[ae] (?:que (?:se )?(?:le )?(?:salio|cayo|zafo|quito)|ultim[oa]|actual|otr[oa])\b)/g, ', '],
  [/\blist[oa] (?:el pollo|calisto)\b/g, 'listo'],
  [/\btoy\b/g, 'estoy'],
  [/\bta\b/g, 'esta'],
  [/\bpa\b/g, 'para'],
  [/\b(?:nose|no ze|nosé|no c|n se)\b(?! ?tube)/g, 'no se'],
  [/\b(?:ase|ace|aze|haze|hase|asce)\b/g, 'hace'],
  [
    /\b(?:ahorita mism(?:o|ito)|aora|haora|ahorita|(?<!\b(?:media|una|la|cada|\d+|dos|tres|cuatro) )(?:orita|horita)|ahoritita|ahora mism(?:o|ito))\b/g,
    'ahora',
  ],
  [/\bcallo\b/g, 'cayo'],
  [/\b(?:nomas|no mas)\b(?= ?(?:\d|aire|burbujas?|un|una|uno|tengo|tenemos|hay|queda|quedan|es)\b)/g, 'solo'],
  [/\b[bg]omit/g, 'vomit'],
  [/\b(?:sagra|sangr|zangra|sngra|sangar)(?=(?:ndo)?\b)/g, 'sangra'],
  [/\b(?:zangre|sagre|sngre|sangrre)\b/g, 'sangre'],
  [/\b(?:fievre|fiebe|fibre|febre|fiere)\b/g, 'fiebre'],
  [/\b(?:rrespir|repir|respr|rspir|resir|respier)(?=[a-z])/g, 'respir'],
  [/\b(?:asul|asules)\b/g, 'azul'],
  [/\b(?:ichad|inchad|hincad|hichad)(?=[oa]s?\b)/g, 'hinchad'],
  [/\b(?:inconci|inconsi|inconscie|inconcie)(?=\w*nt)/g, 'inconscie'],
  [/\b(?:combuls|convulc|combulc|conbuls)/g, 'convuls'],
  [/\b(?:dific?il|dificl)\b/g, 'dificil'],
  [/\b(?:balon|balonsito|globito|balonito|globo)\b/g, 'globo'],
  [/\b(?:zonda|sonada|sondita)\b/g, 'sonda'],
  [/\b(?:bot[o]nsito|botoncito|voton)\b/g, 'boton'],
  [/\btubito\b/g, 'tubo'],
  [/\bal ?rr?ededor\b/g, 'alrededor'],
  [
    /(?<=\b(?:rompio|revento|pincho|poncho|exploto) )la (?:bolita|bombita)\b|\b(?:la )?(?:bolita|bombita)(?= (?:se |esta |rota|reventad))/g,
    'el globo',
  ],
  // "Sangre y sangre": more than a list of two; what will not stop belongs to it.
  [/\bsangre y (?:mas )?sangre\b/g, 'mucha sangre'],
  [
    /(?<=\b(?:sangre|sangra|sangrando|sangrado)(?: [a-z]+){0,6} )y no (?=(?:le |se |me )*(?:para|deja|cesa|corta|detiene)\b)/g,
    'que no ',
  ],
  // A thread of it that will not stop is no small thing.
  [
    /\b(?:un |una |unas )?(?:hil(?:it)?os?|got(?:it)?as?|poquit[oa]|chorrit?os?) de sangre (?=(?:[a-z]+ ){0,4}que no (?:se |le |me )*(?:para|deja|cesa|corta|detiene|quita)\b)/g,
    'sangre ',
  ],
  [/(?<=\bno (?:[a-z]+ ){1,3})na\b/g, 'nada'],
  [/\bna de na\b/g, 'nada de nada'],
  // Of what nobody knows.
  [
    /\b(?:no (?:tengo|tenemos|tiene) )?ni (?:la )?(?:(?:mas|menor|minima|remota|palida|puta|perra) )*idea\b/g,
    'ni idea',
  ],
  [/\b(?:vaya|sepa) (?:usted|uno|dios|la bola)(?: a saber)?\b|\bve tu a saber\b|^(?:sepa|a saber)\b/g, 'quien sabe'],
  // "Va para 4 anos" is nearly that; "el verano, en julio" is July.
  [/\b(?:va|vamos|van|voy)(?: ya)? (?:para|a cumplir)(?: los| las)? (?=\w+ (?:anos?|mes(?:es)?|semanas?)\b)/g, 'casi '],
  [
    new RegExp(
      `\\b(?:en )?(?:el|este|esta|la) (?:pasad[oa] )?(?:verano|invierno|otono|primavera)(?: pasad[oa])?,? (?:como )?(?:en|por|a) (?=${month})`,
      'g',
    ),
    'en ',
  ],
  [/\bsept\b\.?/g, 'septiembre'],
  // "Julio o agosto del 2025", "yo digo abril, ella que mayo, del 2025": one year for both.
  [new RegExp(`\\b${month} (o|u|y|a|-) ${month},? (?:del? |en )?((?:19|20)\\d{2})\\b`, 'g'), '$1 de $4 $2 $3 de $4'],
  [
    new RegExp(
      `\\b${month}(,? (?:y |pero )?(?:yo|el|ella|mi \\w+|nosotros)(?: (?:digo|dice|cree|decimos|que|en))* )${month},? (?:del? |en )((?:19|20)\\d{2})\\b`,
      'g',
    ),
    '$1 de $4$2$3 de $4',
  ],
  [/(?<=^|[.,] ?|\b(?:si|ya) )echo\b/g, 'hecho'],
  [/\baki\b/g, 'aqui'],
  [/\bnari[sc]e?s?\b/g, 'nariz'],
  [/\b(?:enpuj|empuj|enpug|empug)/g, 'empuj'],
  [/\b(?:aya|haiga)\b/g, 'haya'],
  [/\bai\b/g, 'hay'],
  [/\b(?:nuebe|nuevee)\b/g, 'nueve'],
  [/\b(?:sinco|cinko)\b/g, 'cinco'],
  [/\b(?:ciete|siette)\b/g, 'siete'],
  [/\b(?:hocho|oxo)\b/g, 'ocho'],
];

/** What stands for a thumb up, a thumb down and a shrug, and for an apostrophe. */
export const marks: Marks = { yes: ' si ', no: ' no ', unsure: ' no se ', and: ' y ', apostrophe: '' };

/** What people type for a unit of time. */
export const timeUnits: Readonly<Record<TimeUnit, string>> = {
  second: 'segundos?|segunditos?|segs?|secs?',
  minute: 'minutos?|minutitos?|minuto|mintos?|mins?|mnts?|minutes?',
  hour: 'horas?|horitas?|oras?|hrs?|hs|h|hours?',
  day: 'dias?|diitas?|days?',
  week: 'semanas?|semanitas?|sems?|semnas?|weeks?',
  month: 'mes(?:es)?|mesecitos?|mesesitos?|meces|months?',
  year: 'anos?|anitos?|anios?|years?',
};

/** Where one statement ends: at a mark, "pero", "luego", "y"; never inside a number, a range or a clock time. */
export const clauseEnd =
  /[;!?]|[.,](?!\d)|\bpero\b|\basi que\b|\bluego\b(?! de)|\bentonces\b|(?<!\bentre (?:las? )?\d{1,2}(?::\d\d)? )\by\b(?! ?(?:\d|medi[ao]|pico|cuarto|algo|tantos?)\b)/;
