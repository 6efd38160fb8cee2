/** The sheet a clinician signs: everything that is signed stands on it, drawn from the same tables and machines that run. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { clinicalSettings } from '#machines/protocol/settings.ts';
import { stateMap } from '#machines/stateMap.ts';
import { safeWords } from '#src/line/safeMessage.ts';
import { contentOf, machinesHash } from '#src/protocol/content.ts';
import { machineDefinitions } from '#src/protocol/definition.ts';
import { nurseSays } from '#src/protocol/nurseSamples.ts';
import { type Proof, safetyRules } from '#src/protocol/proof.ts';
import { keysOf, prefaces, sampleChildren, sampleNowMs, says } from '#src/protocol/samples.ts';
import { html } from '#src/protocol/sheet/markup.ts';
import { sheet } from '#src/protocol/sheet/page.ts';
import { rulesPage } from '#src/protocol/sheet/rules.ts';
import { loadProtocol } from '#src/seeds.ts';
import { word, wordForNurse } from '#src/wording/word.ts';

const protocol = loadProtocol(readFileSync('seeds/protocol.yaml', 'utf8'));
const page = sheet(protocol, { is: 'unsigned' });
/** What a person reads on it. */
const text = page
  .replace(/<style>.*?<\/style>/s, '')
  .replace(/<[^>]+>/g, '\u0000')
  .replaceAll('&gt;', '>')
  .replaceAll('&lt;', '<')
  .replaceAll('&quot;', '"')
  .replaceAll('&amp;', '&');

describe('the sheet', () => {
  it('shows every clinical value with default, bounds, unit, meaning and source', () => {
    for (const { unit, meaning, source, least, most } of Object.values(clinicalSettings)) {
      expect(text).toContain(meaning);
      expect(text).toContain(source);
      expect(text).toContain(`${least} to ${most}`);
      expect(text).toContain(unit);
    }
    expect(page.match(/<tr[^>]*>\s*<th scope="row">[^<]+<span>/g)).toHaveLength(keysOf(clinicalSettings).length + 1);
  });

  it('marks a value that is not the default', () => {
    expect(page).not.toContain('class="changed"');
    const strict = sheet({ ...protocol, clinical: { ...protocol.clinical, phLimit: 5 } }, { is: 'unsigned' });
    expect(strict.match(/class="changed"/g)).toHaveLength(1);
    expect(strict).toMatch(/class="changed">\s*<th scope="row">pH limit/);
  });

  it('shows every fact of the site', () => {
    const { clinicDays, languages, ...facts } = protocol.site;
    for (const fact of Object.values(facts)) expect(text).toContain(fact);
    expect(languages).toEqual(['en', 'es', 'fr']);
    expect(text).toContain('English, Spanish, French');
    expect(clinicDays).toEqual([1, 2, 3, 4, 5]);
    expect(text).toContain('Monday, Tuesday, Wednesday, Thursday, Friday');
  });

  it('shows every message as it leaves, with its key', () => {
    const scene = { site: protocol.site, nowMs: sampleNowMs, child: null, children: sampleChildren };
    for (const say of says) expect(text).toContain(word(say, { ...scene, language: 'en' }));
    for (const say of nurseSays) expect(text).toContain(wordForNurse(say, scene));
    for (const { key } of [...says, ...nurseSays, ...prefaces]) expect(text).toContain(key);
    expect(text).toContain(safeWords(protocol.site));
  });

  it('marks a language as a draft until the signature names it', () => {
    const signer = { name: 'Ada Larkfield', role: 'Nurse', regulatory: null, signedAt: '2027-03-06T02:10:00Z' };
    const signature = { ...signer, ...contentOf(protocol), languages: ['es' as const] };
    expect(text).toContain('Draft until approved.');
    expect(text).toContain('--languages es.');
    expect(sheet(protocol, { is: 'signed', signature })).not.toContain('--languages es.');
  });

  it('shows every way from one state to another that the map has', () => {
    const moves = machineDefinitions().flatMap(({ name, states }) =>
      states.flatMap(({ path, moves }) => moves.map(({ on, to }) => `${name} ${path} ${on} ${to}`)),
    );
    const pathOf = (id: string) => id.split('.').slice(1).join('.');
    for (const { name, edges } of stateMap().machines)
      for (const { from, to, label } of edges)
        expect(moves).toContain(`${name} ${pathOf(from)} ${label === 'always' ? 'at once' : label} ${pathOf(to)}`);
    expect(page.match(/<div class="state">/g)?.length).toBeGreaterThan(100);
  });

  it('has room for name, role, date and signature, its cautions, and the hash it is signed by', () => {
    for (const line of ['Name', 'Role and licence', 'Date', 'Signature']) expect(page).toContain(`<dt>${line}</dt>`);
    expect(text).toContain('not the approval of a medical device');
    expect(text).toContain('local rules');
    expect(text).toContain(contentOf(protocol).hash);
    expect(text).toContain('Unsigned.');
  });

  it('is one page by itself: no script, nothing fetched', () => {
    expect(page).not.toMatch(/<script|<link|<img|<iframe|url\(|@import| on[a-z]+=/i);
  });
});

describe('the safety rules on it', () => {
  const proof: Proof = {
    machines: machinesHash(),
    ranAt: '2027-03-06T02:10:00Z',
    states: 12_345,
    transitions: 67_890,
    rules: Object.fromEntries(keysOf(safetyRules).map((id) => [id, { exercised: 1_000, violations: 0 }])),
    longest: [{ what: 'from need to a person told', minutes: 30 }],
  };
  const read = (given: Proof | null) => rulesPage(given, machinesHash()).markup;

  it('say that no proof was run', () => {
    expect(read(null)).toContain('The proof was not run');
    expect(read(null).match(/<td>not run<\/td>/g)).toHaveLength(11);
  });

  it('carry the figures of a proof of these machines', () => {
    expect(read(proof)).toContain('12,345 states and 67,890 transitions');
    expect(read(proof).match(/1,000 times/g)).toHaveLength(11);
    expect(read(proof)).toContain('30 min');
    expect(read(proof)).not.toContain('other machines');
  });

  it('show a rule that failed, one that was never tried, and a proof of other machines', () => {
    const rules = { S1: { exercised: 9, violations: 2 } };
    const shown = read({ ...proof, machines: 'other', rules });
    expect(shown).toContain('9 times, FAILED 2');
    expect(shown.match(/<td>never<\/td>/g)).toHaveLength(10);
    expect(shown).toContain('These figures are of other machines');
  });
});

describe('its markup', () => {
  it('escapes what is no markup', () => {
    expect(html`<p>${'<b> & "c"'}${html`<i>${1}</i>`}</p>`.markup).toBe('<p>&lt;b&gt; &amp; &quot;c&quot;<i>1</i></p>');
  });
});
