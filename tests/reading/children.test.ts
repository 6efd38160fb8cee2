/** Which of the family's children a text names: as written, never guessed, and a name taken back answers nothing else. */
import { describe, expect, it } from 'vitest';
import type { Open } from '#src/reading/said.ts';
import { eventOf } from './open.ts';

const names = ['Ana María', 'Ana Sofia', 'Jean-Luc', 'Leo', 'Wren'];
const hearing = (text: string, known: Partial<Open> = {}) => eventOf(text, { ...known, children: names });

describe('a name in a text', () => {
  it.each([
    ["wren's g tube came out", [4]],
    ['LEO IS SCREAMING', [3]],
    ['Ana Sofia', [1]],
    ['ana maria pulled it out', [0]],
    ['jean luc', [2]],
    ['leo and wren both pulled theirs', [3, 4]],
  ])('is heard: %s', (text, children) => {
    expect(hearing(text).told.children).toEqual(children);
  });

  it.each(['ana', 'wrenches', 'leopard print', 'the baby', 'my son'])('is not guessed: %s', (text) => {
    expect(hearing(text).told.children).toBeUndefined();
  });

  it.each([
    ['jon luc', []],
    ['Len', []],
    ['ana', []],
    ['not wrenn', []],
    ['si', []],
    ['wrennie is blue', [4]],
    ['sofi', []],
  ])('by another spelling only where nothing but one child can be meant: %s', (text, children) => {
    expect(hearing(text, { asking: 'unwell' }).told.children ?? []).toEqual([]);
    expect(hearing(text, { asking: 'which-child' }).told.children ?? []).toEqual(children);
  });

  it.each([
    ['tiago', 'Thiago'],
    ['es thiagito', 'Thiago'],
    ['la valen', 'Valentina'],
    ['valntina', 'Valentina'],
    ['matis', 'Mathis'],
    ['eloize', 'Éloïse'],
  ])('%s is %s, at the question which child it is', (text, name) => {
    const children = ['Thiago', 'Valentina', 'Mathis', 'Éloïse'];
    const event = eventOf(text, { children, asking: 'which-child' });
    expect(event.told.children).toEqual([children.indexOf(name)]);
  });

  it.each(["no it's Leo, not Wren", 'no its leo not wren', 'sorry I meant Leo', 'wrong kid, its Leo', 'not wren. leo'])(
    'takes another back, and answers no danger signs: %s',
    (text) => {
      const event = hearing(text, { asking: 'unwell' });
      expect(event).toMatchObject({ type: 'told', corrects: true, told: { children: [3] } });
    },
  );

  it('beside an answer leaves the answer', () => {
    const event = hearing("it's leo not wren. no hes fine", { asking: 'unwell' });
    expect(event).toMatchObject({ type: 'answer.unwell', value: 'no', told: { children: [3] } });
  });

  it('of a brother who is well takes nothing back', () => {
    expect(hearing('no, leo is asleep', { asking: 'unwell' })).toMatchObject({ corrects: false });
  });

  it('after a no to the file corrects it', () => {
    expect(hearing('no, Leo', { asking: 'confirm' })).toMatchObject({ corrects: true, told: { children: [3] } });
  });

  it('beside a danger leaves the danger', () => {
    expect(hearing('leo is turning blue')).toMatchObject({ type: 'signs', sure: ['colour'], told: { children: [3] } });
  });
});

describe('more than one child, with no name that is filed', () => {
  it.each([
    ['en', 'both my twins pulled their g tubes out'],
    ['en', "my daughter's tube came out, not my son's"],
    ['en', "my son's tube is out too"],
    ['en', 'both tubes came out'],
    ['en', "my other kid's tube fell out"],
    ['es', 'a los dos gemelos se les salió la sonda'],
    ['es', 'se salió la sonda de mi hija, no la de mi hijo'],
    ['fr', 'mes deux jumeaux ont arraché leur sonde'],
    ['fr', 'la sonde de ma fille est sortie, pas celle de mon fils'],
  ] as const)('is heard in %s: %s', (language, text) => {
    expect(eventOf(text, { language }).told.severalChildren).toBe(true);
  });

  it('is not guessed where one child of the family is named', () => {
    const { told } = eventOf('wren, not her brother', { asking: 'which-child', children: ['Leo', 'Wren'] });
    expect(told).toEqual({ children: [1] });
  });

  it.each([
    ['en', 'one of my twins pulled her tube out'],
    ['en', 'we have both tubes in the kit'],
    ['en', 'both my husband and I are here'],
    ['en', "my daughter's g tube came out"],
    ['es', 'una de mis gemelas se sacó la sonda'],
    ['fr', 'une de mes jumelles a arraché sa sonde'],
  ] as const)('is not guessed in %s: %s', (language, text) => {
    expect(eventOf(text, { language }).told.severalChildren).toBeUndefined();
  });
});

describe('the only child on file', () => {
  const event = (text: string, onlyChild: string, known: Partial<Open> = {}) =>
    eventOf(text, { asking: 'confirm', onlyChild, ...known });

  it.each([
    ["that's not his name. this is for OWEN", 'Luca', 'en'],
    ["he has a G tube. luca's the big brother w the gj", 'Luca', 'en'],
    ['not luca, owen', 'Luca', 'en'],
    ["c'est pas son prénom", 'Marc', 'fr'],
    ['se le salio a mi otro hijo Samuel, no a Bruno', 'Bruno', 'es'],
    ['NO es Samuel el que perdio la sonda!', 'Bruno', 'es'],
  ] as const)('is not the one: %s', (text, onlyChild, language) => {
    expect(event(text, onlyChild, { language })).toMatchObject({ told: { notOnFile: true }, value: 'no' });
  });

  it.each([
    ['yes thats luca', 'Luca'],
    ['yes, his brother is asleep', 'Luca'],
    ['yes luca is the best brother', 'Luca'],
    ['no he weighs 14 kg now', 'Luca'],
  ])('may be the one: %s', (text, onlyChild) => {
    expect(event(text, onlyChild).told).not.toHaveProperty('notOnFile');
  });

  it('is denied by a name in the first text', () => {
    const first = eventOf('se le salio a mi otro hijo Samuel, no a Bruno', {
      caseOpen: false,
      language: 'es',
      onlyChild: 'Bruno',
    });
    expect(first).toMatchObject({ type: 'told', told: { notOnFile: true } });
  });
});
