/** The whole handover as one page of HTML to print: no script, no picture, no font from elsewhere, readable in black and white. */
import { readFileSync } from 'node:fs';
import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/settings.ts';
import { html, type Markup } from '#src/protocol/sheet/markup.ts';
import type { Stretch } from '#src/rota/gaps.ts';
import { type HandedCase, type Handover, type Severity, severities } from './handover.ts';
import { actionsOf, contingencyOf, severityWords, summaryOf } from './words.ts';

const style = readFileSync(new URL('./sheet.css', import.meta.url), 'utf8');
const ordinals = ['First', 'Second', 'Third'];

/** Writes epoch ms as the site's local time. */
export type LocalTime = (atMs: number) => string;

/** The sheet, self-contained. */
export function handoverSheet(handover: Handover, site: Site): string {
  const local: LocalTime = (atMs) =>
    DateTime.fromMillis(atMs, { zone: site.timeZone, locale: 'en' }).toFormat('ccc d LLL HH:mm');
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Handover ${local(handover.atMs)}</title>
<style>${{ markup: style }}</style>
</head>
<body>
<header>
<h1>Handover, ${local(handover.atMs)}</h1>
<p>${site.hospital}: the feeding tube line, night to day team</p>
<p class="caution">It says what families and nurses told the line, which examines nobody. Ring before you rely on it; licensed
practice and local rules come first. It names children: keep it with their papers.</p>
</header>
<main>
${severities.map((severity) => casesOf(severity, handover, local))}
${handover.cases.length === 0 ? html`<p>No case is open.</p>` : ''}
${section('Temporary tubes in place', tubeRows(handover), ['Child', 'Family', 'Days left', 'Case'])}
${section('Cleared in the last 24 hours', clearanceRows(handover, local), ['Child', 'When'])}
${section(
  'Rota gaps in the next 24 hours',
  handover.gaps.map((gap) => gapRow(gap, local)),
  ['Line', 'From', 'To'],
)}
${section('Family files that want a look', reviewRows(handover), ['Child', 'Family', 'Why'])}
${synthesis(handover)}
</main>
</body>
</html>
`.markup;
}

function casesOf(severity: Severity, { cases, atMs }: Handover, local: LocalTime): Markup {
  const these = cases.filter((one) => one.severity === severity);
  if (these.length === 0) return html``;
  return html`<section><h2>${severityWords[severity]}</h2>
${these.map((one) => caseBlock(one, atMs, local))}</section>
`;
}

function caseBlock(one: HandedCase, atMs: number, local: LocalTime): Markup {
  const line = (text: string) => html`<li>${text}</li>`;
  return html`<article>
<h3>${one.child ?? 'Unnamed child'} <small>${one.code}, family ${one.number}, since ${local(one.openedMs)}</small></h3>
<dl>
<dt>Summary</dt><dd>${summaryOf(one, atMs)}</dd>
<dt>To do</dt><dd><ul class="boxes">${actionsOf(one, local).map(line)}</ul></dd>
<dt>Watch for, and then</dt><dd>${contingencyOf(one)}</dd>
</dl>
</article>
`;
}

function section(title: string, rows: readonly (readonly string[])[], heads: readonly string[]): Markup {
  if (rows.length === 0) return html``;
  return html`<section><h2>${title}</h2>
<table><thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>
${rows.map(
  (row) => html`<tr>${row.map((cell) => html`<td>${cell}</td>`)}</tr>
`,
)}</tbody></table></section>
`;
}

function tubeRows({ tubes }: Handover): readonly (readonly string[])[] {
  return tubes.map((tube) => [
    nameOf(tube),
    tube.number,
    tube.daysLeft === null
      ? 'not in use yet'
      : tube.daysLeft < 0
        ? `OVERDUE by ${-tube.daysLeft}`
        : String(tube.daysLeft),
    tube.caseOpen ? 'open' : 'closed; the line asks no more',
  ]);
}

function clearanceRows({ clearances }: Handover, local: LocalTime): readonly (readonly string[])[] {
  return clearances.map((one) => [nameOf(one), local(one.atMs)]);
}

function gapRow({ place, startMs, endMs }: Stretch, local: LocalTime): readonly string[] {
  return [ordinals[place] ?? '', local(startMs), local(endMs)];
}

function reviewRows({ reviews }: Handover): readonly (readonly string[])[] {
  return reviews.map(({ child, number, why }) => [child ?? 'Unnamed child', number, why.join('; ')]);
}

function nameOf({ child, code }: { readonly child: string | null; readonly code: string }): string {
  return `${child ?? 'Unnamed child'} (${code})`;
}

/** The receiver's part: said back in her own words, and signed. */
function synthesis({ cases }: Handover): Markup {
  const pressing = cases.filter(({ severity }) => severity !== 'settled');
  return html`<section class="back"><h2>Said back by whoever takes over</h2>
<p>In your own words: who is most pressing, what you do first, what would change it. Then reply GOT IT to the text.</p>
${pressing.map((one) => html`<p class="line">${nameOf(one)}:</p>`)}
<p class="line">Taken over by (name, role, time):</p>
</section>
`;
}
