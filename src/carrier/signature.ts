/** Whether a webhook was really sent by the carrier: its signature over our public address and every parameter. */
import twilio from 'twilio';

/**
 * True if `signature` was made with one of `tokens` over `url` exactly as requested and all parameters of the form. Two tokens
 * are good while one replaces the other. Source: the carrier's published scheme (HMAC-SHA1), by its own library.
 */
export function signedByCarrier(
  tokens: readonly string[],
  signature: string | undefined,
  url: string,
  form: Readonly<Record<string, unknown>>,
): boolean {
  return signature !== undefined && tokens.some((token) => twilio.validateRequest(token, signature, url, form));
}
