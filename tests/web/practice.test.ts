/** The practice phones over HTTP: texts, bodies and addresses that can and cannot be taken, and what the page needs. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { phone, practiceWeb, refused, texts } from './practiceWeb.ts';

const { line, url, faults, breakDatabase, call } = practiceWeb();

const sentShape = z.object({ sent: z.array(z.object({ body: z.string() })) });
const sentBodies = (answer: { readonly body: unknown }) => sentShape.parse(answer.body).sent.map(({ body }) => body);

describe('a text', () => {
  it('is heard, settled, and answered with what left because of it', async () => {
    const answer = await call('POST', texts, { body: 'hello', id: 'a' });
    expect(answer.status).toBe(200);
    expect(answer.body).toEqual({
      sent: [{ to: phone, body: 'heard: hello', at: '2027-03-06T07:10:00.000Z', kind: 'text' }],
    });
    expect(line().asked).toEqual([`settle ${line().heard[0]?.cause}`]);
  });

  it('with a repeated id sends nothing', async () => {
    await call('POST', texts, { body: 'hello', id: 'a' });
    expect((await call('POST', texts, { body: 'hello', id: 'a' })).body).toEqual({ sent: [] });
  });

  it('without an id is always a new one', async () => {
    await call('POST', texts, { body: 'hello' });
    await call('POST', texts, { body: 'hello' });
    expect(new Set(line().heard.map(({ id }) => id)).size).toBe(2);
  });

  it('reports its own answers only, also when many come at once', async () => {
    const bodies = Array.from({ length: 12 }, (_, i) => `text ${i}`);
    const answers = await Promise.all(bodies.map((body) => call('POST', texts, { body })));
    expect(answers.map(sentBodies)).toEqual(bodies.map((body) => [`heard: ${body}`]));
  });

  it('may be empty, and may have a plus sign unescaped in the path', async () => {
    expect((await call('POST', `/practice/phones/${phone}/texts`, { body: '' })).status).toBe(200);
  });

  it.each([
    ['1,600 letters', 'a'.repeat(1600), 200],
    ['1,600 emoji', '🐦'.repeat(1600), 200],
    ['1,601 letters', 'a'.repeat(1601), 413],
    ['1,601 emoji', '🐦'.repeat(1601), 413],
  ])('of %s', async (_name, body, status) => {
    const answer = await call('POST', texts, { body });
    expect(answer.status).toBe(status);
    expect(line().heard.length).toBe(status === 200 ? 1 : 0);
  });

  it.each([
    ['no body', undefined],
    ['no words', {}],
    ['words that are none', { body: 5 }],
    ['an empty id', { body: 'x', id: '' }],
    ['an id of 201 characters', { body: 'x', id: 'i'.repeat(201) }],
    ['an id the store cannot keep', { body: 'x', id: 'a\0b' }],
    ['half a character in its id', { body: 'x', id: 'a\ud800' }],
    ['an unknown field', { body: 'x', ID: 'a' }],
    ['a list', []],
  ])('with %s is refused and changes nothing', async (_name, body) => {
    const answer = await call('POST', texts, body);
    expect([answer.status, answer.body]).toEqual([400, refused('bad-request')]);
    expect(line().heard).toEqual([]);
  });

  it('that breaks the line is a 500 that repeats none of it, and is reported', async () => {
    line().failNext();
    const answer = await call('POST', texts, { body: 'my secret' });
    expect([answer.status, answer.body]).toEqual([500, refused('broken')]);
    expect(JSON.stringify(answer.body)).not.toContain('secret');
    expect(faults()).toHaveLength(1);
  });
});

describe('a body', () => {
  it.each([
    ['broken JSON', '{"body":', {}, 400, 'bad-json'],
    ['a bare word', '"hello"', {}, 400, 'bad-json'],
    ['another type', 'body=hello', { 'Content-Type': 'application/x-www-form-urlencoded' }, 415, 'not-json'],
    ['plain text', 'hello', { 'Content-Type': 'text/plain' }, 415, 'not-json'],
    ['another charset', '{"body":"x"}', { 'Content-Type': 'application/json; charset=latin1' }, 415, 'not-json'],
    ['an unknown encoding', '{"body":"x"}', { 'Content-Encoding': 'squashed' }, 415, 'not-json'],
    ['an encoding it is not in', '{"body":"x"}', { 'Content-Encoding': 'gzip' }, 400, 'bad-request'],
    ['a very long body', JSON.stringify({ body: 'a'.repeat(3_000_000) }), {}, 413, 'body-too-large'],
  ])('of %s is refused as JSON', async (_name, body, headers, status, code) => {
    const answer = await call('POST', texts, body, headers);
    expect([answer.status, answer.body]).toEqual([status, refused(code)]);
    expect(line().heard).toEqual([]);
  });
});

describe('an address', () => {
  it.each([
    ['GET', '/practice', 404, 'not-found'],
    ['GET', '/practice/nothing', 404, 'not-found'],
    ['GET', '/practice/phones/%zz/texts', 400, 'bad-escape'],
    ['GET', '/practice/phones/12025550123/texts', 400, 'bad-number'],
    ['GET', '/practice/phones/%2B123456/texts', 400, 'bad-number'],
    ['GET', '/practice/phones/%2B1234567890123456/texts', 400, 'bad-number'],
    ['GET', '/practice/phones/%2B12025550123%0A/texts', 400, 'bad-number'],
    ['DELETE', texts, 405, 'method-not-allowed'],
    ['PUT', '/practice/reset', 405, 'method-not-allowed'],
    ['GET', '/practice/clock', 405, 'method-not-allowed'],
    ['POST', `/practice/families/${phone}`, 405, 'method-not-allowed'],
    ['OPTIONS', '/practice/state', 405, 'method-not-allowed'],
    ['GET', '/nothing', 404, 'not-found'],
  ])('%s %s is refused as JSON', async (method, path, status, code) => {
    const answer = await call(method, path);
    expect([answer.status, answer.body]).toEqual([status, refused(code)]);
    expect(answer.headers.get('content-type')).toMatch(/^application\/json/);
    if (status === 405) expect(answer.headers.get('allow')).not.toBeNull();
  });

  it.each(['+1234567', '+123456789012345'])('with the number %s is taken', async (number) => {
    expect((await call('GET', `/practice/phones/${number}/case`)).body).toEqual({ case: null });
  });
});

describe('what the page needs', () => {
  it('has the state map as the machines give it', async () => {
    expect((await call('GET', '/practice/map')).body).toEqual({ machines: [] });
  });

  it('hears of every change by a sequence number, and of nothing else', async () => {
    const events = await fetch(`${url()}/practice/events`);
    expect(events.headers.get('content-type')).toMatch(/^text\/event-stream/);
    const reader = events.body?.pipeThrough(new TextDecoderStream()).getReader();
    expect((await reader?.read())?.value).toBe('data: {"sequence":0}\n\n');
    await call('POST', texts, { body: 'a secret' });
    expect((await reader?.read())?.value).toBe('data: {"sequence":1}\n\n');
    await reader?.cancel();
  });

  it('is served with a policy that runs its own files only', async () => {
    const response = await fetch(`${url()}/`);
    await response.text();
    expect(response.headers.get('content-security-policy')).toMatch(/default-src 'self'.*frame-ancestors 'none'/);
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
    expect(response.headers.get('referrer-policy')).toBe('no-referrer');
    expect(response.headers.get('x-powered-by')).toBeNull();
  });
});

describe('health', () => {
  it('is good while the database answers', async () => {
    expect(await call('GET', '/healthz')).toMatchObject({ status: 200, body: { ok: true } });
  });

  it('is bad when it does not', async () => {
    breakDatabase();
    expect(await call('GET', '/healthz')).toMatchObject({ status: 503, body: { ok: false } });
    expect(faults()).toHaveLength(1);
  });
});
