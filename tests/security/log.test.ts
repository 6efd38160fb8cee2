/** A whole night's log, failures of every part included, holds no number, name, word or secret of anybody. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Database, Queryable } from '#src/store/database.ts';
import { practiceKey } from '#src/store/seal.ts';
import { authToken } from '#tests/carrier/double.ts';
import { type Dice, diceOf } from '#tests/fuzz/dice.ts';
import { openStand, type Stand } from '#tests/fuzz/stand.ts';
import { databases, type TestDatabase } from '#tests/store/databases.ts';
import { found, typescript } from '#tests/tidy/tree.ts';
import { signedPost } from './signedPost.ts';

const families = Array.from({ length: 12 }, (_, index) => `+120255501${index + 60}`);
const nurses = ['+12125550151', '+12125550152', '+12125550153'];
const children = ['Quillon', 'Brambleby', 'Éowilde'];
/** Each text has a word nothing else has. */
const texts = [
  'his g tube came out zanzibar',
  'no hes fine xylograph',
  'two years ago quixotry',
  'at 1:40 am ozymand',
  'she cant breathe kumquat',
  'nurse please vermicel',
  'went in hard bergamott',
  '5.0 wombatish',
  'stop trapezoid',
  '<b>\0 \ud800 flugelhorn',
];
const nurseTexts = ['take', 'clear', 'yes', 'say tell her periwinkle', 'close', 'yes', 'report marzipan'];

let failing = false;

/** Statements fail as a server's do: with a message and details that quote the values. */
function quoting(database: Database, dice: Dice): Database {
  const over = (client: Queryable): Queryable => ({
    query: async (text, values) => {
      if (failing && dice.chance(0.12)) {
        const quoted = JSON.stringify(values?.map(String) ?? []);
        throw Object.assign(new Error(`invalid input: ${quoted}`), { code: '22P02', detail: quoted, where: quoted });
      }
      return client.query(text, values);
    },
  });
  return {
    ...database,
    ...over(database),
    transaction: (work) => database.transaction((client) => work(over(client))),
  };
}

describe.each(databases())('on the $name database', (test) => {
  let stand: Stand;

  beforeAll(async () => {
    const dice = diceOf(7);
    const broken: TestDatabase = { ...test, open: async () => quoting(await test.open(), dice) };
    stand = await openStand('live', broken, { ...dice, below: (most) => Math.floor(dice.below(most) / 2) });
    for (const [place, child] of children.entries())
      await stand.line.enrol(families[place] ?? '', {
        child,
        born: null,
        tubeKind: 'g',
        firstPlaced: null,
        weightKg: 9,
        weighedOn: null,
        language: 'en',
        latexAllergy: false,
        cannotWait: 'xerophagy',
      });
    failing = true;
    let id = 0;
    for (const words of texts) {
      for (const From of families)
        await signedPost(stand.url, '/carrier/text', { MessageSid: `SM${++id}`, From, Body: words, NumMedia: '0' });
      stand.pass(180_000);
      for (const From of nurses)
        await signedPost(stand.url, '/carrier/text', {
          MessageSid: `SM${++id}`,
          From,
          Body: nurseTexts[id % nurseTexts.length] ?? '',
          NumMedia: '0',
        });
      await fetch(`${stand.url}/carrier/text`, { method: 'POST', body: `From=${families[0]}&Body=${words}` });
    }
    failing = false;
    await stand.end();
  });
  afterAll(() => stand.close());

  it('tells of the failures', () => {
    expect(stand.log()).toContain('a turn failed twice; the safe message goes out');
    expect(stand.log()).toContain('a message does not arrive');
    expect(stand.log()).toContain('a request failed');
  });

  it('tells of no number, name, word or secret', () => {
    const words = [...texts, ...nurseTexts].flatMap((one) => /\w{7,}$/.exec(one)?.[0] ?? []);
    expect(words.length).toBeGreaterThan(10);
    const numbers = [...families, ...nurses].map((number) => number.slice(1));
    const secrets = [authToken, practiceKey.toString('hex'), practiceKey.toString('base64')];
    const spaced = numbers.map((number) => [...number].join(' '));
    for (const secret of [...words, ...numbers, ...spaced, ...children, 'xerophagy', ...secrets])
      expect(stand.log().includes(secret), secret).toBe(false);
  });
});

describe('what may be logged', () => {
  it('is a line of fixed words and fields: nothing is put together into it, and nothing goes around the log', () => {
    const paths = typescript('src').filter((path) => path !== 'src/log.ts');
    expect(found(paths, /\blog\s*\.(?:info|warn|error)\([^;]*?`[^`]*\$\{/)).toEqual([]);
    expect(found(paths, /\bconsole\./)).toEqual([]);
  });
});
