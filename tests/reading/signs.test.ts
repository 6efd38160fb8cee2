/** Danger and warning signs are heard in any words, negations are understood, and doubt asks. */
import { describe, expect, it } from 'vitest';
import type { Sign } from '#machines/facts.ts';
import { answerTo, eventOf } from './open.ts';

function signsOf(text: string, tubeIn = true) {
  const event = eventOf(text, { tubeIn });
  return event.type === 'signs' ? { sure: event.sure, near: event.near } : null;
}

describe('signs', () => {
  const surely: readonly (readonly [Sign, readonly string[]])[] = [
    [
      'breathing',
      [
        'she cant breath',
        'hes breething hard',
        'isnt breathing right',
        'NOT BREATHING',
        'short of breath',
        'shes gasping',
        'struggling to breathe',
      ],
    ],
    [
      'colour',
      ['shes turning blue', 'her lips are blu', 'he looks grey', 'she is blue and her tube is out', 'very pale'],
    ],
    [
      'limp',
      [
        'shes limp',
        'he is floppy',
        'wont wake up',
        'hard to wake',
        'not responding',
        'shes having a seizure',
        'my daughter is having fits',
        'he had two seizures just now',
        'another fit',
        'eyes rolled back',
      ],
    ],
    [
      'bleeding',
      [
        'bleeding alot',
        'it wont stop bleeding',
        'blood everywhere',
        'theres so much blood',
        'everything is fine except she is bleeding',
      ],
    ],
    ['hard-belly', ['belly hard as a rock', 'her stomach is swollen', 'hard tummy']],
    ['severe-pain', ['screaming in pain', 'she wont stop screaming', 'terrible pain', 'pain is 10 out of 10']],
    ['vomit', ['green vomit', 'throwing up over and over', 'he keeps vomitting', 'puked 3 times']],
    ['fever', ['she has a fever', 'temp 101', 'temperature is 38.5', 'burning up', 'running a fever since yesterday']],
    ['pain', ['it hurts her', 'she has some pain']],
    ['fresh-blood', ['theres some blood', 'bloody']],
    ['tight-belly', ['her belly is bigger than before', 'tummy is tighter']],
    ['leak', ['its leaking around the tube']],
  ];
  it.each(surely)('%s is heard', (sign, texts) => {
    for (const text of texts) expect(signsOf(text)?.sure, text).toContain(sign);
  });

  const nearly: readonly (readonly [Sign, readonly string[]])[] = [
    ['fresh-blood', ['a spot of blood', 'a tiny bit of pink on the gauze']],
    ['bleeding', ['it stopped bleeding', 'a little bleeding', 'it was bleeding but stopped']],
    [
      'fever',
      ['what if she gets a fever?', 'had a fever last week', 'she feels warm', 'not sure if its a fever', 'temp 99.9'],
    ],
    ['severe-pain', ['crying a lot, in pain']],
    ['vomit', ['she threw up once']],
    ['limp', ['she has a history of seizures', 'really sleepy']],
  ];
  it.each(nearly)('%s said small, past or as a fear is near', (sign, texts) => {
    for (const text of texts) {
      expect(signsOf(text)?.near, text).toContain(sign);
      expect(signsOf(text)?.sure, text).not.toContain(sign);
    }
  });

  it.each([
    'no fever',
    'not bleeding',
    'no blood thank god',
    'she isnt blue',
    'no trouble breathing',
    'shes breathing fine',
    'no fever or vomiting',
    'no blood, pain or fever',
    'without any pain',
    'her brother has a fever',
    'crying',
    'the blue cap is off',
    'her blood pressure was taken',
    'does it hurt to put it in',
    'seizure meds',
    'fever? no',
    'temp is 98.6',
    'warm water',
    'feed running at 40 ml',
    'painless',
  ])('%s is no sign', (text) => {
    expect(signsOf(text)).toBeNull();
  });

  it.each([
    ['its me that cant breathe, shes fine'],
    ['i was white as a sheet'],
    ['my eyes are hurting'],
    ['i was bloody terrified'],
    ['my mum is having a fit'],
    ['they said watch for fever and pain'],
    ['he has a floppy airway'],
  ])('%s is said of somebody or something else', (text) => {
    expect(signsOf(text)).toBeNull();
  });

  it.each<[string, Sign]>([
    ['her brother pulled it out its bleeding a lot', 'bleeding'],
    ['shes bleeding her dad is driving us', 'bleeding'],
    ['my mom said he has a fever', 'fever'],
    ['his dad found him limp', 'limp'],
    ['trouble breathing in', 'breathing'],
    ['blood just keeps a comin', 'bleeding'],
  ])('%s is hers, whoever else is named', (text, sign) => {
    expect(signsOf(text)?.sure).toContain(sign);
  });

  it('drops the no of a denial beside an answer, and keeps one that opens the text', () => {
    expect(answerTo('kit', 'yes we have the kit and no he isnt bleeding')).toBe('yes');
    expect(answerTo('kit', 'no he isnt bleeding')).not.toBe('yes');
  });

  it('does not carry a negation over to the next statement', () => {
    expect(signsOf('no fever vomiting a lot')?.sure).toEqual(['vomit']);
    expect(signsOf('no bleeding but shes limp')?.sure).toEqual(['limp']);
    expect(signsOf('not eating and bleeding')?.sure).toEqual(['bleeding']);
    expect(signsOf('no she has a fever')?.sure).toEqual(['fever']);
    expect(signsOf('bleeding no fever no')?.sure).toEqual(['bleeding']);
  });

  it('never makes breathing a small matter', () => {
    for (const text of ['her breathing is a little off', 'what if shes not breathing', 'breathing hard yesterday']) {
      expect(signsOf(text)?.sure, text).toContain('breathing');
    }
  });

  it('asks about trouble breathing that is only feared', () => {
    expect(signsOf('what if she stops breathing')).toEqual({ sure: [], near: ['breathing'] });
  });

  it('hears a leak only where a tube is in that could leak around', () => {
    expect(signsOf('its leaking', false)).toBeNull();
  });

  // Fever from 38.0 °C or 100.4 °F: NICE guideline NG143 and common paediatric practice (from memory).
  it.each([
    ['38.0', 'signs'],
    ['100.4', 'signs'],
    ['37.4', 'no'],
    ['99.4', 'no'],
    ['40', 'signs'],
  ])('a bare temperature of %s at the danger signs is %s', (text, read) => {
    expect(
      answerTo('unwell', text === '40' ? 'temp 40' : text.endsWith('4') && Number(text) < 100 ? `temp ${text}` : text),
    ).toBe(read);
  });
});

