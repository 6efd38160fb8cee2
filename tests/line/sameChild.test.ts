/**
 * The grandmother's phone, on the whole practice line in the words people use: nobody's on file, asked one question, and in the
 * family's case where the child's name and a parent's digits fit; a stranger who guesses learns nothing.
 */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type App, practiceOn } from '#src/app.ts';
import { createLog } from '#src/log.ts';
import { verifyCase } from '#src/record/verify.ts';
import { eraseFamily, exportFamily } from '#src/retention/family.ts';
import { loadSeeds } from '#src/seeds.ts';
import type { Database } from '#src/store/database.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';
import { databases } from '#tests/store/databases.ts';

const seeds = loadSeeds('seeds');
const nurses = seeds.rota.nurses.map(({ number }) => number);
const night = Date.parse('2027-03-06T02:10:00-05:00');
const mother = '+12125550171';
const father = '+12125550172';
const grandmother = '+12125550173';
const family = {
  child: 'Tam',
  born: '2024-05-01',
  tubeKind: 'g',
  firstPlaced: '2025-01-10',
  weightKg: 11.5,
  weighedOn: '2027-02-01',
  language: 'en',
  phones: [father],
} as const;
const out = 'the g tube fell out';
const isGrandma = "this is tam's grandma, the tube fell out";

let app: App;
let database: Database;
let count = 0;
const seal = createSeal(practiceKey);

/** What left because of a text, a list a phone; `nurses` together. */
async function text(body: string, from: string) {
  const cause = `same-child-${++count}`;
  await app.line.hear({ from, body, id: cause, cause });
  await app.line.settle(cause);
  const sent = await app.line.sentBecauseOf(cause);
  const to = (numbers: readonly string[]) => sent.filter((one) => numbers.includes(one.to)).map((one) => one.body);
  return { mother: to([mother]), grandmother: to([grandmother]), nurses: to(nurses) };
}
const caseOf = (number: string) => app.line.newestCase(number);
const asking = async (number: string) => (await caseOf(number))?.asking;
async function grandmaAsked(first = isGrandma) {
  await text(out, mother);
  await text(first, grandmother);
  return text('no', grandmother);
}

/** The first on call takes what waits, and closes it. */
async function close() {
  for (const word of ['take', 'close', 'yes']) await text(word, nurses[0] ?? '');
}

