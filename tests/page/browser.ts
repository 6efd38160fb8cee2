/** The browser the page's tests run in, and where the page is: the fake line, or the one NIGHTJAR_PAGE_BASE names. */
import { existsSync, readFileSync } from 'node:fs';
import { type Browser, type BrowserContextOptions, chromium } from 'playwright-core';
import { startFake } from './fake.ts';

export const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
export const hasBrowser = existsSync(executablePath);
if (!hasBrowser) console.warn(`tests/page skipped: no Chromium at ${executablePath} (set CHROMIUM)`);

const args = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const launch = () => chromium.launch({ executablePath, args });

/** What the tests ask inside the browser, to be evaluated there. */
export const inPage = readFileSync(new URL('inPage.js', import.meta.url), 'utf8');

/** Where the page is served; `refuse` is null on a real line, which cannot be told to fail. */
export async function openLine() {
  const base = process.env.NIGHTJAR_PAGE_BASE;
  return base ? { base, refuse: null, stop: async () => {} } : await startFake();
}

/** A practice line set back to one night, and the page open on it, waiting until it shows that night. */
export async function openPage(browser: Browser, base: string, options: BrowserContextOptions = {}) {
  await post(base, '/practice/reset', { now: '2027-03-06T02:10:00-05:00' });
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
  const page = await context.newPage();
  const problems: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') problems.push(message.text());
  });
  page.on('pageerror', (error) => problems.push(error.message));
  await page.goto(base);
  await page.getByText('Saturday 6 March 2027, 02:10').waitFor();
  await page.locator('[data-state]').first().waitFor();
  return { page, problems, close: () => context.close() };
}

export async function post(base: string, path: string, body: unknown) {
  const request = { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) };
  const answer = await fetch(new URL(path, base), request);
  if (!answer.ok) throw new Error(`${path} answered ${answer.status}`);
  return await answer.json();
}
