/**
 * Takes pictures of the practice page in the middle of a night: `node tests/page/shot.ts FOLDER`.
 * With NIGHTJAR_PAGE_BASE it takes them of that line (and resets it).
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { launch, openLine, openPage } from './browser.ts';

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
const widths = [320, 768, 1440];

async function talk(page: Page) {
  const box = page.locator('#caregiver-text');
  for (const [at, words] of night.entries()) {
    await box.fill(words);
    await box.press('Enter');
    await page.locator('#caregiver .in').nth(at).waitFor();
  }
  await page.locator('#nurse .text').first().waitFor();
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
