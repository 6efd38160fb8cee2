/** A call to the line, whole: the real machines, signed webhooks, and what each of them tells the carrier to do. */
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { pauseLine } from '#src/line/pause.ts';
import { verifyCase } from '#src/record/verify.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';
import { diceOf } from '#tests/fuzz/dice.ts';
import { openStand, type Stand } from '#tests/fuzz/stand.ts';
import { signedAnswer } from '#tests/security/signedPost.ts';
import { databases } from '#tests/store/databases.ts';

const [imke, tariq, solveig] = ['+12125550151', '+12125550152', '+12125550153'];
const wren = {
  child: 'Wren',
  born: '2024-01-20',
  tubeKind: 'g',
  firstPlaced: '2024-02-06',
  weightKg: 13.4,
  weighedOn: '2027-03-01',
  language: 'en',
} as const;
const emergencyFirst =
  /^<\?xml[^>]*><Response><Say [^>]*>(?:In danger|If a child is in danger|If your child is in danger|En peligro)[^<]*9 1 1/;

describe.each(databases())('on the $name database', (test) => {
  let stand: Stand;
  let parent: string;
  let stranger: string;
  let phones = 100;
  beforeAll(async () => {
    stand = await openStand('live', test, { ...diceOf(1), below: () => 59 });
  });
  beforeEach(async () => {
    parent = `+12025550${phones++}`;
    stranger = `+12025550${phones++}`;
    await stand.line.enrol(parent, wren);
  });
  /** Each test begins with no case, no call, and the line not paused. */
  afterEach(async () => {
    await rows(`DELETE FROM timer; DELETE FROM incoming_call; UPDATE "case" SET closed_ms = 1 WHERE closed_ms IS NULL;
      UPDATE page SET open = false, taken_ms = NULL; UPDATE pause SET resumed_ms = 1; UPDATE message SET carrier_id = NULL`);
  });
  afterAll(async () => {
    await stand.end();
    await stand.close();
  });

  const post = async (path: string, form: Record<string, string>) =>
    (await signedAnswer(stand.url, path, { To: '+12025550100', ...form })).body;
  const ring = (From: string, CallSid = 'CA1') => post('/carrier/call', { CallSid, From, CallStatus: 'ringing' });
  const at = (what: string, place: number, call = 'CA1') => `/carrier/call/${what}?call=${call}&place=${place}`;
  const dialed = (place: number) => post(at('next', place), { CallSid: 'CA1', DialCallStatus: 'no-answer' });
  const press = (place: number, Digits = '1') => post(at('key', place), { CallSid: `CA-leg-${place}`, Digits });
  const text = (From: string, Body: string, MessageSid: string) =>
    post('/carrier/text', { MessageSid, From, Body, NumMedia: '0' });
  const caseOf = (number: string) => stand.line.newestCase(number);
  const said = async (number: string) =>
    (await stand.line.thread(number)).filter(({ direction }) => direction === 'out').map(({ body }) => body);
  const settled = async () => stand.line.settle('settling');
  const rows = (sql: string) => stand.database.query(sql);
  const intact = async () => {
    for (const { id } of await stand.database.query<{ id: number }>('SELECT id FROM "case" WHERE closed_ms IS NULL'))
      expect(await verifyCase(stand.database, createSeal(practiceKey), id)).toMatchObject({ whole: true });
  };

  it('opens the case, speaks the emergency number first, rings the first on call, and begins by text', async () => {
    const answer = await ring(parent);
    expect(answer).toMatch(emergencyFirst);
    expect(answer).toContain('<Say language="en-US" loop="1">');
    expect(answer).toContain('Put nothing through the tube');
    expect(answer).toContain(
      '<Dial callerId="+12025550100" timeout="20" action="https://line.example/carrier/call/next?call=CA1&amp;place=1" method="POST">',
    );
    expect(answer).toContain(
      `<Number url="https://line.example/carrier/call/whisper?call=CA1&amp;place=0" method="POST">${imke}</Number>`,
    );
    await settled();
    expect(await caseOf(parent)).toMatchObject({ asking: 'unwell', pages: [{ to: imke, level: 'urgent' }] });
    expect((await said(parent))[0]).toMatch(/^Danger\? Call 911/);
    expect((await said(imke))[0]).toMatch(/^URGENT Wren \(.*\): rang the line\./);
    await intact();
  });

  it('says the same to the carrier that asks again, and does nothing twice', async () => {
    const first = await ring(parent);
    await settled();
    const before = await rows('SELECT id FROM message');
    const pages = await rows('SELECT id FROM page');
    expect(await ring(parent)).toBe(first);
    await settled();
    expect(await rows('SELECT id FROM message')).toEqual(before);
    expect(await rows('SELECT id FROM page')).toEqual(pages);
    const again = await Promise.all([ring(parent, 'CA2'), ring(parent, 'CA2')]);
    expect(again[0]).toBe(again[1]);
    expect(await rows('SELECT id FROM incoming_call')).toHaveLength(2);
  });

  it('tells each person who rings and connects by a key alone; whoever presses it takes the page', async () => {
    await ring(parent);
    const whisper = await post(at('whisper', 0), { CallSid: 'CA-leg-0' });
    expect(whisper).toMatch(
      /<Gather numDigits="1" timeout="10" action="[^"]*call\/key\?call=CA1&amp;place=0"[^>]*><Say[^>]*>[^<]*family of Wren[^<]*Press 1/,
    );
    expect(whisper).toMatch(/<\/Gather><Hangup\/><\/Response>$/);
    expect(await press(0, '2')).toContain('<Hangup/>');
    const next = await dialed(1);
    expect(next).toContain(`>${tariq}</Number>`);
    expect(next).not.toContain('<Say');
    expect(await press(1)).toBe('<?xml version="1.0" encoding="UTF-8"?><Response/>');
    await settled();
    const pages = (await caseOf(parent))?.pages;
    expect(pages).toMatchObject([
      { to: imke, takenAt: null },
      { to: tariq, level: 'urgent' },
    ]);
    expect(pages?.[1]?.takenAt).not.toBeNull();
    expect((await said(parent)).at(-1)).toContain('Nurse Tariq has your case now');
    expect(await dialed(2)).toContain('<Hangup/>');
    await press(1);
    await settled();
    expect((await caseOf(parent))?.pages).toEqual(pages);
    await intact();
  });

  it('that nobody takes says so, says what to do, and the page climbs as always', async () => {
    await ring(parent);
    expect(await dialed(1)).toContain(tariq);
    expect(await dialed(2)).toContain(solveig);
    const nobody = await dialed(3);
    expect(nobody).toMatch(emergencyFirst);
    expect(nobody).toContain('No nurse has answered yet');
    expect(nobody).not.toContain('<Dial');
    stand.pass(15 * 60_000);
    await settled();
    expect((await caseOf(parent))?.pages.map(({ to }) => to)).toContain(tariq);
  });

  it('in an open case asks for a person, first of all whoever has it', async () => {
    await text(parent, 'the tube came out', 'SM1');
    await text(parent, 'nurse please', 'SM2');
    await settled();
    await text(imke, 'take', 'SM3');
    const answer = await ring(parent);
    const { pages } = (await caseOf(parent)) ?? {};
    expect(pages?.length).toBeGreaterThan(1);
    expect(answer).toContain(`>${imke}</Number>`);
    expect(await rows('SELECT id FROM "case" WHERE closed_ms IS NULL')).toHaveLength(1);
    stand.pass(15 * 60_000);
    await settled();
    await text(tariq, 'take', 'SM4');
    expect(await ring(parent, 'CA3')).toContain(`>${tariq}</Number>`);
    await intact();
  });

  it('from another phone of the family joins its case', async () => {
    await stand.line.enrol(parent, { ...wren, phones: [stranger] });
    await text(parent, 'the tube came out', 'SM1');
    await ring(stranger);
    await settled();
    expect((await caseOf(stranger))?.id).toBe((await caseOf(parent))?.id);
    expect((await said(stranger)).length).toBeGreaterThan(0);
  });

  it('is spoken in the family’s language', async () => {
    await stand.line.enrol(parent, { ...wren, language: 'es' });
    const answer = await ring(parent);
    expect(answer).toMatch(emergencyFirst);
    expect(answer).toContain('<Say language="es-US"');
  });

  it('of a nurse is put through to the family of the one case she has, else tells the few words', async () => {
    const none = await ring(imke, 'CA-n0');
    expect(none).toMatch(emergencyFirst);
    expect(none).toContain('You have no case now');
    expect(none).not.toContain('<Dial');
    await ring(parent);
    await text(imke, 'take', 'SM1');
    const through = await ring(imke, 'CA-n1');
    expect(through).toMatch(emergencyFirst);
    expect(through).toContain(`<Dial callerId="+12025550100">${parent}</Dial>`);
    await settled();
    expect((await said(parent)).at(-1)).toContain('Nurse Imke will ring you soon');
    await ring(stranger, 'CA4');
    await text(imke, 'take', 'SM2');
    expect(await ring(imke, 'CA-n2')).toContain('You have 2 cases now');
  });

  it('of a nurse whose own child has a case is a family’s', async () => {
    await text(imke, 'my sons g tube fell out', 'SM1');
    const answer = await ring(imke);
    expect(answer).toContain(`>${tariq}</Number>`);
    expect(answer).not.toContain(`>${imke}</Number>`);
  });

  it('with a withheld number is answered and put on, and opens nothing', async () => {
    const before = await rows('SELECT id FROM message ORDER BY id');
    for (const From of ['', 'anonymous', 'Restricted']) {
      const answer = await ring(From, `CA-${From}`);
      expect(answer).toMatch(emergencyFirst);
      expect(answer).toContain(imke);
      expect(await post(at('whisper', 0, `CA-${From}`), {})).toContain('withheld');
      expect(await post(at('key', 0, `CA-${From}`), { Digits: '1' })).toMatch(/<Response\/>$/);
    }
    expect(await rows('SELECT id FROM "case" WHERE closed_ms IS NULL')).toEqual([]);
    expect(await rows('SELECT id FROM message ORDER BY id')).toEqual(before);
  });

  it('of a phone that opted out rings and pages, and is not texted', async () => {
    await text(parent, 'stop', 'SM1');
    await settled();
    const before = (await said(parent)).length;
    expect(await ring(parent)).toContain(imke);
    await settled();
    expect((await said(parent)).length).toBe(before);
    expect((await caseOf(parent))?.pages).toHaveLength(1);
  });

  it('of a stranger who texts without end tells the emergency number and to text, and wakes nobody', async () => {
    for (let place = 0; place < 31; place += 1) await text(stranger, 'hello', `SM-${place}`);
    const answer = await ring(stranger);
    expect(answer).toMatch(emergencyFirst);
    expect(answer).toContain('text me what is wrong');
    expect(answer).not.toContain('<Dial');
    expect(await caseOf(stranger)).toBeNull();
  });

  it('while the line is paused gives no advice, pages everybody, and rings', async () => {
    await pauseLine(stand.database, createSeal(practiceKey), { atMs: 1, by: 'Imke', why: null }, null);
    const answer = await ring(parent);
    expect(answer).toMatch(emergencyFirst);
    expect(answer).toContain(imke);
    await settled();
    expect((await caseOf(parent))?.pages).toHaveLength(3);
    expect((await said(parent)).join()).toContain('This line is paused');
    expect((await said(tariq)).join()).toContain('They rang.');
    expect(await dialed(3)).toContain('This line is paused');
  });

  it('goes to everybody on call where a case is a person’s already', async () => {
    await pauseLine(stand.database, createSeal(practiceKey), { atMs: 1, by: 'Imke', why: null }, null);
    await text(parent, 'tube', 'SM1');
    await ring(parent);
    expect(await press(1)).toMatch(/<Response\/>$/);
    await settled();
    expect((await said(solveig)).join()).toContain('They rang.');
    expect((await caseOf(parent))?.pages.filter(({ takenAt }) => takenAt !== null)).toMatchObject([{ to: tariq }]);
  });

  it('is answered with the emergency number when its turn fails, and everybody on call is paged', async () => {
    await rows('ALTER TABLE incoming_call RENAME TO elsewhere');
    const answer = await ring(parent);
    expect(answer).toMatch(emergencyFirst);
    expect(answer).not.toContain('<Dial');
    await rows('ALTER TABLE elsewhere RENAME TO incoming_call');
    await settled();
    expect((await caseOf(parent))?.pages).toHaveLength(3);
    expect((await said(parent)).join()).toContain('Call 911 now');
    expect(await ring(parent)).toBe(answer);
  });

  it('is answered with the emergency number where nothing works, and whoever pressed the key is connected', async () => {
    await ring(parent);
    await rows('ALTER TABLE phone RENAME TO phones; ALTER TABLE incoming_call RENAME TO calls');
    expect(await ring(stranger, 'CA5')).toMatch(emergencyFirst);
    expect(await dialed(1)).toMatch(emergencyFirst);
    expect(await press(0)).toMatch(/<Response\/>$/);
    expect(await press(0, '3')).toContain('<Hangup/>');
    await rows('ALTER TABLE phones RENAME TO phone; ALTER TABLE calls RENAME TO incoming_call');
  });

  it('that is malformed or unknown is answered with the emergency number', async () => {
    for (const [path, form] of [
      ['/carrier/call', {}],
      ['/carrier/call', { CallSid: 'x'.repeat(201), From: parent }],
      [at('next', 1, 'CA-unknown'), {}],
      ['/carrier/call/next', {}],
      ['/carrier/call/next?call=CA1&place=-1', {}],
    ] as const)
      expect(await post(path, { ...form })).toMatch(emergencyFirst);
    expect(await press(9)).toContain('<Hangup/>');
    expect(await rows('SELECT id FROM incoming_call')).toEqual([]);
  });

  it('keeps who rang and what was spoken sealed', async () => {
    await ring(parent);
    const kept = await stand.database.query<{ plan: Buffer }>('SELECT plan FROM incoming_call');
    expect(kept).toHaveLength(1);
    expect(JSON.stringify(kept.map(({ plan }) => plan.toString('latin1')))).not.toMatch(/Wren|5550151|danger/);
    expect(stand.log()).not.toContain('Wren');
  });
});
