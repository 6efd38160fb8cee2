/** The site's facts and the clinical values as tables: each value with its default, bounds, unit, meaning and source. */
import { Info } from 'luxon';
import { languageCodes } from '#machines/facts.ts';
import { phAfterFeedSetting } from '#machines/protocol/phAfterFeed.ts';
import { type Clinical, type ClinicalName, clinicalSettings, type Site } from '#machines/protocol/settings.ts';
import { quietHoursOf } from '#machines/rules/quietHours.ts';
import { handoverAt } from '#src/handover/when.ts';
import { listed } from '#src/reading/siteWords.ts';
import { languageNames } from '../languages.ts';
import { keysOf } from '../samples.ts';
import { html, type Markup, spoken } from './markup.ts';

/** The first setting of each table; the others follow in their own order. */
const tables: Partial<Record<ClinicalName, string>> = {
  tractUsableAfterDays: 'Tract and insertion',
  phLimit: 'Reading and recheck',
  contentsTries: 'Contents, balloon and stay',
  quietMinutes: 'Silence',
  arrivedAfterMinutes: 'What follows',
  emergencyRepeatMinutes: 'Pages',
};

interface Row {
  readonly name: string;
  readonly value: string;
  readonly changed: boolean;
  readonly default: string;
  readonly bounds: string;
  readonly unit: string;
  readonly meaning: string;
  readonly source: string;
}

/** The clinical values, one table a subject. */
export function valueTables(clinical: Clinical): readonly Markup[] {
  const groups: { title: string; rows: Row[] }[] = [];
  for (const name of keysOf(clinicalSettings)) {
    const title = tables[name];
    if (title !== undefined) groups.push({ title, rows: [] });
    groups.at(-1)?.rows.push(...rowsOf(name, clinical));
  }
  return groups.map(({ title, rows }) => valueTable(title, rows));
}

/** The one choice among the numbers stands beside the limit it loosens. */
function rowsOf(name: ClinicalName, clinical: Clinical): Row[] {
  const { least, most, unit, meaning, source, ...setting } = clinicalSettings[name];
  const row: Row = {
    name: spoken(name),
    value: String(clinical[name]),
    changed: clinical[name] !== setting.default,
    default: String(setting.default),
    bounds: `${least} to ${most}`,
    unit,
    meaning,
    source,
  };
  return name === 'phLimit' ? [row, afterFeedRow(clinical)] : [row];
}

function afterFeedRow({ phAfterFeed }: Clinical): Row {
  const { choices, unit, meaning, source } = phAfterFeedSetting;
  return {
    name: 'ph after feed',
    value: String(phAfterFeed),
    changed: phAfterFeed !== phAfterFeedSetting.default,
    default: String(phAfterFeedSetting.default),
    bounds: choices.join(', '),
    unit,
    meaning,
    source,
  };
}

function valueTable(title: string, rows: readonly Row[]): Markup {
  return html`<h3>${title}</h3>
<table class="values">
<thead><tr><th scope="col">Setting</th><th scope="col">Value</th><th scope="col">Default</th><th scope="col">Bounds</th><th scope="col">Source</th></tr></thead>
<tbody>
${rows.map(
  (row) => html`<tr${{ markup: row.changed ? ' class="changed"' : '' }}>
<th scope="row">${row.name}<span>${row.meaning}</span></th>
<td class="value"><b>${row.value}</b> ${row.unit}${row.changed ? html`<em>changed</em>` : ''}</td>
<td>${row.default}</td><td>${row.bounds}</td><td class="source">${row.source}</td></tr>
`,
)}</tbody></table>`;
}

/** Each of the site's words with what it stands for. */
function ownWords({ words }: Site): string {
  const all = listed(words ?? {}).map(({ word, meaning }) => `${word} (${meaning})`);
  return all.length === 0 ? 'none' : all.join(', ');
}

/** The site's own facts. */
export function siteTable(site: Site): Markup {
  const days = [...site.clinicDays]
    .sort((a, b) => a - b)
    .map((day) => Info.weekdays('long', { locale: 'en' })[day - 1]);
  const quiet = quietHoursOf(site);
  const facts: readonly (readonly [string, string])[] = [
    ['Hospital, as families read it', site.hospital],
    ['The hospital, for a family no nurse answers', site.hospitalNumber ?? 'not told'],
    ['Emergency number', site.emergencyNumber],
    ['Clinic', site.clinicNumber],
    ['Rung when the rota names nobody', site.fallbackNumber],
    ['Time zone', site.timeZone],
    ['Languages', (site.languages ?? languageCodes).map((code) => languageNames[code]).join(', ')],
    ['Its own words', ownWords(site)],
    ['Clinic days', days.join(', ')],
    ['Clinic hours', `${site.clinicOpens} to ${site.clinicCloses}`],
    ['Quiet hours of the family', `${quiet.from} to ${quiet.until}`],
    ['Holiday calendar', site.holidays ?? 'none'],
    ['Morning handover', site.handoverNumber === undefined ? 'none' : `${handoverAt(site)}, to ${site.handoverNumber}`],
  ];
  return html`<table class="facts"><tbody>
${facts.map(([name, value]) => html`<tr><th scope="row">${name}</th><td>${value}</td></tr>`)}
</tbody></table>`;
}
