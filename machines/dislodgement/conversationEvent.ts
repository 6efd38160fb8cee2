/** Everything the conversation can hear. */
import type { CaseNews, DelayedEvent, NurseEvent, PhoneJoined, TextEvent } from '../events.ts';

export type ConversationEvent = TextEvent | NurseEvent | PhoneJoined | CaseNews | DelayedEvent;
