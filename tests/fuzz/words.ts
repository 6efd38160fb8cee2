/** What is written to the line under attack: plausible answers, and everything a phone, a script or a broken carrier may send. */
import type { Dice } from './dice.ts';

/** Invented texts that lead a case on, in the three languages; a tube, a danger, answers to every question. */
const plausible = [
  ...['his g tube came out', 'the gj fell out', 'tube is half out', 'se le salio la sonda', 'la sonde est sortie'],
  ...['yes', 'no', 'not sure', 'si', 'oui', 'easy', 'hard', 'it wont go in', 'went in easy', 'burst', 'B', '1', 'A'],
  ...['two years ago', 'march 2024', 'last week', '20 min ago', 'at 1:30 am', '13 kg', '28 lb', '13', 'under 3'],
  ...['5.0', '4.5', '6', '7', 'between 5 and 6', 'green', 'cant read it', 'ok', 'done', 'all done, taped', 'no kit'],
  ...['she cant breathe', 'no puede respirar', 'blood', 'belly is hard', 'vomiting green', 'fever 39.5', 'he is limp'],
  ...['stop', 'start', 'help', 'STOP', 'thanks', 'what', '', ' ', '?', 'wait', 'repeat', 'nurse please', 'espanol'],
  ...['we are at the hospital', 'first feed ok', 'it came out again', 'wrong number', 'who is this', 'she is crying'],
];
const nurseWords = [
  ...['take', 'TAKE', 'clear', 'close', 'yes', 'no', 'take A01', 'clear B02', 'swap tonight with Tariq', 'yes swap'],
  ...['no swap', 'got it', 'send in', 'pass', 'hello', 'close it', 'report', 'list', 'say come to the clinic'],
];

const strange = [
  ...['\0', 'a\0b', '\ud800', 'x\udfffy', '\udc00\ud800', '\ufeff', '\u202e', '\u200d\u200d', 'e\u0301'.repeat(40)],
  ...['\u{1f6a8}'.repeat(200), '\r\n\r\nHTTP/1.1 200 OK', '<script>alert(1)</script>', '{{constructor}}', '%00%ff%zz'],
  ...["'; DROP TABLE phone; --", '$1', '$(env)', '../../../etc/passwd', '__proto__', 'constructor', 'null', 'NaN'],
  ...['1e999', '-0', '99999999999999999999', '٣٫٥', '½', '１２', '5..5', '0x10', 'yes no yes no', '\t\v\f', '=cmd|x'],
  ...['<!DOCTYPE x [<!ENTITY y SYSTEM "file:///etc/passwd">]>', '%s%s%n', '\u001b[2J', '\u2028', 'ﷺ'.repeat(90)],
];

export function nurseText(dice: Dice): string {
  return dice.chance(0.7) ? dice.oneOf(nurseWords) : anyText(dice);
}

/** A text of a caregiver, most of them such that a case goes on. */
export function anyText(dice: Dice): string {
  const throwOf = dice.below(100);
  if (throwOf < 60) return dice.oneOf(plausible);
  if (throwOf < 75) return mutated(dice, dice.oneOf(plausible));
  if (throwOf < 85) return `${dice.oneOf(plausible)} ${dice.oneOf(plausible)} ${dice.oneOf(strange)}`;
  if (throwOf < 95) return dice.oneOf(strange);
  return noise(dice, dice.below(2000));
}

/** Characters changed, lost, doubled or put in. */
export function mutated(dice: Dice, text: string): string {
  const units = [...text];
  for (let times = 1 + dice.below(4); times > 0; times -= 1) {
    const place = dice.below(units.length + 1);
    const put = dice.chance(0.5) ? [String.fromCharCode(dice.below(0x10000))] : [];
    units.splice(place, dice.below(3), ...put);
  }
  return units.join('');
}

/** Any UTF-16 units, halves of characters too. */
export function noise(dice: Dice, length: number): string {
  const most = dice.oneOf([0x80, 0x250, 0x10000]);
  return Array.from({ length }, () => String.fromCharCode(dice.below(most))).join('');
}

export function anyBytes(dice: Dice, length: number): Buffer {
  return Buffer.from(Array.from({ length }, () => dice.below(256)));
}
