/** The machines as lists a person can read aloud: each state, what it asks, and where it goes when something happens. */
import type { MachineName } from '#machines/effects.ts';
import { type MachineDefinition, type Move, machineDefinitions, type StateDefinition } from '../definition.ts';
import { html, type Markup, spoken } from './markup.ts';

const titles: Readonly<Record<MachineName, string>> = {
  conversation: 'The conversation with the caregiver',
  paging: 'How a page climbs',
  aftercare: 'What follows',
};

export function machinePages(): readonly Markup[] {
  return [
    html`<p>Drawn from the code that runs. A state is left by the first line that applies, from top to bottom; a state inside another hears its own lines first, then those of the states around it.</p>`,
    ...machineDefinitions().map(machinePage),
  ];
}

function machinePage({ name, states }: MachineDefinition): Markup {
  return html`<h3>${titles[name]}</h3>
<div class="machine">${states.filter(saysSomething).map((state) => stateBlock(state, name))}</div>`;
}

const saysSomething = ({ moves, entry }: StateDefinition): boolean => moves.length + entry.length > 0;

function stateBlock(state: StateDefinition, machine: MachineName): Markup {
  return html`<div class="state">
<h4>${state.path === '' ? `${machine}, at any time` : pathWords(state.path)}${state.asking === null ? '' : html` <span>asks ${state.asking}</span>`}</h4>
${state.entry.length === 0 ? '' : html`<p>does ${state.entry.map(spoken).join('; ')}</p>`}
<ol>${linesOf(state.moves).map(moveLine)}</ol>
</div>
`;
}

interface Line extends Omit<Move, 'on'> {
  readonly on: readonly string[];
}

/** Events share their lines only where all of them are the same: the first that applies counts, so none may change places. */
function linesOf(moves: readonly Move[]): readonly Line[] {
  const byEvent = Map.groupBy(moves, ({ on }) => on);
  const alike = Map.groupBy([...byEvent], ([, same]) =>
    JSON.stringify(same.map(({ when, to, does }) => [when, to, does])),
  );
  return [...alike.values()].flatMap((events) => {
    const on = events.map(([event]) => event);
    return (events[0]?.[1] ?? []).map((move) => ({ ...move, on }));
  });
}

function moveLine({ on, when, to, does }: Line): Markup {
  const events = on[0] === 'at once' ? '' : html`<b>${on.map(spoken).join(', ')}</b> `;
  const condition = when === null ? (on[0] === 'at once' ? 'else ' : '') : `if ${spoken(when)} `;
  const target = to === null ? 'stays' : html`→ ${pathWords(to)}`;
  return html`<li>${events}${condition}${target}${does.length === 0 ? '' : html` <i>${does.map(spoken).join('; ')}</i>`}</li>`;
}

function pathWords(path: string): string {
  return path.split('.').map(spoken).join(' › ');
}
