/** The handover's sheet by e-mail: after the handover, never within it, and tried again while the mail server is away. */
import nodemailer from 'nodemailer';
import type { Parts } from '#src/line/parts.ts';
import { statement } from '#src/store/database.ts';

/** Sends one sheet; rejects where the server did not take it. */
export type Mail = (sheet: string, subject: string) => Promise<void>;

export interface MailConfig {
  /** `smtps:` or `smtp:`; a server without encryption is refused, for the sheet names children. */
  readonly url: string;
  readonly from: string;
  readonly to: string;
}

const patienceMs = 20_000;
/** The pause between tries, and how often it is tried; common practice, no source. */
const pauseMs = 60_000;
const triesMost = 30;

const claim = statement(
  'handover.claimMail',
  `UPDATE handover SET mail_tries = mail_tries + 1, mail_after_ms = $2 WHERE id = (
     SELECT id FROM handover WHERE mail = 'waiting' AND mail_after_ms <= $1 ORDER BY id LIMIT 1 FOR UPDATE SKIP LOCKED)
   RETURNING id, sheet, mail_tries`,
);
const mark = statement('handover.markMail', 'UPDATE handover SET mail = $2 WHERE id = $1');

/** Mail by SMTP, encrypted or not at all. */
export function smtpMail({ url, from, to }: MailConfig): Mail {
  const carrier = nodemailer.createTransport({
    url,
    requireTLS: true,
    connectionTimeout: patienceMs,
    greetingTimeout: patienceMs,
    socketTimeout: patienceMs,
    disableFileAccess: true,
    disableUrlAccess: true,
  });
  return async (sheet, subject) => {
    const attachments = [{ filename: 'handover.html', content: sheet, contentType: 'text/html; charset=utf-8' }];
    await carrier.sendMail({ from, to, subject, text: 'The handover is attached: open it and print it.', attachments });
  };
}

/** Mails every handover that waits for it. Called by the sweep. */
export async function mailHandovers({ mail, database, seal, log, wallMs }: Parts): Promise<void> {
  if (mail === null) return;
  for (;;) {
    const nowMs = wallMs();
    const [row] = await database.query<{ id: number; sheet: Buffer; mail_tries: number }>(claim, [
      nowMs,
      nowMs + pauseMs,
    ]);
    if (row === undefined) return;
    try {
      await mail(seal.open(row.sheet), 'Handover from the feeding tube line');
      await database.query(mark, [row.id, 'sent']);
    } catch (error) {
      const last = row.mail_tries >= triesMost;
      log.error({ error, handoverId: row.id, last }, 'the handover could not be mailed');
      if (last) await database.query(mark, [row.id, 'failed']);
    }
  }
}
