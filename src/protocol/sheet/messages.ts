/** Every message the line can send, as it leaves, by its key and language. */
import type { Site } from '#machines/protocol/settings.ts';
import type { Preface } from '#machines/says.ts';
import { safeWords } from '#src/line/safeMessage.ts';
import type { LanguageCode } from '#src/wording/catalogue.ts';
import { word, wordForNurse } from '#src/wording/word.ts';
import { isDraft, languageCodes, languageNames } from '../languages.ts';
import { nurseSays } from '../nurseSamples.ts';
import { prefaces, sampleChildren, sampleNowMs, says } from '../samples.ts';
import { html, type Markup } from './markup.ts';

interface Message {
  readonly key: string;
  readonly text: string;
}

/** Every message; a language that is not among the approved is marked as a draft. */
export function messagePages(site: Site, approved: readonly LanguageCode[]): readonly Markup[] {
  const english = caregiverMessages(site, 'en');
  return [
    html`<p>Children, nurses, times and readings in these samples are invented. One key has several texts where facts change it.</p>`,
    ...languageCodes.map((code) => languagePage(code, caregiverMessages(site, code), english, approved)),
    html`<h3>To nurses</h3>${messageList(nurseMessages(site))}`,
    html`<h3>When the line itself fails</h3>
<p>Fixed words, in one language, sent without machine or catalogue.</p>
${messageList([{ key: 'safe message', text: safeWords(site) }])}`,
  ];
}

function languagePage(
  code: LanguageCode,
  messages: readonly Message[],
  english: readonly Message[],
  approved: readonly LanguageCode[],
): Markup {
  const title = html`<h3>To caregivers, in ${languageNames[code]}</h3>`;
  const unwritten = code !== 'en' && messages.every(({ text }, index) => text === english[index]?.text);
  if (unwritten) return html`${title}<p>Not written yet: these families are answered in English.</p>`;
  return html`${title}${isDraft(code) && !approved.includes(code) ? draftNote(code) : ''}${messageList(messages)}`;
}

function draftNote(code: LanguageCode): Markup {
  const name = languageNames[code];
  return html`<p class="draft">Draft until approved. A live line answers these families in English until somebody who speaks ${name} has read these messages and the signature names them: --languages ${code}.</p>`;
}

function caregiverMessages(site: Site, language: LanguageCode): readonly Message[] {
  const scene = { site, language, nowMs: sampleNowMs, child: null, children: sampleChildren };
  const bare = word({ key: 'thanks', params: {}, preface: [] }, scene);
  const alone = (preface: Preface) => word({ key: 'thanks', params: {}, preface: [preface] }, scene);
  return [
    ...says.map((say) => ({ key: say.key, text: word(say, scene) })),
    ...prefaces.map((preface) => ({
      key: `before another: ${preface.key}`,
      text: alone(preface).slice(0, -bare.length).trim(),
    })),
  ];
}

function nurseMessages(site: Site): readonly Message[] {
  return nurseSays.map((say) => ({ key: say.key, text: wordForNurse(say, { site, nowMs: sampleNowMs }) }));
}

function messageList(messages: readonly Message[]): Markup {
  const byKey = Map.groupBy(messages, ({ key }) => key);
  return html`<dl class="messages">
${[...byKey].map(([key, samples]) => {
  const texts = [...new Set(samples.map(({ text }) => text))];
  return html`<div><dt>${key}</dt>${texts.map((text) => html`<dd>${text}</dd>`)}</div>
`;
})}</dl>`;
}