describe('the danger signs as a question', () => {
  it.each([
    ['no', 'no'],
    ['nope shes fine', 'no'],
    ['no none of those', 'no'],
    ['none', 'no'],
    ['all good', 'no'],
    ['no fever', 'no'],
    ['yes', 'yes'],
    ['yes please help', 'yes'],
    ['shes not ok', 'yes'],
    ['not sure', 'unclear: unsure'],
    ['i dont think so', 'unclear: unsure'],
    ['no?', 'unclear: unsure'],
    ['yes shes fine', 'unclear: two-answers'],
    ['ok', 'smallTalk'],
    ['its dark i cant see', 'unclear: unsure'],
    ['is that bad?', 'unclear: unreadable'],
    ['a spot of blood', 'signs'],
    ['shes pale', 'signs'],
  ])('%s: %s', (text, value) => {
    expect(answerTo('unwell', text)).toBe(value);
  });

  it('takes yes or no for the sign asked about, and a sure sign before either', () => {
    expect(answerTo('unwell', 'no it stopped', { clarifying: 'sign' })).toBe('no');
    expect(answerTo('unwell', 'not bleeding anymore', { clarifying: 'sign' })).toBe('no');
    expect(answerTo('unwell', 'yes a little blood', { clarifying: 'sign' })).toBe('yes');
    expect(answerTo('unwell', 'no but shes limp', { clarifying: 'sign' })).toBe('signs');
  });

  it('does not let the no of a denied sign answer another question', () => {
    expect(answerTo('tube-in', 'went in easy no blood no pain', { tubeIn: true })).toBe('easy');
    expect(answerTo('secured', 'yes and no pain', { tubeIn: true })).toBe('yes');
    expect(answerTo('strips', 'no fever', { tubeIn: true })).not.toBe('no');
  });

  it('hears red contents as fresh blood', () => {
    expect(answerTo('contents', 'its red', { tubeIn: true })).toBe('signs');
  });
});
