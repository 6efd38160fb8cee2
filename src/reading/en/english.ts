/** English, the whole of it. Its shape is what every other language must provide. */
import * as answers from './answers.ts';
import * as calendar from './calendar.ts';
import * as children from './children.ts';
import * as clock from './clock.ts';
import * as fever from './fever.ts';
import * as grammar from './grammar.ts';
import * as howIn from './howIn.ts';
import * as inPlace from './inPlace.ts';
import * as language from './language.ts';
import * as negation from './negation.ts';
import * as numbers from './numbers.ts';
import * as ph from './ph.ts';
import * as rehearsal from './rehearsal.ts';
import * as signs from './signs.ts';
import * as siteWords from './siteWords.ts';
import * as spelling from './spelling.ts';
import * as times from './times.ts';
import * as told from './told.ts';
import * as tube from './tube.ts';
import * as weight from './weight.ts';
import * as who from './who.ts';
import * as wishes from './wishes.ts';
import * as yesNo from './yesNo.ts';

export const english = {
  answers,
  calendar,
  children,
  clock,
  fever,
  grammar,
  howIn,
  inPlace,
  language,
  negation,
  numbers,
  ph,
  rehearsal,
  signs,
  siteWords,
  spelling,
  times,
  told,
  tube,
  weight,
  who,
  wishes,
  yesNo,
};
