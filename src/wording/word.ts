/** Facts to words: turns what the machines say into the text that leaves, in the family's language. */
import type { Preface, Say, SayKey, Says } from '#machines/says.ts';
import type { FamilyLanguage, LanguageCode, NurseScene, PrefaceKey, Scene } from './catalogue.ts';
import { english } from './en/english.ts';
import { spanish } from './es/spanish.ts';
import { french } from './fr/french.ts';
import type { NurseSay, NurseSayKey, NurseSays } from './nurseSays.ts';
import { plainName, plainText } from './plain.ts';

export type { NurseScene, Scene } from './catalogue.ts';

const languages: Readonly<Record<LanguageCode, FamilyLanguage>> = { en: english, es: spanish, fr: french };

/** In these the emergency number leads, so what is put before other messages stands between it and the reply line. */
const leadsAlways: ReadonlySet<SayKey> = new Set(['opening', 'openingTubeIn', 'emergency', 'emergencyStill', 'paused']);

/** One outgoing text (or spoken call) to the caregiver, its prefaces first. GSM 7-bit characters only. */
export function word(say: Say, scene: Scene): string {
  const language = languages[scene.language];
  const plainScene = {
    ...scene,
    child: plainName(scene.child),
    children: scene.children?.map((name) => plainName(name) ?? '') ?? [],
  };
  const main = wordMain(language, say, plainScene);
  const prefaces = say.preface.map((preface) => wordPreface(language, preface, plainScene));
  const mark = scene.rehearsal === true ? [language.rehearsalMark] : [];
  const text = leadsAlways.has(say.key) ? beforeReplyLine(main, prefaces) : [...prefaces, main].join(' ');
  return plainText([...mark, text].join(' '));
}

/** What to reply stays the last line. */
function beforeReplyLine(main: string, added: readonly string[]): string {
  const [advice = '', ...replyLine] = main.split('\n');
  return [[advice, ...added].join(' '), ...replyLine].join('\n');
}

/** The same for a line that speaks only these languages: a family of another one is answered in English. */
export function wordIn(spoken: readonly LanguageCode[]): typeof word {
  return (say, scene) => word(say, spoken.includes(scene.language) ? scene : { ...scene, language: 'en' });
}

/** One outgoing text (or spoken call) to a nurse's phone. GSM 7-bit characters only. */
export function wordForNurse(message: NurseSay, scene: NurseScene): string {
  return plainText(wordNurse(message, scene));
}

function wordMain<K extends SayKey>(
  language: FamilyLanguage,
  say: { readonly key: K; readonly params: Says[K] },
  scene: Scene,
): string {
  return language.caregiver[say.key](say.params, scene);
}

function wordPreface<K extends PrefaceKey>(
  language: FamilyLanguage,
  preface: Extract<Preface, { readonly key: K }> & { readonly key: K },
  scene: Scene,
): string {
  return language.prefaces[preface.key](preface, scene);
}

/** Nurses read English. */
function wordNurse<K extends NurseSayKey>(
  message: { readonly key: K; readonly params: NurseSays[K] },
  scene: NurseScene,
): string {
  return english.nurse[message.key](message.params, scene);
}
