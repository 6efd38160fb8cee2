/** A picture or voice note in the record: that it came, what kind it is and whether it was kept. Never what it shows, nor where it is. */
import { type Queryable, statement } from '#src/store/database.ts';

export interface RecordedMedia {
  /** MIME type; null until it is kept. */
  readonly type: string | null;
  /** `waiting` is still to be fetched; `refused` could not be kept. */
  readonly state: 'waiting' | 'kept' | 'refused';
}

const select = statement(
  'record.media',
  'SELECT message_id, type, state FROM media WHERE case_id = $1 ORDER BY message_id, place',
);

/** What came with the texts of a case, by the id of the text. */
export async function mediaByText(
  client: Queryable,
  caseId: number,
): Promise<ReadonlyMap<number, readonly RecordedMedia[]>> {
  const rows = await client.query<RecordedMedia & { message_id: number }>(select, [caseId]);
  const media = rows.map(({ message_id, type, state }) => ({ textId: message_id, one: { type, state } }));
  return new Map([...Map.groupBy(media, ({ textId }) => textId)].map(([id, of]) => [id, of.map(({ one }) => one)]));
}

const fates = { waiting: 'not fetched yet', kept: 'kept sealed by the line', refused: 'could not be kept' } as const;

/** Such as "picture, kept sealed by the line". */
export function mediaWords({ type, state }: RecordedMedia): string {
  const kind = type === null ? 'picture or voice note' : type.startsWith('audio/') ? 'voice note' : 'picture';
  return `${kind}, ${fates[state]}`;
}
