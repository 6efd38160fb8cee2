/** The nurse's side of a night on a real process: what she reads after a text of hers, of the family's, or of another nurse. */
import { beforeEach, describe, expect, it } from 'vitest';
import { converse, goesWell, type Sent } from './phone.ts';
import { backends } from './process.ts';
import { family, nursesOf, phone, standing, tubeOut } from './standing.ts';

const to = (sent: Sent, number: string) => sent.filter((one) => one.to === number).map(({ body }) => body);

describe.each(backends())('on the $name database', (backend) => {
  const { line } = standing(backend);
  let first: string;
  let second: string;

  beforeEach(async () => {
    [first, second] = await nursesOf(line);
    await line.text(phone, tubeOut);
  });

  /** Held for a hard insertion whose reading passed. */
  const held = () => converse(line, phone, { ...goesWell, 'tube-in': 'hard' }, ['hold']);

  it('is told of a tube half out which kind it is, and once that it is half out', async () => {
    const other = '+12025550186';
    await line.text(other, 'her gj tube is half out');
    const [page] = to(await line.text(other, 'no'), first);
    expect(page).toMatch(
      /^URGENT .*: (?:tube kind not for use at home; )?tube half out.* GJ tube\. Half out, told: go in\./,
    );
  });

  describe('her own correction', () => {
    it('does not page her for the case she has; its answer tells her what is new', async () => {
      await held();
      await line.text(first, 'take');
      await line.text(first, 'fact tube gj');
      expect(to(await line.text(first, 'yes'), first)).toEqual([
        'Tam (A01): GJ tube noted; decided anew. Family told: go in. New: tube kind not for use at home. You still have it.',
      ]);
      const { pages } = (await line.newestCase(phone)) ?? {};
      expect(pages).toHaveLength(1);
    });

    it('pages again where it is graver, and says so', async () => {
      await held();
      await line.text(first, 'take');
      await line.text(first, 'fact first placed 1 march 2027');
      const [page, , answer] = to(await line.text(first, 'yes'), first);
      expect(page).toMatch(/^EMERGENCY Tam .*Reply TAKE, PASS or MORE$/s);
      expect(answer).toContain('New and graver: tract too young to insert. Everybody is called afresh: TAKE');
    });
  });

  describe('words of hers as she writes them', () => {
    const other = '+12025550186';
    const two = async () => {
      await line.enrol(other, { ...family, child: 'Mateo' });
      await held();
      await line.text(other, tubeOut);
      await line.text(other, 'i want to talk to a nurse');
    };

    it('take every case she names', async () => {
      await two();
      expect(to(await line.text(first, 'got it, take A01 and A02'), first)[0]).toMatch(
        /^You have Tam \(A01\), Mateo \(A02\)/,
      );
    });

    it('pass one beside her reason, and tell the one child of that name', async () => {
      await two();
      expect(to(await line.text(first, 'cant, driving. pass A02'), first)).toEqual([
        'Mateo (A02): passed on. The next person is called now.',
      ]);
      expect(to(await line.text(first, 'tell Tam cover the hole'), phone).at(-1)).toContain('cover the hole');
    });

    it('are never a family’s with a code of hers', async () => {
      await two();
      expect(to(await line.text(first, 'A01 her tube came out'), first)[0]).toMatch(/^Nothing was changed/);
    });

    it('take an open case of another’s page, on call', async () => {
      await held();
      expect(to(await line.text(second, 'take A01'), phone)).toEqual([
        expect.stringContaining('Nurse Tariq has your case'),
      ]);
      expect((await line.newestCase(phone))?.pages.at(-1)).toMatchObject({ to: second, takenAt: expect.any(String) });
    });

    it('send in at once whom nothing has to be asked back for', async () => {
      await held();
      await line.text(first, 'go in A01');
      await line.text(first, 'yes');
      expect(to(await line.text(first, 'go in A01'), first)).toEqual(['Tam (A01): told to go in already.']);
    });
  });

  it('reads that a family opted out, and that it was told nothing', async () => {
    await held();
    await line.text(phone, 'stop');
    const again = to((await line.clock({ advance: 'PT6M' })).sent, first);
    expect(again[0]).toContain('OPTED OUT: phone them');
    expect(to(await line.text(first, 'take'), first).at(-1)).toContain('opted out and was told nothing: phone them');
    expect(to(await line.text(first, 'tell them hello'), first)[0]).toContain('nothing was sent');
    expect(to(await line.text(first, 'tell them hello'), phone)).toEqual([]);
  });

  describe('a hold she closes', () => {
    const closed = async () => {
      await held();
      await line.text(first, 'take');
      const [asked] = to(await line.text(first, 'close resolved'), first);
      expect(asked).toContain('STILL ON HOLD');
      return line.text(first, 'yes');
    };

    it('is said once more to the family, and a text soon after it opens no other case', async () => {
      const [left] = to(await closed(), phone);
      expect(left).toContain('Put nothing through a tube till the clinic says you may');
      const { id } = (await line.newestCase(phone)) ?? {};
      const sent = await line.text(phone, 'so can i use the tube?');
      expect(sent).toHaveLength(1);
      expect(sent[0]?.body).toMatch(/Put nothing through a tube.*Is the tube out now\?\nReply YES or NO/s);
      expect(to(await line.text(phone, 'no'), phone)[0]).toContain('No reply needed');
      expect((await line.newestCase(phone))?.id).toBe(id);
    });

    it.each([
      'its out again',
      'the g tube fell out',
      'he is breathing funny and turning blue',
      'i want to talk to a nurse',
    ])('is over for what is new: %s', async (words) => {
      await closed();
      const { id } = (await line.newestCase(phone)) ?? {};
      await line.text(phone, words);
      expect((await line.newestCase(phone))?.id).not.toBe(id);
    });

    it('is over by a yes to whether it is out now, and the next night', async () => {
      await closed();
      const { id } = (await line.newestCase(phone)) ?? {};
      await line.text(phone, 'so can i use the tube?');
      await line.text(phone, 'yes');
      expect(await line.newestCase(phone)).toMatchObject({ asking: 'unwell' });
      expect((await line.newestCase(phone))?.id).not.toBe(id);
    });
  });

  describe('what the family asks while she has the case', () => {
    it('goes to her alone, and the family reads that it did', async () => {
      await held();
      await line.text(second, 'take');
      await line.clock({ advance: 'PT12M' });
      await line.text(second, 'take');
      for (const words of ['what should i pack', '\u{1F622}']) {
        const sent = await line.text(phone, words);
        expect(to(sent, phone)).toEqual([expect.stringMatching(/^I passed that on to nurse Tariq\./)]);
        expect(to(sent, first)).toEqual([]);
        expect(to(sent, second)).toHaveLength(1);
        expect((await line.newestCase(phone))?.pages.at(-1)).toMatchObject({ to: second });
      }
      const later = await line.clock({ advance: 'PT6M' });
      expect(new Set(later.sent.map((one) => one.to))).toEqual(new Set([second]));
    });
  });

  describe('how her case ends', () => {
    it.each([
      [
        'no',
        'use',
        'Tam (A01): temporary tube in use. Reading passed, secured; feed slowly, watched. I ask after the first feed.',
      ],
      [
        'yes',
        'own-tube',
        'Tam (A01): own tube in use. Reading passed, secured; feed slowly, watched. I ask after the first feed.',
      ],
    ] as const)('own tube whole: %s; she reads that it is in use: %s', async (ownTube, end, words) => {
      await line.text(phone, 'i want to talk to a nurse');
      await line.text(first, 'take');
      await converse(line, phone, { ...goesWell, 'own-tube': ownTube, 'own-tube-in': 'easily' }, [end]);
      expect((await line.thread(first)).at(-1)?.body).toBe(words);
    });
  });

  describe('TAKE of a case another nurse has', () => {
    const heldBySecond = async () => {
      await held();
      await line.clock({ advance: 'PT12M' });
      await line.text(second, 'take');
      await line.clock({ advance: 'PT3M' });
    };

    it('says who has it and since when, and changes nothing by itself', async () => {
      await heldBySecond();
      const [answer] = to(await line.text(first, 'take'), first);
      expect(answer).toBe(
        'Tariq has Tam (A01) since 2:22 am. MORE A01 shows it. Take it over? Tariq and the family are told.\nReply YES or NO.',
      );
      expect(await line.text(first, 'no')).toMatchObject([{ to: first }]);
      expect(to(await line.text(first, 'tell them hi'), first)[0]).toContain('Tariq has Tam (A01) now');
    });

    it('takes it over by her yes: the family, the other nurse and the record hear who has it', async () => {
      await heldBySecond();
      await line.text(first, 'take a01');
      const sent = await line.text(first, 'yes');
      expect(to(sent, phone)[0]).toContain('Nurse Imke has your case now');
      expect(to(sent, second)).toEqual(['Imke has Tam (A01) now. The family is told.']);
      expect(to(sent, first)[0]).toContain('You have Tam (A01)');
      const taken = (await line.newestCase(phone))?.pages.filter(({ takenAt: at }) => at !== null);
      expect(taken?.map((page) => page.to)).toEqual([second, first]);
      // And it is hers: what the other nurse does now is refused, what comes up is told to her.
      expect(to(await line.text(second, 'call'), second)[0]).toContain('Imke has Tam (A01) now');
      expect(to(await line.text(first, 'take'), first)[0]).toContain('You have Tam (A01)');
    });
  });

  describe('what she is offered', () => {
    it('is a clearance where one is possible, in the page, once she has it, and when she is not understood', async () => {
      await held();
      expect((await line.thread(first)).at(-1)?.body).toMatch(/Wants CLEAR\.\nReply TAKE, PASS or MORE$/);
      expect(to(await line.text(first, 'take'), first)[0]).toContain('To let the family use the tube: CLEAR.');
      expect(to(await line.text(first, 'claer'), first)[0]).toMatch(/You can text now: PASS, .*CLEAR.*GO IN/);
    });

    it('is none where one is forbidden', async () => {
      await converse(line, phone, { ...goesWell, 'tube-in': 'hard', strips: 'no' }, ['hold']);
      for (const body of ['take', 'what now'])
        expect(to(await line.text(first, body), first).join(), body).not.toContain('CLEAR');
      expect((await line.thread(first)).map(({ body }) => body).join()).not.toContain('CLEAR');
    });

    it('is nothing about a case where she has none', async () => {
      expect(to(await line.text(first, 'hm'), first)).toEqual([
        "Nothing was changed. You can text now: PRACTICE and a child's name.",
      ]);
    });
  });

  describe('half asleep', () => {
    const answer = async (body: string, from = first) => to(await line.text(from, body), from).join();

    it('a code that is no case of hers does nothing in another one', async () => {
      await held();
      await line.text(first, 'take');
      for (const body of ['tell b17 feed him now', 'clear a99', 'close z01 all well', 'fact a99 tube gj'])
        expect(await line.text(first, body), body).toMatchObject([{ to: first }]);
      expect(await answer('clear a99')).toBe('No open case A99 of yours, so nothing was changed. Yours: Tam (A01).');
    });

    it('a yes with a slip says that nothing was done, and to which case', async () => {
      await held();
      await line.text(first, 'clear');
      expect(await answer('yse')).toBe(
        'Tam (A01): nothing was changed. I did not read that as yes or no: text your word again.',
      );
      expect(await answer('yes')).toMatch(/^Nothing was changed\. You can text now: /);
      expect(await line.newestCase(phone)).toMatchObject({ disposition: 'hold' });
    });

    it('is told of the very case she named that it cannot be cleared', async () => {
      await line.text(phone, 'no');
      await line.text(phone, 'i want a nurse');
      expect(await answer('clear tam')).toMatch(/^Tam \(A01\) cannot be cleared by text/);
      expect(await answer('clear')).toBe('Nothing to clear: no case of yours is on hold.');
    });

    it('reads the new value and what the family was told when a reading is corrected before her yes', async () => {
      await held();
      await line.text(first, 'take');
      await line.text(first, 'clear');
      const [news] = to(await line.text(phone, 'sorry it was 6.5'), first);
      expect(news).toBe(
        'ROUTINE news on Tam (A01): pH reading changed by the family. pH 6.5. Family told: wait, retest. You have this case.',
      );
      expect(await answer('yes')).toContain('cannot be cleared');
    });

    it('is asked before the check-ups of a tube in use end', async () => {
      await held();
      expect(await answer('close')).not.toContain('check-ups');
      for (const body of ['clear', 'yes']) await line.text(first, body);
      await line.text(phone, 'done');
      expect(await answer('close')).toContain('My check-ups with the family end too.');
    });
  });

  describe('a case that goes from hand to hand', () => {
    it('can be taken by one it has gone on from, and whoever passed it hears who has it', async () => {
      await held();
      await line.text(first, 'take');
      await line.text(first, 'pass');
      const sent = await line.text(first, 'take');
      expect(to(sent, first)[0]).toContain('You have Tam (A01)');
      await line.text(first, 'pass');
      expect(to(await line.text(second, 'take'), first)).toEqual(['Tariq has Tam (A01) now. The family is told.']);
    });

    it("no longer sends the family's words to who passed it on", async () => {
      await held();
      await line.text(first, 'tell them i am here');
      await line.text(first, 'pass');
      expect(to(await line.text(phone, 'is he ok to sleep'), first)).toEqual([]);
    });

    it('goes after a swap to the one who is first now', async () => {
      await held();
      await line.text(first, 'take');
      await line.text(first, 'swap tonight with tariq');
      await line.text(second, 'yes swap');
      expect(to(await line.text(first, 'pass'), second)[0]).toMatch(/^URGENT Tam/);
    });
  });
});
