/** A case as its timeline and its picture, and the command around them. The nights are invented. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { FolderInUse, NoLineDatabase, NoSuchCase, RecordBroken, RecordUsage } from '#src/errors.ts';
import { openEmbedded } from '#src/store/embedded.ts';
import { lockFolder } from '#src/store/folderLock.ts';
import { type Kept, keepNights, nights, nowhere, secret } from './nights.ts';
import { faultsOfXml } from './wellFormed.ts';

let kept: Kept;
const caseOf = (name: string) => String(nights.findIndex((night) => night.name === name) + 1);

beforeAll(async () => {
  kept = await keepNights();
});
afterAll(async () => kept?.remove());

const draw = async (name: string) => {
  const file = join(kept.folder, `../${caseOf(name)}.svg`);
  await kept.record(caseOf(name), '--picture', file);
  return readFileSync(file, 'utf8');
};
/** The lines that are no text of the family or to it, without what was quoted. */
const decided = (text: string) =>
  text.split('\n').filter((line) => /^\d\d:\d\d {2}(?!family|to |nurse wrote)/.test(line));

describe('the timeline', () => {
  it('tells a hard insertion: page until taken, reading against the limit, clearance, use, in local time', async () => {
    const text = await kept.record(caseOf('hold, cleared'));
    expect(decided(text).map((line) => line.replace(/ {2,}/g, ' '))).toEqual([
      '05:42 tube came out, or was last seen in (as told)',
      '05:48 weight 7 kg, as told',
      '05:52 tube temporary tube in, had to be pushed (as told)',
      '05:54 reading pH 5, limit under 6: passes',
      '05:54 STANDS AT HOLD: hold, nothing through it',
      '05:54 page urgent, to Imke (first on call): hard insertion',
      '05:59 page urgent, again, to Imke (first on call): hard insertion',
      '06:01 page taken Imke (first on call) took it, 7 min after the first call to this person',
      '06:04 NURSE cleared the tube that was hard to get in',
      '06:08 STANDS AT USE: may use it',
    ]);
    expect(text).toContain('Saturday 6 March 2027 (EST)');
    expect(text).toMatch(/05:52 {2}family wrote {4}"had to push"/);
    expect(text).toMatch(/06:01 {2}nurse wrote {5}Imke \(first on call\): "take"/);
    // Her word, what it was asked back with, her yes and its answer.
    const hers = text.split('\n').filter((line) => /^06:04 {2}(?:nurse wrote|to nurse)/.test(line));
    expect(hers.map((line) => line.replace(/^.*?: /, ''))).toEqual([
      '"clear"',
      expect.stringMatching(/^"Clear Unnamed child \(A\d\d\)\? G tube, hard insertion, pH$/),
      '"yes"',
      expect.stringMatching(/^"Cleared\. Unnamed child/),
    ]);
    // And she who had it reads the same.
    expect(text).toMatch(
      /06:08 {2}to nurse {8}Imke \(first on call\): "Unnamed child \(A\d\d\): temporary tube in use\./,
    );
    expect(text).toMatch(/15 events, checked and whole\. Last hash [0-9a-f]{64}/);
  });

  it('tells of a case by its code as by its number, and keeps every line within a chart’s width', async () => {
    const text = await kept.record('a02');
    expect(text).toBe(await kept.record('2'));
    expect(text).toContain('Child: Ode, born 2021-11-02');
    expect(text.split('\n').filter((line) => line.length > 100 && !/hash|protocol/.test(line))).toEqual([]);
  });

  it('tells both readings of a recheck, and everybody who was called and did not take it', async () => {
    const lines = decided(await kept.record(caseOf('recheck'))).join('\n');
    expect(lines).toMatch(
      /pH 6\.5 to 7, limit under 6: NOT UNDER[\s\S]*RECHECK[\s\S]*pH 7, limit under 6: NOT UNDER[\s\S]*GO-IN/,
    );
    expect(lines).toMatch(/first on call[\s\S]*second on call[\s\S]*third on call/);
    expect(lines).not.toContain('page taken');
  });
});

describe('pictures and voice notes', () => {
  it('are in the timeline with when they came, from whom and whether they were kept, and nothing of what they show', async () => {
    const text = await kept.record(caseOf('own tube'));
    const came = text.split('\n').filter((line) => line.includes('['));
    expect(came.map((line) => line.replace(/^\d\d:\d\d/, 'hh:mm').replace(/ {2,}/g, ' '))).toEqual([
      'hh:mm family wrote "hello" [picture, kept sealed by the line]',
      'hh:mm family wrote [picture, kept sealed by the line] [picture or voice note, could not be kept]',
      'hh:mm family wrote "4.5" [voice note, kept sealed by the line]',
    ]);
    for (const hidden of [secret, nowhere, 'base64', '/media/']) expect(text).not.toContain(hidden);
  });

  it('are marked in the picture, one eye a text, and told in its legend', async () => {
    const eyes = async (name: string) => (await draw(name)).split(/r="1\.8"/).length - 1;
    expect(await eyes('own tube')).toBe(4);
    expect(await eyes('use')).toBe(1);
  });
});

describe('the timeline of a case a nurse reported', () => {
  it('shows that the line was wrong, in her words', async () => {
    const text = decided(await kept.record(caseOf('emergency'))).join('\n');
    expect(text).toContain('STANDS AT       EMERGENCY: call emergency');
    expect(text).toContain('REPORTED THAT THE LINE WAS WRONG: "it asked too much"');
  });
});

describe('the picture', () => {
  it('has a title, and says in words what it shows', async () => {
    const svg = await draw('recheck');
    expect(svg).toMatch(/<svg [^>]*role="img" aria-labelledby="title desc"/);
    expect(svg).toMatch(/<desc id="desc">.*pH 6\.5 to 7 against a limit of 6\..*family told recheck\..*<\/desc>/);
  });

  it.each(nights.map(({ name }) => name))('of %s is XML that a browser shows', async (name) => {
    expect(faultsOfXml(await draw(name))).toEqual([]);
  });

  it.each([
    ['<a b="1" b="2"/>', 'an attribute twice in <a b="1" b="2"/>'],
    ['<a><b></a></b>', '</a> closes what is not open'],
    ['<a>1 & 2</a>', 'a bare ampersand in 1 & 2'],
    ['<a', 'no tag at <a'],
    ['<a>', 'a is not closed'],
  ])('that is %s would be none', (xml, fault) => {
    expect(faultsOfXml(xml)[0]).toBe(fault);
  });

  it('tells by shape and words, not by colour', async () => {
    const svg = await draw('hold, cleared');
    const colours = new Set([...svg.matchAll(/(?:fill|stroke)="(#[0-9a-f]+)"/g)].map((match) => match[1]));
    expect([...colours].sort()).toEqual(['#111', '#767676', '#fff'].filter((colour) => colours.has(colour)).sort());
    for (const words of ['limit 6', '5, passes', 'temporary tube in: NOT to be used', 'taken after 7 min'])
      expect(svg).toContain(words);
  });

  it.each(nights.map(({ name }) => name))('of %s keeps all of its words within its sheet', async (name) => {
    const svg = await draw(name);
    const width = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]);
    const starts = [...svg.matchAll(/<text x="([\d.]+)" y="[\d.-]+" (?![^>]*text-anchor)[^>]*>([^<]*)</g)];
    expect(starts.length).toBeGreaterThan(15);
    // 5.6 px a letter at 11 px: the mean of a sans-serif face, common practice, no source.
    const over = starts.filter(([, x, words = '']) => Number(x) + words.length * 5.6 > width);
    expect(over.map(([, , words]) => words)).toEqual([]);
  });
});

