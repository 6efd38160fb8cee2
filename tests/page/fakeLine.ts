/** A few lines of theatre with the practice line's shapes: enough talk to drive the page, no clinical rule. */
import type { Disposition, PageLevel, QuestionKey } from '#machines/facts.ts';

interface Text {
  readonly direction: 'in' | 'out';
  readonly body: string;
  readonly at: string;
  readonly kind: 'text' | 'call';
}

interface Sent {
  readonly to: string;
  readonly body: string;
  readonly at: string;
  readonly kind: 'text' | 'call';
}

/** As a practice phone sends it. */
export interface Media {
  readonly type: string;
  readonly base64: string;
}

interface Due {
  readonly what: 'recheck' | 'silence' | 'page';
  readonly at: number;
}

interface Case {
  step: number;
  asking: QuestionKey | null;
  disposition: Disposition | null;
  facts: Record<string, unknown>;
  pages: { to: string; level: PageLevel; at: string; takenAt: string | null }[];
  due: Due[];
  talking: string;
}

export const families = [
  { number: '+12125550101', child: 'Wren' },
  { number: '+12125550102', child: 'Ode' },
];
export const nurses = [
  { name: 'Imke', number: '+12125550151' },
  { name: 'Tariq', number: '+12125550152' },
  { name: 'Solveig', number: '+12125550153' },
];
const zone = 'America/New_York';

/** What the line asks next, and where its machine then stands. */
const way: readonly { asking: QuestionKey | null; body: string; state: string }[] = [
  {
    asking: 'unwell',
    state: 'safety.opening.open',
    body: 'If your child is in danger call 911 now: this line cannot send help. Stop any feed. Cover the hole with a clean cloth and keep the tube. Trouble breathing, blue or grey, limp, bleeding that goes on, hard swollen belly, severe pain, green vomit, fever in a baby? Reply YES or NO.',
  },
  {
    asking: 'confirm',
    state: 'aboutTube.confirm.open',
    body: 'On file: Wren, G tube, first tube 6 February 2024, 13.4 kg. Still right? Reply YES or NO.',
  },
  {
    asking: 'kit',
    state: 'temporaryTube.haveKit.open',
    body: 'Is the emergency kit with the temporary tube there? Reply YES or NO.',
  },
  {
    asking: 'tube-in',
    state: 'temporaryTube.steps.open',
    body: 'Put it in gently, 4 to 6 cm, never force, and tape it. Nothing through it. How did it go? Reply EASY, HARD or NO.',
  },
  {
    asking: 'contents',
    state: 'placement.contents.open',
    body: 'Draw back gently with the syringe. Did stomach contents come? Reply YES or NO.',
  },
  {
    asking: 'ph',
    state: 'placement.ph.open',
    body: 'Put a drop on a pH strip and match the colour. Reply with the number.',
  },
  {
    asking: null,
    state: 'recheck.waiting',
    body: 'Nothing through the tube or by mouth. I will come back in one hour for a new check. Tell me now if a medicine cannot wait.',
  },
];