describe.each(databases())('on the $name database', ({ open }) => {
  beforeAll(async () => {
    database = await open();
    app = await practiceOn(database, 'seeds', seeds, createLog({ write: () => {} }));
  });
  afterAll(() => app.stop());
  beforeEach(async () => {
    await app.line.reset(night, { families: seeds.families });
    await app.line.enrol(mother, family);
  });

  describe('a phone that says it is the grandmother', () => {
    it('hears the first answer at once, then one question, and a name with digits joins it: both see what matters', async () => {
      await text(out, mother);
      const first = await text(isGrandma, grandmother);
      expect(first.grandmother.join()).toContain('911');
      expect(await asking(grandmother)).toBe('unwell');
      const question = await text('no', grandmother);
      expect(await asking(grandmother)).toBe('who');
      expect(question.grandmother).toHaveLength(1);
      expect(question.mother).toEqual([]);
      const joined = await text('Tam 0171', grandmother);
      expect((await caseOf(grandmother))?.id).toBe((await caseOf(mother))?.id);
      expect(joined.mother).toEqual([expect.stringContaining('ends in 0173')]);
      expect(joined.grandmother.at(-1)).toContain('Trouble breathing?');
      const well = await text('no', grandmother);
      expect(well.mother).toEqual(well.grandmother);
      expect(well.mother.join()).toContain('On file for Tam');
      for (const { id } of await database.query<{ id: number }>('SELECT id FROM "case"'))
        expect(await verifyCase(database, seal, id)).toMatchObject({ whole: true });
    });

    it.each(['tam 0172', 'its Tam, +1 212 555 0171', 'yes my daughter. TAM. 212-555-0171', '0171 tam'])(
      '"%s" fits as well',
      async (answer) => {
        await grandmaAsked();
        await text(answer, grandmother);
        expect((await caseOf(grandmother))?.id).toBe((await caseOf(mother))?.id);
      },
    );

    it('says it in a first text that is not about a tube, and is asked all the same', async () => {
      await text(out, mother);
      await text("hi this is tam's grandma", grandmother);
      await text('yes', grandmother);
      await text('no', grandmother);
      expect(await asking(grandmother)).toBe('who');
    });

    it('says it in a first text that is not about a tube, tells of the tube in the next, and is asked', async () => {
      await text(out, mother);
      await text("this is tam's mom, on my sisters phone", grandmother);
      await text('yes the g tube fell out', grandmother);
      await text('no', grandmother);
      expect(await asking(grandmother)).toBe('who');
    });

    it('says that it is the same case once its own is open, and is asked', async () => {
      await text(out, mother);
      await text(out, grandmother);
      await text('no', grandmother);
      await text('its me again, same case as before', grandmother);
      expect(await asking(grandmother)).toBe('who');
      await text('tam 0171', grandmother);
      expect((await caseOf(grandmother))?.id).toBe((await caseOf(mother))?.id);
    });

    it('is heard in Spanish and French', async () => {
      await text(out, mother);
      await text('soy la abuela, se le salió la sonda', grandmother);
      const asked = await text('no', grandmother);
      expect(asked.grandmother.join()).toContain('Responda como SAM 1234');
      await text('Tam 0171', grandmother);
      expect((await caseOf(grandmother))?.id).toBe((await caseOf(mother))?.id);
      const french = '+12125550174';
      await text("c'est sa mamie, la sonde est sortie", french);
      await text('non', french);
      expect(await asking(french)).toBe('who');
      await text('Tam 0172', french);
      expect((await caseOf(french))?.id).toBe((await caseOf(mother))?.id);
    });

    it('has what it told heard there, on the careful side, and a danger of hers is everybody’s', async () => {
      await grandmaAsked('this is the babysitter, her gj tube came out 20 min ago');
      await text('Tam 0171', grandmother);
      expect((await caseOf(mother))?.facts).toMatchObject({ tubeKind: 'gj' });
      const danger = await text('she is turning blue', grandmother);
      expect(danger.mother[0]).toContain('911');
      expect(danger.nurses.join()).toContain('EMERGENCY');
      expect((await caseOf(mother))?.disposition).toBe('emergency');
    });

    it('has the nurse who was called for her called for the family’s case', async () => {
      await grandmaAsked('grandma here, tube is out, please have a nurse call me');
      const joined = await text('Tam 0171', grandmother);
      expect(joined.nurses.join()).toContain('Tam');
      expect((await caseOf(mother))?.pages).not.toEqual([]);
    });

    it('names which of several children it is', async () => {
      const { language: _, phones: __, ...tam } = family;
      await app.line.enrol(mother, { ...family, siblings: [{ ...tam, child: 'Ivo', tubeKind: 'gj' }] });
      await grandmaAsked('im the aunt, the tube is out');
      await text('Ivo 0171', grandmother);
      await text('no', mother);
      expect(await caseOf(grandmother)).toMatchObject({ asking: 'confirm', facts: { tubeKind: 'gj' } });
    });

    it('once that case is closed, is a phone that nobody knows again', async () => {
      await grandmaAsked();
      await text('Tam 0171', grandmother);
      await text('please get me a nurse', grandmother);
      await close();
      await text(out, grandmother);
      expect((await caseOf(grandmother))?.id).not.toBe((await caseOf(mother))?.id);
    });
  });

  describe('a stranger', () => {
    it.each([
      ['a wrong number', 'Tam 0199'],
      ['a wrong name', 'Wren 0171'],
      ['a number alone', '2125550171'],
      ['three digits', 'Tam 171'],
      ['a number that only ends one digit short', 'Tam 10171'],
    ])(
      'with %s hears the question once more and then has a case of its own; the page says what it may be',
      async (_, answer) => {
        await grandmaAsked();
        const again = await text(answer, grandmother);
        expect(await asking(grandmother)).toBe('who');
        const done = await text(answer, grandmother);
        expect(await asking(grandmother)).toBe('tube-kind');
        expect((await caseOf(grandmother))?.id).not.toBe((await caseOf(mother))?.id);
        expect(done.nurses.join()).toContain("may be another open case's child");
        expect([...again.grandmother, ...done.grandmother].join()).not.toMatch(/Tam|0171|0172/);
        expect([...again.mother, ...done.mother]).toEqual([]);
        await text('Tam 0171', grandmother);
        expect((await caseOf(grandmother))?.id).not.toBe((await caseOf(mother))?.id);
      },
    );

    it('is asked the same whoever it names and whatever is on file', async () => {
      await text(out, mother);
      const hears = async (from: string, first: string) => {
        const texts = [await text(first, from), await text('no', from), await text('Zed 0188', from)];
        expect(texts.flatMap(({ mother: told }) => told)).toEqual([]);
        return (await app.line.thread(from)).filter(({ direction }) => direction === 'out').map(({ body }) => body);
      };
      const named = await hears('+12125550181', "this is tam's aunt, the tube fell out");
      expect(await hears('+12125550182', "this is zed's aunt, the tube fell out")).toEqual(named);
    });

    it('whose name and digits fit two open cases joins neither', async () => {
      await app.line.enrol('+13125550171', { ...family, phones: [] });
      await text(out, '+13125550171');
      await grandmaAsked();
      await text('Tam 0171', grandmother);
      expect(await asking(grandmother)).toBe('who');
    });

    it('is not asked where no family’s case is open, nor where the phone is on file or says nothing of itself', async () => {
      await text(isGrandma, grandmother);
      await text('no', grandmother);
      expect(await asking(grandmother)).toBe('tube-kind');
      await text("this is tam's dad, the tube fell out", father);
      await text('no', father);
      expect(await asking(father)).toBe('confirm');
      await text('the tube fell out', '+12125550175');
      await text('no', '+12125550175');
      expect(await asking('+12125550175')).toBe('tube-kind');
    });

    it('that practises is not asked', async () => {
      await text(out, mother);
      await text('can we practice', grandmother);
      await text(isGrandma, grandmother);
      await text('no', grandmother);
      expect(await asking(grandmother)).toBe('tube-kind');
    });

    it('joins no rehearsal', async () => {
      await text('can we practice', mother);
      await app.line.enrol('+13125550188', { ...family, child: 'Ivo', phones: [] });
      await text(out, '+13125550188');
      await text(isGrandma, grandmother);
      await text('no', grandmother);
      await text('Tam 0171', grandmother);
      expect(await asking(grandmother)).toBe('who');
    });

    it('with a danger is told at once what to do, whatever else the text says', async () => {
      await text(out, mother);
      const first = await text('grandma here. tube out and she is turning blue', grandmother);
      expect(first.grandmother[0]).toContain('911');
      expect(first.nurses.join()).toContain('DANGER SIGN');
      expect((await caseOf(grandmother))?.disposition).toBe('emergency');
    });
  });

  describe('a family that is erased', () => {
    it('takes with it what the grandmother told and was told, before she joined and after', async () => {
      await grandmaAsked('tams grandma here, aardvark, the tube fell out');
      await text('Tam 0171', grandmother);
      await text('bandicoot. please get me a nurse', grandmother);
      await close();
      const copy = JSON.stringify(await exportFamily(database, seal, mother));
      expect(copy).toContain('"mayJoin":true');
      await database.transaction((client) => eraseFamily(client, seal, mother, { nowMs: night, by: 'Wilma' }));
      const rows = await database.query<{ body: Buffer }>('SELECT body FROM message UNION ALL SELECT body FROM event');
      const words = rows.map(({ body }) => seal.open(body)).join('\n');
      expect(words).not.toMatch(/Tam|aardvark|bandicoot/);
    });
  });

  describe('a family that does not know the phone', () => {
    it('replies NURSE, and a nurse is called', async () => {
      await grandmaAsked();
      await text('Tam 0171', grandmother);
      expect((await text('nurse', mother)).nurses.join()).toContain('asks for a person');
    });
  });
});
