/** How the demo's transcript looks: a title a scene, the time and the phone before each text, lines of one width. */
import { DateTime } from 'luxon';
import type { Sent } from '#src/line/line.ts';
import type { Seeds } from '#src/seeds.ts';

export type Print = (text: string) => void;

const width = 96;
const indent = '          ';

export function title(print: Print, text: string): void {
  print(`\n${'='.repeat(width)}\n${text}\n${'='.repeat(width)}`);
}

/** A text that reached a phone, or a call that rang it. */
export function sentLine(stage: { readonly seeds: Seeds }, name: string, { body, at, kind }: Sent): string {
  return said(stage, Date.parse(at), kind === 'call' ? `call to ${name} <` : `${name} <`, body);
}

export function said({ seeds }: { readonly seeds: Seeds }, atMs: number, who: string, body: string): string {
  const time = DateTime.fromMillis(atMs, { zone: seeds.protocol.site.timeZone }).toFormat('HH:mm');
  return wrap(`${time}   ${who} ${body}`);
}

/** Breaks a text into lines of the transcript's width, later ones indented. */
export function wrap(text: string): string {
  return text
    .split('\n')
    .flatMap((paragraph, index) => wrapParagraph(index === 0 ? paragraph : indent + paragraph))
    .join('\n');
}

function wrapParagraph(text: string): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/(?<=\S) /)) {
    if (line !== '' && `${line} ${word}`.length > width) {
      lines.push(line);
      line = indent + word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