export function createFakeLine() {
  let now = 0;
  let texts = new Map<string, Text[]>();
  let cases = new Map<string, Case>();
  let heard = new Set<string>();
  let kept: readonly Media[] = [];
  let sent: Sent[] = [];
  const iso = (ms: number) => new Date(ms).toISOString().replace('Z', '+00:00');

  function keep(number: string, text: Text) {
    texts.set(number, [...(texts.get(number) ?? []), text]);
  }

  function say(to: string, body: string, kind: 'text' | 'call' = 'text') {
    keep(to, { direction: 'out', body, at: iso(now), kind });
    sent.push({ to, body, at: iso(now), kind });
  }

  function page(it: Case, level: PageLevel, place: number) {
    const nurse = nurses[place] ?? { name: '', number: '' };
    it.pages.push({ to: nurse.number, level, at: iso(now), takenAt: null });
    say(nurse.number, `${level.toUpperCase()} page: a G tube came out. Reply TAKE.`);
    if (level === 'emergency') say(nurse.number, 'Emergency page. A tube came out and a danger sign was told.', 'call');
    if (place < nurses.length - 1) it.due.push({ what: 'page', at: now + 6 * 60_000 });
  }

  function goOn(number: string, it: Case, body: string) {
    const next = way[Math.min(it.step, way.length - 1)];
    if (!next) throw new Error('the way has an end');
    if (it.asking === 'confirm')
      it.facts = {
        ...it.facts,
        tubeKind: 'g',
        firstPlaced: { earliest: '2024-02-06', latest: '2024-02-06' },
        weightKg: 13.4,
      };
    if (it.asking === 'ph') it.facts = { ...it.facts, ph: Number(body) };
    it.step += 1;
    it.asking = next.asking;
    it.talking = next.state;
    it.disposition = next.asking ? it.disposition : 'recheck';
    const other = it.due.filter(({ what }) => what === 'page');
    it.due = [
      ...other,
      next.asking ? { what: 'silence', at: now + 5 * 60_000 } : { what: 'recheck', at: now + 3_600_000 },
    ];
    say(number, next.body);
  }

  function fromNurse(number: string, body: string) {
    const open = [...cases].filter(([, it]) => it.pages.some(({ to, takenAt }) => to === number && !takenAt));
    if (body.toLowerCase() !== 'take' || open.length === 0) return say(number, 'Reply TAKE to take a page.');
    for (const [caregiver, it] of open) {
      it.pages = it.pages.map((each) => (each.to === number ? { ...each, takenAt: iso(now) } : each));
      it.due = it.due.filter(({ what }) => what !== 'page');
      say(number, 'Taken. The family knows.');
      say(caregiver, 'A nurse has your page and will call you.');
    }
  }

  function showNurses(it: Case, media: readonly Media[]) {
    kept = [...kept, ...media];
    for (const to of new Set(it.pages.map((page) => page.to)))
      for (const one of media) say(to, `From the family. Opens for an hour: http://fake/media/${kept.indexOf(one)}`);
  }

  function hear(number: string, body: string, id: string, media: readonly Media[] = []) {
    sent = [];
    if (heard.has(id)) return sent;
    heard.add(id);
    keep(number, { direction: 'in', body, at: iso(now), kind: 'text' });
    if (nurses.some((nurse) => nurse.number === number)) {
      fromNurse(number, body);
      return sent;
    }
    const fresh = {
      step: 0,
      asking: null,
      disposition: null,
      facts: { cameOutAt: iso(now) },
      pages: [],
      due: [],
      talking: '',
    };
    const it: Case = cases.get(number) ?? fresh;
    cases.set(number, it);
    if (/blue|breath/i.test(body)) {
      Object.assign(it, { disposition: 'emergency', asking: null, talking: 'safety.emergency.told', due: [] });
      say(number, 'Call 911 now. Nothing through the tube or by mouth. A nurse is being called too.');
      page(it, 'emergency', 0);
    } else goOn(number, it, body);
    if (/nurse/i.test(body)) page(it, 'urgent', 0);
    showNurses(it, media);
    return sent;
  }

  function fire(number: string, it: Case, due: Due) {
    it.due = it.due.filter((each) => each !== due);
    if (due.what === 'silence') {
      say(number, 'Are you there? Please answer the question above.');
      page(it, 'urgent', 0);
    } else if (due.what === 'page')
      page(it, it.pages.at(-1)?.level ?? 'urgent', new Set(it.pages.map(({ to }) => to)).size);
    else Object.assign(it, { step: 4 }) && goOn(number, it, '');
  }

  function moveTo(target: number) {
    sent = [];
    for (;;) {
      const all = [...cases].flatMap(([number, it]) => it.due.map((due) => ({ number, it, due })));
      const first = all.toSorted((a, b) => a.due.at - b.due.at)[0];
      if (!first || first.due.at > target) break;
      now = first.due.at;
      fire(first.number, first.it, first.due);
    }
    now = target;
    return { now: iso(now), sent };
  }

  function report(number: string) {
    const it = cases.get(number);
    if (!it) return null;
    const climb = it.pages.every(({ takenAt }) => takenAt) ? 'taken' : 'climbing.first';
    const paging = it.pages.length === 0 ? 'idle' : climb;
    return {
      id: `case-${number}`,
      asking: it.asking,
      disposition: it.disposition,
      facts: it.facts,
      pages: it.pages,
      due: it.due.map(({ what, at }) => ({ what, at: iso(at) })),
      states: { conversation: [`dislodgement.${it.talking}`], paging: [`paging.${paging}`] },
    };
  }

  return {
    reset(at: number) {
      now = at;
      [texts, cases, heard, kept] = [new Map(), new Map(), new Set(), []];
    },
    hear,
    moveTo,
    report,
    now: () => now,
    media(path: string) {
      const one = kept.find((_, place) => path === `/media/${place}`);
      return one && { type: one.type, bytes: Buffer.from(one.base64, 'base64') };
    },
    state: () => ({ now: iso(now), zone, families, nurses, protocol: 'unsigned', paused: null }),
    texts: (number: string) => texts.get(number) ?? [],
  };
}
