/** The sheet by e-mail: encrypted or not at all, tried again while the server is away, marked once it is gone. */
import { once } from 'node:events';
import { createServer } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { mailHandovers, smtpMail } from '#src/handover/mail.ts';
import { fakeLog, startMs } from '#tests/line/fakes.ts';
import { openWorld, type World } from '#tests/line/world.ts';
import { databases } from '#tests/store/databases.ts';

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  afterEach(async () => world.close());

  async function handedOver(mail: World['parts']['mail'], nowMs: () => number) {
    world = await openWorld(open, { mail, log: fakeLog(), wallMs: nowMs });
    await world.database.query("INSERT INTO handover (at_ms, sheet, mail) VALUES (0, $1, 'waiting')", [
      world.parts.seal.seal('<p>sheet</p>'),
    ]);
  }
  const state = async () => (await world.database.query('SELECT mail, mail_tries FROM handover'))[0];

  it('goes out once', async () => {
    const sent: string[] = [];
    await handedOver(
      async (sheet) => void sent.push(sheet),
      () => startMs,
    );
    await mailHandovers(world.parts);
    await mailHandovers(world.parts);
    expect(sent).toEqual(['<p>sheet</p>']);
    expect(await state()).toEqual({ mail: 'sent', mail_tries: 1 });
  });

  it('is tried a minute later, and given up loudly after half an hour', async () => {
    let nowMs = startMs;
    let tries = 0;
    await handedOver(
      async () => {
        tries += 1;
        throw new Error('away');
      },
      () => nowMs,
    );
    await mailHandovers(world.parts);
    await mailHandovers(world.parts);
    expect(tries).toBe(1);
    for (let minute = 0; minute < 40; minute += 1) {
      nowMs += 60_000;
      await mailHandovers(world.parts);
    }
    expect(tries).toBe(30);
    expect(await state()).toEqual({ mail: 'failed', mail_tries: 30 });
  });
});

describe('a mail server without encryption', () => {
  // RFC 3207: STARTTLS is offered in the answer to EHLO; this server offers nothing.
  it('is given nothing of the sheet', async () => {
    let heard = '';
    const server = createServer((socket) => {
      socket.write('220 mail.example.org ESMTP\r\n');
      socket.on('data', (data) => {
        heard += data;
        socket.write(String(data).startsWith('EHLO') ? '250 mail.example.org\r\n' : '502 no\r\n');
      });
      socket.on('error', () => undefined);
    }).listen(0, '127.0.0.1');
    await once(server, 'listening');
    const address = server.address();
    if (typeof address !== 'object' || address === null) throw new TypeError('the server has a port');
    const mail = smtpMail({
      url: `smtp://127.0.0.1:${address.port}`,
      from: 'line@example.org',
      to: 'day@example.org',
    });
    await expect(mail('<p>Wren</p>', 'Handover')).rejects.toThrow();
    expect(heard).toContain('EHLO');
    expect(heard).not.toContain('MAIL FROM');
    expect(heard).not.toContain('Wren');
    server.close();
  });
});
