/** The first page: what is signed, with which cautions, how it stands, and the place for the signature. */
import { DateTime } from 'luxon';
import type { Protocol } from '#machines/protocol/settings.ts';
import { type Content, type ContentPart, contentParts } from '../content.ts';
import type { Standing } from '../signature.ts';
import { html, type Markup } from './markup.ts';

const meanings: Readonly<Record<ContentPart, string>> = {
  settings: 'the site’s facts and clinical values: sections 1 and 2',
  machines: 'what the line asks, decides and does, in which order: section 4',
  wording: 'every message in every language: section 5. Spanish and French stay drafts until the signature names them',
};

const cautions = [
  'The line guides a caregiver at home; it examines nobody. A clinician of the site answers for these values and words.',
  'It defers to licensed practice, to the child’s own plan and to local rules. Where they say otherwise, they hold, and this protocol has to be changed before it is signed.',
  'A signature here is not the approval of a medical device. A live line also needs the site’s own regulatory decision on record.',
  'Values marked “common practice, no source” rest on no published source. Please look at those first.',
];

export function front({ site }: Protocol, content: Content, standing: Standing): Markup {
  return html`<header>
<p class="kind">Nightjar · clinical protocol for signature</p>
<h1>${site.hospital}</h1>
<p class="subject">Text-message line for families whose child’s gastrostomy tube has come out, and for the nurse on call</p>
<p class="standing ${standing.is}">${standingSentence(standing, site.timeZone)}</p>
</header>
<section class="signed">
<h2>What is signed</h2>
<table class="parts"><tbody>
${contentParts.map((part) => html`<tr><th scope="row">${part}</th><td>${meanings[part]}</td><td class="hash">${content.parts[part].slice(0, 16)}</td></tr>`)}
</tbody></table>
<p class="whole">Content hash, SHA-256 over the three: <span class="hash">${content.hash}</span></p>
<p>Any change to a value, to the machines or to the wording changes this hash. A live line starts only on the content that was signed. A case that has begun keeps the settings it began with.</p>
</section>
<section class="cautions">
<h2>Before you sign</h2>
<ul>${cautions.map((caution) => html`<li>${caution}</li>`)}</ul>
</section>
<section class="signing">
<h2>Signature</h2>
<p>I have read this protocol: the site’s facts, the clinical values, the safety rules, the order of questions and every message. I find it fit for the families of this site.</p>
<dl class="lines">${['Name', 'Role and licence', 'Date', 'Signature'].map((line) => html`<div><dt>${line}</dt><dd></dd></div>`)}</dl>
<p class="record">Recorded afterwards with: npm run protocol -- sign --by "NAME" --role "ROLE" --regulatory "DECISION" --languages LIST</p>
</section>`;
}

function standingSentence(standing: Standing, zone: string): string {
  if (standing.is === 'unsigned') return 'Unsigned.';
  const { name, role, signedAt } = standing.signature;
  const signed = `igned by ${name}, ${role}, on ${DateTime.fromISO(signedAt, { zone }).toFormat('d LLLL yyyy')}`;
  return standing.is === 'signed'
    ? `S${signed}.`
    : `Unsigned: changed since it was s${signed}. Changed: ${standing.changed.join(', ')}.`;
}
