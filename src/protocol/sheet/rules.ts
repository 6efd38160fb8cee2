/** The safety rules in words, with the figures of the last proof beside each. */

import { type Proof, type RuleId, safetyRules } from '../proof.ts';
import { keysOf } from '../samples.ts';
import { html, type Markup } from './markup.ts';

/** `machines` is the hash of the machines on this sheet: figures of other machines prove nothing here. */
export function rulesPage(proof: Proof | null, machines: string): Markup {
  return html`<p>${summary(proof, machines)}</p>
<table class="rules">
<thead><tr><th scope="col">Rule</th><th scope="col">What has to hold on every path</th><th scope="col">Put to the test</th></tr></thead>
<tbody>
${keysOf(safetyRules).map(
  (id) => html`<tr><th scope="row">${id}</th><td>${safetyRules[id]}</td><td>${figure(proof, id)}</td></tr>
`,
)}</tbody></table>
${proof === null ? '' : longest(proof)}`;
}

function summary(proof: Proof | null, machines: string): Markup {
  if (proof === null)
    return html`<strong>The proof was not run</strong> (npm run proof): the right column has no figures.`;
  const ran = `Proved on ${counted(proof.states)} states and ${counted(proof.transitions)} transitions, ${proof.ranAt.slice(0, 10)}.`;
  if (proof.machines === machines) return html`${ran}`;
  return html`${ran} <strong>These figures are of other machines than those on this sheet: run the proof again.</strong>`;
}

function figure(proof: Proof | null, id: RuleId): string {
  if (proof === null) return 'not run';
  const rule = proof.rules[id];
  if (rule === undefined) return 'never';
  const times = `${counted(rule.exercised)} times`;
  return rule.violations === 0 ? times : `${times}, FAILED ${counted(rule.violations)}`;
}

function longest({ longest }: Proof): Markup {
  return html`<h3>The longest waits the proof found</h3>
<table class="facts"><tbody>${longest.map(({ what, minutes }) => html`<tr><th scope="row">${what}</th><td>${minutes} min</td></tr>`)}</tbody></table>`;
}

function counted(count: number): string {
  return count.toLocaleString('en');
}
