/** Words that only look like danger, or like an answer, are neither; each stands beside a text in which they are. */
import { describe, expect, it } from 'vitest';
import type { LanguageCode, Sign } from '#machines/facts.ts';
import { answerTo, eventOf } from './open.ts';

/** The sign in question, a text without it, and one with it. */
type Pair = readonly [LanguageCode, Sign, string, string];

const pairs: readonly Pair[] = [
  ['en', 'limp', 'the balloon is full, tube not moving, tape is good', 'the tube is out and she is not moving'],
  ['en', 'breathing', 'what if she stops breathing while i put it in', 'what if its too late she stopped breathing'],
  ['en', 'breathing', 'im scared he chokes', 'im scared he is choking'],
  ['en', 'breathing', 'if she stops breathing what do i do', 'what do i do if she is not breathing'],
  ['en', 'breathing', 'what if he stops breathing', 'what if he stops breathing again'],
  ['en', 'bleeding', 'if he starts bleeding what do i do', 'he started bleeding what do i do'],
  ['es', 'limp', 'mi esposo esta en el trabajo no contesta', 'la niña no contesta'],
  ['es', 'limp', 'mi mama no contesta el telefono', 'le hablo y ya no contesta'],
  ['es', 'pain', 'no se ha quejado de dolor', 'no deja de quejarse del dolor'],
  ['es', 'pain', 'no tiene dolor', 'no tiene nada ahora se queja de dolor'],
  ['es', 'limp', 'la enfermera no contesta', 'enfermera no contesta mi hija'],
  ['es', 'breathing', 'al globo se le va el aire', 'el globo esta bien, se le va el aire'],
  ['es', 'pain', 'no es de dolor, llora porque tiene hambre', 'no es de hambre, llora de dolor'],
  ['es', 'severe-pain', 'huele feo', 'le duele feo'],
  ['es', 'breathing', 'se esta ahogando de la risa con su papa', 'se esta ahogando con la leche'],
  ['es', 'breathing', 'soy yo la que no puede respirar de los nervios', 'la niña no puede respirar'],
  ['es', 'breathing', 'que hago si se ahoga', 'que hago que se ahoga'],
  ['es', 'breathing', 'que hago si deja de respirar', 'que hago no deja de toser y no puede respirar'],
  ['es', 'breathing', 'se le va el aire al globo', 'se le va el aire'],
  ['fr', 'tight-belly', 'la balloune est bonne', 'son ventre est comme une balloune'],
  ['fr', 'pain', "il s'est pas plaint", 'il avait rien pis la il a mal'],
  ['fr', 'breathing', 'y respire ben pis y est rose', 'y respire ben mal pis y est gris'],
  ['fr', 'breathing', 'il respire bien', 'il respire bien trop vite'],
  ['fr', 'breathing', 'il a un peu râlé mais il a fini', 'il a des râles quand il respire'],
  ['fr', 'breathing', 'et si elle arrête de respirer', 'elle arrête de respirer'],
  ['fr', 'fresh-blood', "j'ai le sang glacé", 'il y a du sang sur la compresse'],
  ['fr', 'fever', 'la grande sœur a de la fièvre mais pas lui', 'sa grande sœur va bien mais lui a de la fièvre'],
];

function sureSigns(language: LanguageCode, text: string): readonly Sign[] {
  const event = eventOf(text, { language, tubeIn: true });
  return event.type === 'signs' ? event.sure : [];
}

describe('near misses', () => {
  it.each(pairs)('%s %s: "%s" is none', (language, _, harmless) => {
    expect(sureSigns(language, harmless)).toEqual([]);
  });

  it.each(pairs)('%s %s: beside "%s", "%s" is one', (language, sign, _, danger) => {
    const sure = sureSigns(language, danger);
    const heard = sign === 'pain' && sure.includes('severe-pain') ? 'severe-pain' : sign;
    expect(sure).toContain(heard === 'fresh-blood' && sure.includes('bleeding') ? 'bleeding' : heard);
  });
});

const everyday: readonly (readonly [LanguageCode, Sign, string])[] = [
  ['en', 'hard-belly', 'belly blown up like a balloon and really hard'],
  ['en', 'tight-belly', 'her tummy is blown up like a balloon'],
  ['en', 'colour', 'he is white like paper'],
  ['en', 'pain', 'she has pain now she didnt before'],
  ['es', 'breathing', 'se le esta yendo el aire'],
  ['es', 'breathing', 'le cuesta mucho jalar'],
  ['es', 'colour', 'esta blanca como papel muy palida'],
  ['fr', 'severe-pain', 'il hurle de douleur depuis une demi-heure rien ne le calme'],
  ['fr', 'severe-pain', 'il crie sans arrêt tellement il a mal'],
];

describe('a yes is not made of what surrounds it', () => {
  it.each([
    ['fr', 'looks', 'oui mais pas beaucoup de lumière', 'unknown'],
    ['fr', 'arrived', 'il y a 10 min de route', 'no'],
    ['en', 'secured', 'yes the tube is not moving', 'yes'],
    ['en', 'fed-lately', 'she usually gets 60 an hour overnight', 'unclear: unreadable'],
    ['en', 'fed-lately', 'usually at 9 but i fed her 20 minutes ago', 'yes'],
    ['en', 'weight', 'hes a big boy for 3', 'unclear: unreadable'],
    ['en', 'own-tube', 'we have it but the water just sprays out the side of the balloon', 'burst'],
    ['es', 'tube-kind', 'es transparente con una tapita', 'unclear: unreadable'],
    ['es', 'fed-lately', 'le toca su medicina a las 3', 'unclear: unreadable'],
    ['fr', 'fed-lately', 'gavage en continu depuis hier soir', 'unknown'],
    ['fr', 'fed-lately', 'pas de lait depuis hier soir', 'no'],
  ] as const)('%s %s: "%s" is %s', (language, asking, text, expected) => {
    expect(answerTo(asking, text, { language, tubeIn: asking !== 'own-tube' })).toBe(expected);
  });

  it('keeps a plunger that will not move from being a yes', () => {
    expect(answerTo('secured', 'yes but the plunger wont move', { tubeIn: true })).not.toBe('yes');
  });
});

describe('danger in everyday words', () => {
  it.each(everyday)('%s %s: "%s"', (language, sign, text) => {
    expect(sureSigns(language, text)).toContain(sign);
  });
});

describe('an answer beside a doubtful sign', () => {
  it.each([
    ['en', 'tube-in', '2nd time also no and theres a little blood now', 'no'],
    ['en', 'contents', 'yes but theres a bit of blood in it', 'yes'],
    ['es', 'tube-in', 'no entro y hay poquita sangre', 'no'],
    ['fr', 'tube-in', 'non toujours pas et il y a un peu de sang', 'no'],
  ] as const)('%s at %s: "%s" is kept', (language, asking, text, value) => {
    const event = eventOf(text, { language, asking });
    expect(event).toMatchObject({ type: 'signs', near: ['fresh-blood'], answer: { type: `answer.${asking}`, value } });
  });

  it('is none where the sign is the answer', () => {
    expect(eventOf('yes, a little blood', { asking: 'after-in', tubeIn: true })).not.toHaveProperty('answer');
    expect(eventOf('done but it leaks a bit', { asking: 'secured', tubeIn: true })).not.toHaveProperty('answer');
  });
});
