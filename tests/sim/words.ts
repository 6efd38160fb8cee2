/** What invented families text: answers to each question, good and bad, and what comes between. */
import type { QuestionKey } from '#machines/facts.ts';

export const firstTexts = [
  'the g tube fell out',
  'my daughters feeding tube came out 20 minutes ago',
  'tube is out and she is blue',
  'her gj tube came out',
  'hi',
  'my 7 kg boys g tube fell out an hour ago, first one two years ago',
] as const;

export const answers: Readonly<Record<QuestionKey, readonly string[]>> = {
  unwell: ['no', 'no', 'no', 'no shes fine', 'yes'],
  who: ['no'],
  'which-child': ['none'],
  confirm: ['yes', 'yes', 'no'],
  'tube-kind': ['g tube', 'g tube', 'gj', 'not sure', 'half out'],
  'first-placed': ['two years ago', 'in march 2025', '5 weeks ago', 'no idea'],
  'own-tube': ['no', 'yes', 'burst', 'not sure'],
  'own-tube-in': ['easily', 'had to push', 'no'],
  kit: ['yes', 'yes and i was shown how', 'no', 'not shown'],
  weight: ['7.2 kg', '13 lb', '2.7 kg', 'no idea'],
  'tube-in': ['easily', 'easily', 'had to push', 'no'],
  'came-out': ['20 minutes ago', '5 hours ago', 'not sure'],
  'after-in': ['no', 'no', 'no', 'yes'],
  strips: ['yes', 'yes', 'no'],
  contents: ['yes', 'yes', 'no'],
  ph: ['4.5', '4.5', '6.5', '5.5', 'between 5 and 6', '8'],
  'fed-lately': ['no', 'yes', 'not sure'],
  looks: ['yes', 'no'],
  secured: ['yes', 'yes', 'no'],
  'first-feed': ['yes', 'no'],
  'next-day': ['yes', 'no'],
  arrived: ['yes', 'no'],
  clinic: ['yes', 'no'],
};

export const between = [
  'can i talk to a nurse please',
  'she is limp and blue',
  'her belly is hard',
  'what',
  'ok',
  'thanks',
  'STOP',
  'START',
  'it came out again',
  'sorry i misread, it was 6.5',
  'she needs her seizure medicine at 6',
  '',
] as const;

export const nurseTexts = ['take', 'take', 'take', 'clear', 'close', 'yes', 'hello'] as const;
