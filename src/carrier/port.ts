/** The carrier as the line sees it: something that takes one text or call for one number and says what became of it. */

export type MessageKind = 'text' | 'call';

/** One message on its way out. `id` is our own, stable over every try, so that a carrier's callback can name it. */
export interface Outgoing {
  readonly id: string;
  /** E.164. */
  readonly to: string;
  readonly body: string;
  readonly kind: MessageKind;
  /** When the line said it, epoch ms: a lookup at the carrier counts only what was made since. */
  readonly saidAtMs: number;
  /** A call that puts whoever answers it through to this number, E.164; each side sees the line's number only. */
  readonly bridgeTo?: string;
}

/**
 * What became of a message.
 * `accepted`: the carrier has it. `refused`: it never will be sent, `why` is the carrier's code. `later`: surely not sent,
 * worth another try (too many requests, carrier down before it took anything). `unknown`: a timeout or a reset; it may have left.
 */
export type Fate =
  | { readonly fate: 'accepted'; readonly carrierId: string | null }
  | { readonly fate: 'refused'; readonly why: string }
  | { readonly fate: 'later' }
  | { readonly fate: 'unknown' };

/** A message the carrier has made, and what became of it so far. */
export interface Found {
  readonly carrierId: string;
  readonly fate: 'accepted' | 'delivered' | 'refused';
}

/** A text to us in the carrier's log; its id is the one its webhook has. */
export interface LoggedText {
  readonly id: string;
  /** E.164. */
  readonly from: string;
  readonly body: string;
  /** Where the carrier has the pictures and voice notes that came with it. */
  readonly media: readonly string[];
  /** When it was sent, epoch ms. */
  readonly atMs: number;
}

/** What became of fetching a picture or voice note. `later` is worth another try; `refused` never will be kept. */
export type MediaFate =
  | { readonly fate: 'fetched'; readonly type: string; readonly bytes: Buffer }
  | { readonly fate: 'refused'; readonly why: string }
  | { readonly fate: 'later' };

export interface Carrier {
  /** Fetches a picture or voice note from where the carrier has it. */
  fetchMedia(address: string): Promise<MediaFate>;
  /** Never throws for what a network does; a throw counts as `unknown`. */
  send(message: Outgoing): Promise<Fate>;
  /**
   * Looks up a message whose fate was unknown, before any second try: everything it may be of what the carrier has made for
   * this number since, oldest first (none, and it surely was not sent), or `unknown` if the carrier cannot tell.
   */
  find(
    message: Outgoing,
  ): Promise<{ readonly fate: 'found'; readonly made: readonly Found[] } | { readonly fate: 'unknown' }>;
  /** The texts to our number since then (epoch ms), as the carrier's log has them. Throws where it does not answer. */
  heardSince(sinceMs: number): Promise<readonly LoggedText[]>;
}
