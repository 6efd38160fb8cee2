/** The order of reading: one text, one event. */
import { describe, expect, it } from 'vitest';
import { read } from '#src/reading/read.ts';
import { answerTo, eventOf, open } from './open.ts';

describe('the carrier words', () => {
  // The default opt-out and help keywords of Twilio's messaging documentation ("Advanced Opt-Out").
  it.each(['STOP', 'stopall', 'Unsubscribe', 'CANCEL', 'end', 'Quit', 'REVOKE', 'optout', ' Stop. '])(
    '%s stops',
    (text) => {
      expect(eventOf(text, { asking: 'unwell' }).type).toBe('stop');
    },
  );
  it.each(['HELP', 'info', 'Help!'])('%s helps', (text) => {
    expect(eventOf(text).type).toBe('help');
  });
  it.each(['please stop', 'stop the feed', 'help my sons tube came out', 'the end'])('%s does neither', (text) => {
    expect(['stop', 'help']).not.toContain(eventOf(text).type);
  });
});

describe('the order', () => {
  it('puts a sign before everything, and carries the rest', () => {
    expect(eventOf('7 kg and shes blue, call me', { asking: 'weight' })).toMatchObject({
      type: 'signs',
      sure: ['colour'],
      told: { weight: { kg: 7 } },
      person: true,
    });
    expect(eventOf('it fell out again and shes bleeding a lot', { tubeIn: true }).type).toBe('signs');
  });

  it('answers, and says that a person is wanted too', () => {
    expect(eventOf('yes. can a nurse call me', { asking: 'strips' })).toMatchObject({
      type: 'answer.strips',
      value: 'yes',
      person: true,
    });
  });

  it.each([
    'i want to talk to a nurse',
    'call me',
    'is anyone there??',
    'are you a robot',
    'someone please call',
    'help me',
  ])('%s: a person', (text) => {
    expect(eventOf(text, { asking: 'strips' })).toMatchObject({ type: 'person', person: true });
  });
  it.each(['the nurse showed me', 'i dont need a nurse', 'our home nurse is here'])(
    '%s: no person is asked for',
    (text) => {
      expect(eventOf(text).person).toBe(false);
    },
  );

  it.each(['her seizure meds are due at 3', 'she cant miss her heart medicine', 'needs his insulin now'])(
    '%s: cannot wait',
    (text) => {
      expect(eventOf(text, { tubeIn: true })).toMatchObject({ type: 'cannotWait', what: text });
    },
  );
  it.each([
    'no meds until morning',
    'can i give her meds',
    'i gave her meds at 8',
    'she already had her heart medicine',
  ])('%s: can wait', (text) => {
    expect(eventOf(text, { tubeIn: true }).type).not.toBe('cannotWait');
  });

  it.each([
    ['again', null],
    ['say that again', null],
    ['can you repeat the steps', null],
    ['step 2 again', 2],
    ['step 3?', 3],
    ['what was the first step', 1],
    ['2', undefined],
  ])('%s repeats step %s', (text, step) => {
    const event = eventOf(text);
    expect(event.type === 'repeat' ? event.step : undefined).toBe(step);
  });

  it('hears a correction with and without its value', () => {
    expect(eventOf('i made a mistake about the weight', { asking: 'strips' })).toMatchObject({
      type: 'correct',
      key: 'weight',
      corrects: true,
    });
    expect(eventOf('i was wrong about the feed', { asking: null })).toMatchObject({
      type: 'correct',
      key: 'first-feed',
    });
    expect(eventOf('sorry i meant 8 kg not 7', { asking: 'strips' })).toMatchObject({
      type: 'told',
      told: { weight: { kg: 8 } },
      corrects: true,
    });
    expect(eventOf('wait its a gj not a g', { asking: 'kit' })).toMatchObject({
      type: 'told',
      told: { tubeKind: 'gj' },
      corrects: true,
    });
    expect(eventOf('actually it didnt go in easy i had to push', { asking: 'contents', tubeIn: true })).toMatchObject({
      type: 'told',
      told: { insertedHow: 'hard' },
    });
    expect(eventOf('7 kg', { asking: 'strips' }).corrects).toBe(false);
  });

  it('takes changes beside a yes to the facts on file', () => {
    expect(eventOf('yes but she is 8 kg now', { asking: 'confirm' })).toMatchObject({
      type: 'answer.confirm',
      value: 'yes',
      told: { weight: { kg: 8 } },
    });
    expect(eventOf('no, its a gj', { asking: 'confirm' })).toMatchObject({
      type: 'answer.confirm',
      value: 'no',
      told: { tubeKind: 'gj' },
    });
  });

  it.each(['ok', 'thanks', 'thank you so much', 'ready', '👍'])('%s is small talk where nothing is asked', (text) => {
    expect(eventOf(text).type).toBe('smallTalk');
  });

  it.each(['', '   ', '???', '🙂', 'qwrtz'])('"%s" cannot be read', (text) => {
    expect(answerTo('strips', text)).toBe('unclear: unreadable');
  });
});

describe('what a first text is about', () => {
  it.each([
    ['help my sons gtube came out', 'tube'],
    ['tube out', 'tube'],
    ['it fell out', 'tube'],
    ['her button popped out', 'tube'],
    ['she cant breathe', 'tube'],
    ['thanks', 'thanks'],
    ['thank you so much for your help tonight', 'thanks'],
    ['hi', 'other'],
    ['can i come at 3 tomorrow', 'other'],
    ['the button on his shirt is off', 'other'],
  ])('%s: %s', (text, about) => {
    expect(read(text, { ...open, caseOpen: false }).about).toBe(about);
  });
});
