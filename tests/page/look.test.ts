/**
 * What the practice page looks like and how it is reached, held against W3C WCAG 2.2 (2023), level AA: each test names its
 * criterion. Ratios are computed here by the formula of 1.4.3; axe-core checks the rest of its rules.
 */
import axe from 'axe-core';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, inPage, launch, openLine, openPage } from './browser.ts';
import { contrast } from './contrast.ts';

const schemes = ['light', 'dark'] as const;
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

describe.skipIf(!hasBrowser)('the look of the practice page', () => {
  let line: Awaited<ReturnType<typeof openLine>>;
  let browser: Browser;

  beforeAll(async () => {
    [line, browser] = await Promise.all([openLine(), launch()]);
  });
  afterAll(async () => {
    await browser?.close();
    await line?.stop();
  });

  /** The page in the middle of an emergency, so that every kind of line and colour is on it. */
  async function emergency(options: Parameters<typeof openPage>[2]) {
    const opened = await openPage(browser, line.base, options);
    for (const words of ['the g tube came out', 'she is blue and has trouble breathing']) {
      await opened.page.locator('#caregiver-text').fill(words);
      await opened.page.locator('#caregiver-text').press('Enter');
      await opened.page.locator('#caregiver .in').filter({ hasText: words }).waitFor();
    }
    await opened.page.locator('#waiting p').first().waitFor();
    await opened.page.locator('.lit').first().waitFor();
    await opened.page.evaluate(inPage);
    return opened;
  }

  const bottomOf = (place: Locator) => place.evaluate((each) => each.getBoundingClientRect().bottom);
  const wider = (page: Page) => page.evaluate<number>('document.documentElement.scrollWidth - innerWidth');

  it.each([320, 768, 1024, 1200, 1440])('1.4.10 reflow: %i px wide, nothing to scroll sideways', async (width) => {
    const { page, close } = await emergency({ viewport: { width, height: 900 } });
    expect(await wider(page)).toBeLessThanOrEqual(0);
    const cut = await page
      .locator('.thread, #case, #charts')
      .evaluateAll((all) =>
        all.filter((each) => each.scrollWidth > each.clientWidth).map((each) => each.id || each.className),
      );
    expect(cut).toEqual([]);
    await close();
  });

  it('1.4.4 resize text: twice the size at 1440 px still fits', async () => {
    const { page, close } = await emergency({ viewport: { width: 720, height: 450 }, deviceScaleFactor: 2 });
    expect(await wider(page)).toBeLessThanOrEqual(0);
    await close();
  });

  it.each(schemes)('1.4.3 contrast: every text in %s is at least 4.5 to 1', async (colorScheme) => {
    const { page, close } = await emergency({ colorScheme });
    const texts = await page.evaluate<{ words: string; ink: string; ground: string }[]>('inPage.texts()');
    expect(texts.length).toBeGreaterThan(60);
    expect(texts.filter(({ ink, ground }) => contrast(ink, ground) < 4.5)).toEqual([]);
    await close();
  });

  it.each(schemes)(
    '1.4.11 contrast of things: the lamp and the boxes in %s are at least 3 to 1',
    async (colorScheme) => {
      const { page, close } = await emergency({ colorScheme });
      const styles = (selector: string, property: string) =>
        page.evaluate<string[]>(`inPage.styles('${selector}', '${property}')`);
      const [panel = ''] = await styles('#map', 'backgroundColor');
      const strokes = await styles('.state rect', 'stroke');
      const edges = await styles('textarea, select', 'borderTopColor');
      expect(strokes.length).toBeGreaterThan(10);
      expect([...strokes, ...edges].filter((colour) => contrast(colour, panel) < 3)).toEqual([]);
      await close();
    },
  );

  it.each([
    { width: 320, colorScheme: 'light' as const },
    { width: 1440, colorScheme: 'light' as const },
    { width: 1440, colorScheme: 'dark' as const },
  ])('axe-core finds nothing at $width px, $colorScheme', async ({ width, colorScheme }) => {
    const { page, close } = await emergency({ viewport: { width, height: 900 }, colorScheme });
    await page.evaluate(axe.source);
    const { violations, passes } = await page.evaluate<axe.AxeResults>(
      `axe.run(document, { runOnly: ${JSON.stringify(tags)} })`,
    );
    expect(violations.map(({ id, nodes }) => ({ id, at: nodes.map(({ html }) => html) }))).toEqual([]);
    expect(passes.length).toBeGreaterThan(20);
    await close();
  });

  it('2.5.8 target size: every button and field is at least 24 by 24 px', async () => {
    const { page, close } = await emergency({ viewport: { width: 320, height: 900 } });
    const targets = page.locator('button:visible, select:visible, textarea:visible, summary:visible, .jump a:visible');
    const sizes = await targets.evaluateAll((all) => all.map((each) => each.getBoundingClientRect().toJSON()));
    expect(sizes.length).toBeGreaterThan(10);
    expect(sizes.filter(({ width, height }) => width < 24 || height < 24)).toEqual([]);
    await close();
  });

  it('2.4.7 and 2.4.11 focus: always outlined, never under the caution, going back up a narrow page', async () => {
    const { page, close } = await emergency({ viewport: { width: 320, height: 640 } });
    await page.locator('#charts').focus();
    for (let step = 0; step < 14; step++) {
      await page.keyboard.press('Shift+Tab');
      const focused = page.locator(':focus');
      const name = await focused.evaluate((each) => each.id || each.textContent);
      const [outline] = await page.evaluate<string[]>("inPage.styles(':focus', 'outlineStyle')");
      const [bottom, caution] = [await bottomOf(focused), await bottomOf(page.locator('.caution'))];
      expect({ name, outline }).toEqual({ name, outline: 'solid' });
      expect(bottom, `${name} stands under the caution`).toBeGreaterThan(caution);
    }
    await close();
  });

  it('2.4.11 a jump within the page shows the heading it leads to, not under the caution', async () => {
    const { page, close } = await emergency({ viewport: { width: 320, height: 640 } });
    await page.getByRole('link', { name: 'Nurse' }).click();
    await expect.poll(() => page.evaluate<number>('scrollY')).toBeGreaterThan(0);
    const top = await page.locator('#nurse-title').evaluate((each) => each.getBoundingClientRect().top);
    expect(top).toBeGreaterThan(await bottomOf(page.locator('.caution')));
    await close();
  });

  it('says always and everywhere that this is practice and that nobody signed the protocol', async () => {
    const { page, close } = await emergency({ viewport: { width: 320, height: 640 } });
    await page.locator('#charts').scrollIntoViewIfNeeded();
    const caution = page.locator('.caution');
    const words = await caution.textContent();
    expect(words).toContain('Practice: invented families, nothing leaves this page. Not for a real child.');
    expect(words).toContain('Protocol unsigned');
    expect(await caution.evaluate((each) => each.getBoundingClientRect().top)).toBe(0);
    await close();
  });
});
