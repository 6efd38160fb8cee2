/** How long the reader takes over texts made to be slow, each at the question where it takes longest. Run by hand: `npm run reading speed`. */
import { type LanguageCode, languageCodes, questionKeys } from '#machines/facts.ts';
import { type Open, read } from '#src/reading/read.ts';

const most = 1600;
const repeated = (piece: string) => piece.repeat(Math.ceil(most / piece.length)).slice(0, most);

/** By name: one short text, one ordinary, and those of the greatest length a carrier hands over. */
const texts: Readonly<Record<string, string>> = {
  short: 'yes its in, went in easy',
  ordinary: 'ok so it fell out about 20 minutes ago she is 7 kg and we have the kit',
  letters: repeated('a'),
  digits: repeated('9'),
  marks: repeated('?'),
  dates: repeated('jan 5 2024 '),
  durations: repeated('2 weeks ago '),
  times: repeated('10 to 5 '),
  numbers: repeated('5 or '),
  pounds: repeated('7 lb 8 '),
  denials: repeated('not breathing '),
  bellies: repeated('her belly is '),
  well: repeated('she is fine and good '),
  spanish: repeated('esta bien todo '),
  french: repeated('tout est bien '),
  everything: repeated(
    'no blood, not sure, 5 or 6, i think it was 2 weeks ago at 10:30pm; she is 7 kg but it wont go in? ',
  ),
};

const runs = 5;

function open(asking: Open['asking'], language: LanguageCode): Open {
  return {
    asking,
    clarifying: null,
    bareWeight: null,
    answered: null,
    caseOpen: true,
    tubeIn: true,
    nowMs: Date.parse('2027-03-06T02:10:00-05:00'),
    timeZone: 'America/New_York',
    language,
  };
}

/** The fastest of some runs, in milliseconds of this process: what a busy machine adds is left out. */
function fastestMs(text: string, at: Open): number {
  const times = Array.from({ length: runs }, () => {
    const before = process.cpuUsage();
    read(text, at);
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return Math.min(...times);
}

/** A line a text: the slowest question in each language. */
export function speedTable(): string {
  const lines = Object.entries(texts).map(([name, text]) => {
    const slowest = languageCodes.map((language) => {
      const all = questionKeys.map((key) => ({ key, ms: fastestMs(text, open(key, language)) }));
      const { key, ms } = all.reduce((a, b) => (b.ms > a.ms ? b : a));
      return `${language} ${ms.toFixed(1).padStart(5)} ms ${key.padEnd(12)}`;
    });
    return `${name.padEnd(12)} ${slowest.join('  ')}`;
  });
  return lines.join('\n');
}
