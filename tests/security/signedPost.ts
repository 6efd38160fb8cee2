/** A webhook as the carrier sends it: signed over the public address and every parameter. */
import twilio from 'twilio';
import { authToken } from '#tests/carrier/double.ts';
import { publicUrl } from '#tests/fuzz/liveProbes.ts';

/** Posts the form and returns the status. */
export async function signedPost(url: string, path: string, form: Record<string, string>): Promise<number> {
  return (await signedAnswer(url, path, form)).status;
}

/** Posts the form and returns the whole answer. */
export async function signedAnswer(
  url: string,
  path: string,
  form: Record<string, string>,
): Promise<{ readonly status: number; readonly body: string }> {
  const signature = twilio.getExpectedTwilioSignature(authToken, publicUrl + path, form);
  const response = await fetch(url + path, {
    method: 'POST',
    headers: { 'X-Twilio-Signature': signature },
    body: new URLSearchParams(form),
  });
  return { status: response.status, body: await response.text() };
}