describe('the command', () => {
  it('finds every record whole', async () => {
    expect(await kept.record('verify')).toMatch(/^6 cases, \d+ events: as the line wrote them\.$/);
    expect(await kept.record('verify', 'A03')).toMatch(/^1 case, 15 events/);
  });

  it('refuses a case that is not there, a call it does not know, and a folder without a line', async () => {
    await expect(kept.record('Z99')).rejects.toThrow(NoSuchCase);
    await expect(kept.record('verify', '77')).rejects.toThrow(NoSuchCase);
    await expect(kept.record()).rejects.toThrow(RecordUsage);
    await expect(kept.record('1', '2')).rejects.toThrow(RecordUsage);
    await expect(kept.record('1', '--colour')).rejects.toThrow(RecordUsage);
    await expect(kept.recordIn(join(kept.folder, 'none'), '1')).rejects.toThrow(NoLineDatabase);
  });

  it('does not read beside a running line', async () => {
    const lock = await lockFolder(kept.folder);
    await expect(kept.record('1')).rejects.toThrow(FolderInUse);
    await lock.release();
  });

  it('names the bad event of a tampered case, ends with 1, and draws nothing of it', async () => {
    const database = await openEmbedded(kept.folder);
    await database.query('DROP TRIGGER event_append_only ON event');
    await database.query('UPDATE event SET at_ms = at_ms - 60000 WHERE case_id = 6 AND number = 4');
    await database.close();
    const words = ['src/main.ts', 'record', 'verify', '--data', kept.folder];
    const { status, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8' });
    expect(status).toBe(1);
    expect(stderr).toContain('case A06 (number 6): event 4 of');
    const file = join(kept.folder, '../bad.svg');
    await expect(kept.record('6', '--picture', file)).rejects.toThrow(RecordBroken);
    expect(existsSync(file)).toBe(false);
    expect(await kept.record('6')).toMatch(/^THIS RECORD IS NOT AS THE LINE WROTE IT: case A06/);
    expect(await kept.record('verify', '3')).toContain('15 events');
  });
});
