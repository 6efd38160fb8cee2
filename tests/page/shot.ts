/**
 * Takes pictures of the practice page in the middle of a night: `node tests/page/shot.ts FOLDER`.
 * With NIGHTJAR_PAGE_BASE it takes them of that line (and resets it).
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { launch, openLine, openPage, post } from './browser.ts';

const folder = process.argv[2];
if (!folder) throw new Error('where to? node tests/page/shot.ts FOLDER');
mkdirSync(folder, { recursive: true });

const night = [
  'g tube fell out 20 min ago',
  'no',
  'yes',
  'no',
  'yes',
  'easy',
  'no. can a nurse call me?',
  'yes',
  'yes',
];
const widths = [320, 400, 768, 1440];

async function talk(page: Page) {
  const box = page.locator('#caregiver-text');
  for (const [at, words] of night.entries()) {
    await box.fill(words);
    await box.press('Enter');
    await page.locator('#caregiver .in').nth(at).waitFor();
  }
  await page.locator('#nurse .text').first().waitFor();
  await sendPicture(page);
}

/** A picture for the nurse's phone: any will do, so it is one of the page itself. */
async function sendPicture(page: Page) {
  await page.locator('#nurse-text').fill('take');
  await page.locator('#nurse-text').press('Enter');
  await page.locator('#nurse .in').first().waitFor();
  const base64 = (await page.screenshot({ clip: { x: 0, y: 0, width: 300, height: 200 } })).toString('base64');
  const number = encodeURIComponent(await page.locator('#caregiver-pick').inputValue());
  await post(line.base, `/practice/phones/${number}/texts`, { body: '', media: [{ type: 'image/png', base64 }] });
  await page.locator('#nurse img').waitFor();
}

const line = await openLine();
const browser = await launch();
for (const colorScheme of ['light', 'dark'] as const) {
  for (const width of widths) {
    const height = width === 1440 ? 900 : 1024;
    const { page, close } = await openPage(browser, line.base, { viewport: { width, height }, colorScheme });
    await talk(page);
    await page.waitForTimeout(600); // the map has scrolled to the current state
    await page.screenshot({ path: join(folder, `page-${width}-${colorScheme}.png`), fullPage: width !== 1440 });
    await close();
  }
}
await browser.close();
await line.stop();
