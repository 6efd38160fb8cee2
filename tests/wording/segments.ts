/** How many segments a text takes and in which encoding, by the carrier's own open-source calculator. */
import { SegmentedMessage } from 'sms-segments-calculator';

export interface Segments {
  readonly count: number;
  readonly encoding: string;
}

export function segmentsOf(text: string): Segments {
  const message = new SegmentedMessage(text);
  return { count: message.segmentsCount, encoding: message.encodingName };
}
