/** Everything the conversation can hear. */
import type { CaseNews, DelayedEvent, NurseEvent, TextEvent } from '../events.ts';

export type ConversationEvent = TextEvent | NurseEvent | CaseNews | DelayedEvent;
