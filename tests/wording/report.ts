/** Prints every message in every language with its characters, encoding, segments and ease, then what whole nights cost. */
import type { LanguageCode } from '#src/wording/catalogue.ts';
import { word, wordForNurse } from '#src/wording/word.ts';
import { costOf, nights } from './cost.ts';
import { nurseSays } from './nurseSamples.ts';
import { spoken } from './phrases/spoken.ts';
import { ownWords, readability } from './readability.ts';
import { prefaces, says, scene } from './samples.ts';
import { segmentsOf } from './segments.ts';

function line(name: string, text: string, ease: string): string {
  const { count, encoding } = segmentsOf(text);
  return `${name.padEnd(22)} ${String(text.length).padStart(3)} chars  ${encoding}  ${count} seg  ${ease}\n  ${text.replaceAll('\n', '\n  ')}\n`;
}

function caregiverLines(language: LanguageCode): string[] {
  const told = { ...scene, language };
  const { name, of } = readability[language];
  const ease = (text: string) => `${name} ${of(ownWords(text, scene.site)).toFixed(1)}`;
  const bare = word({ key: 'thanks', params: {}, preface: [] }, told);
  return [
    ...says.map((say) => {
      const text = word(say, told);
      return line(say.key, text, ease(text));
    }),
    ...prefaces.map((preface) => {
      const whole = word({ key: 'thanks', params: {}, preface: [preface] }, told);
      const text = whole.slice(0, whole.length - bare.length).trim();
      return line(`+ ${preface.key}`, text, ease(text));
    }),
  ];
}

const nurseLines = nurseSays.map((message) => line(`nurse ${message.key}`, wordForNurse(message, scene), ''));

const costs = nights.map(([name, lead]) => {
  const night = lead();
  const each = spoken.map(({ code }) => {
    const { texts, segments } = costOf(night, code);
    return `${code} ${segments} segments in ${texts} texts`;
  });
  return `${name.padEnd(34)} ${each.join('; ')}`;
});

const parts = [
  ...spoken.map(({ code }) => `== to caregivers, ${code}\n\n${[...new Set(caregiverLines(code))].join('\n')}`),
  `== to nurses\n\n${[...new Set(nurseLines)].join('\n')}`,
  `== whole nights\n\n${costs.join('\n')}\n`,
];
process.stdout.write(parts.join('\n'));
