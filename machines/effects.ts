/** What a step asks the shell to do. Parsed at one boundary, `machines/case.ts`; nothing else leaves a machine. */
import type { Disposition, PageLevel, PageReason } from './facts.ts';
import type { Say } from './says.ts';

export type Effect =
  /** A text to the caregiver; `call` is read out by telephone instead. */
  | { readonly type: 'say'; readonly say: Say; readonly by: 'text' | 'call' }
  /** A page to the person at `place` in the climb (0 first on call); `by` lists how. */
  | {
      readonly type: 'callNurse';
      readonly place: number;
      readonly level: PageLevel;
      readonly reasons: readonly PageReason[];
      readonly by: readonly ('text' | 'call')[];
    }
  /** Further news for the person who took the page. */
  | { readonly type: 'tellNurse'; readonly level: PageLevel; readonly reason: PageReason }
  /** Where the case has come to rest, for the person who took the page. */
  | { readonly type: 'tellStands'; readonly disposition: Resting }
  | {
      readonly type: 'startTimer';
      readonly machine: MachineName;
      readonly id: string;
      readonly what: DueWhat;
      readonly delayMs: number;
      readonly event: string;
    }
  | { readonly type: 'cancelTimer'; readonly machine: MachineName; readonly id: string }
  | { readonly type: 'closeCase' };

/** What a family does not only wait out. */
export type Resting = Exclude<Disposition, 'recheck'>;

export const machineNames = ['conversation', 'paging', 'aftercare'] as const;
export type MachineName = (typeof machineNames)[number];

/** What a waiting timer is for, as the public interface names it. */
export const dueWhats = ['recheck', 'silence', 'page', 'aftercare'] as const;
export type DueWhat = (typeof dueWhats)[number];
