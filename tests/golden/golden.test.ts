/**
 * Golden snapshots: cases saved by a release go on in this one. Where a change to the machines makes one fail, either the change
 * is taken back or a migration brings the old snapshot over (a `migrate` step where `Running` restores it, with its own test).
 */
import { globSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { questionKeys } from '#machines/facts.ts';
import { Replay } from '#src/protocol/replay.ts';
import { protocolWith } from '#tests/dislodgement/night.ts';
import { goldenShape, goOn } from './snapshot.ts';

const goldens = globSync('tests/golden/*/*.json')
  .sort()
  .map((path) => ({
    name: path.replace(/^tests\/golden\/|\.json$/g, ''),
    golden: goldenShape.parse(JSON.parse(readFileSync(path, 'utf8'))),
  }));

describe('a case saved by a release', () => {
  it.each(goldens)('$name goes on as it must, by answer and by timer', ({ golden }) => {
    expect(goOn(golden)).toEqual(golden.next);
  });

  it('is there at every question the line asks', () => {
    const asked = goldens.map(({ golden }) => new Replay(protocolWith(), golden.snapshots).view.asking);
    expect(questionKeys.filter((key) => !asked.includes(key))).toEqual([]);
  });

  it('is there with each machine at work', () => {
    const waiting = goldens.flatMap(({ golden }) => golden.waiting.map(({ machine, what }) => `${machine} ${what}`));
    expect(new Set(waiting)).toEqual(
      new Set([
        'conversation silence',
        'conversation recheck',
        'conversation aftercare',
        'paging page',
        'aftercare aftercare',
      ]),
    );
  });
});
