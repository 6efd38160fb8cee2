/** A first feed that is put off: nobody is called at night, and the next day is asked about. */
import { expect, it } from 'vitest';
import { beginOwn, hour, later, lines } from './later.ts';

it('calls nobody, and is asked about in the morning', () => {
  const line = later();
  line.send(beginOwn);
  line.advance(3 * hour);
  const putOff = { type: 'answer.first-feed', value: 'later', told: {}, person: false, corrects: false } as const;
  expect(lines(line.send(putOff))).toEqual(['3h firstFeedLater']);
  expect(lines(line.advance(21 * hour))).toEqual(['24h askNextDay']);
});
