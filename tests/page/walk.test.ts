/** The practice page as a person uses it, in a real browser; on the fake line, or on the one NIGHTJAR_PAGE_BASE names. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { hasBrowser, inPage, launch, openLine, openPage, post } from './browser.ts';

describe.skipIf(!hasBrowser)('the practice page', () => {
  let line: Awaited<ReturnType<typeof openLine>>;
  let browser: Browser;
  let opened: Awaited<ReturnType<typeof openPage>>;
  let page: Page;

  beforeAll(async () => {
    [line, browser] = await Promise.all([openLine(), launch()]);
  });
  beforeEach(async () => {
    opened = await openPage(browser, line.base);
    page = opened.page;
  });
  afterEach(() => opened.close());
  afterAll(async () => {
    await browser?.close();
    await line?.stop();
  });

  const caregiverLines = () => page.locator('#caregiver .text');
  const text = (words: string) => sendFrom('caregiver', words);
  async function sendFrom(phone: 'caregiver' | 'nurse', words: string) {
    await page.locator(`#${phone}-text`).fill(words);
    await page.locator(`#${phone}-text`).press('Enter');
    await page.locator(`#${phone} .in`).filter({ hasText: words }).last().waitFor();
  }
  const heardOf = (words: string) => page.locator('#news').filter({ hasText: words }).waitFor({ state: 'attached' });

  it('shows a text and its answer as lines with the time in the margin, and reads the answer out', async () => {
    await text('her g tube fell out 20 min ago');
    await expect.poll(() => caregiverLines().count()).toBeGreaterThanOrEqual(2);
    expect(await caregiverLines().first().locator('time').textContent()).toBe('02:10');
    expect(await caregiverLines().first().locator('b').textContent()).toBe('Caregiver');
    expect(await caregiverLines().nth(1).locator('b').textContent()).toBe('Line');
    const answer = await caregiverLines().nth(1).locator('p').textContent();
    await heardOf(answer?.slice(0, 40) ?? 'no answer');
    expect(await page.locator('#caregiver-text').inputValue()).toBe('');
    expect(opened.problems).toEqual([]);
  });

  it('keeps a line break in a text that Shift+Enter made', async () => {
    const box = page.locator('#caregiver-text');
    await box.pressSequentially('tube out');
    await box.press('Shift+Enter');
    await box.pressSequentially('what now');
    await box.press('Enter');
    await expect.poll(() => caregiverLines().first().locator('p').textContent()).toBe('tube out\nwhat now');
  });

  it('announces a new page at once, shows whom it calls, and when it was taken', async () => {
    await text('the g tube came out');
    await text('she is blue and has trouble breathing');
    const alarm = page.locator('#alarm').filter({ hasText: 'Emergency page to' });
    await alarm.waitFor({ state: 'attached' });
    expect(await page.locator('#alarm').getAttribute('aria-live')).toBe('assertive');
    const called = page.locator('#waiting p').filter({ hasText: 'Emergency page to' });
    await called.first().waitFor();
    const show = page.getByRole('button', { name: 'Show this phone' });
    if ((await show.count()) > 0) await show.first().click();
    await page.locator('#nurse .out').first().waitFor();
    await page.locator('#nurse .call b').filter({ hasText: 'Line, by call' }).first().waitFor();
    await sendFrom('nurse', 'take');
    await page.locator('#waiting').waitFor({ state: 'hidden' });
    await page.locator('#case').filter({ hasText: 'taken 02:10' }).waitFor();
    expect(await page.locator('#case').textContent()).toContain('Emergency Told to call the emergency number now.');
  });

  it('shows a picture of the family at the end of the nurse’s thread, and a voice note as a link', async () => {
    await text('the g tube came out');
    await text('she is blue and has trouble breathing');
    await page.locator('#waiting p').first().waitFor();
    const show = page.getByRole('button', { name: 'Show this phone' });
    if ((await show.count()) > 0) await show.first().click();
    await page.locator('#nurse .out').first().waitFor();
    await sendFrom('nurse', 'take');
    const number = await page.locator('#caregiver-pick').inputValue();
    const media = [
      { type: 'audio/amr', base64: Buffer.from('no sound').toString('base64') },
      { type: 'image/png', base64: (await page.screenshot()).toString('base64') },
    ];
    await post(line.base, `/practice/phones/${encodeURIComponent(number)}/texts`, { body: 'look at this', media });
    const picture = page.locator('#nurse img');
    await picture.waitFor();
    await page.evaluate(inPage);
    expect(await page.evaluate("inPage.pictures('#nurse')")).toEqual([
      { words: 'Picture from the family', width: 1440, inSight: true },
    ]);
    const links = page.locator('#nurse .text a');
    expect(await links.count()).toBe(2);
    expect((await links.allTextContents()).filter((words) => words !== '')).toEqual(['Open what the family sent']);
    expect(await page.locator('#caregiver img').count()).toBe(0);
  });

  it('moves the clock by 5 minutes, by an hour, and to the next timer', async () => {
    const now = page.locator('#now');
    await page.getByRole('button', { name: '+5 min' }).click();
    await expect.poll(() => now.textContent()).toContain('02:15');
    await page.getByRole('button', { name: '+1 h' }).click();
    await expect.poll(() => now.textContent()).toContain('03:15');
    await text('the g tube came out');
    const hint = page.locator('#next-due').filter({ hasText: 'Next:' });
    const due = /(\d\d:\d\d) \(/.exec((await hint.textContent()) ?? '')?.[1];
    await page.getByRole('button', { name: 'To the next timer' }).click();
    await expect.poll(() => now.textContent()).toContain(due);
    await heardOf('The clock moved.');
  });

  it('resets only after a question, and not when it is called off', async () => {
    await text('the g tube came out');
    await page.getByRole('button', { name: 'Reset' }).click();
    await page.keyboard.press('Escape');
    expect(await caregiverLines().count()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Reset' }).click();
    await page.locator('dialog').getByRole('button', { name: 'Reset' }).click();
    await page.locator('#caregiver').getByText('No texts yet.').waitFor();
    await page.locator('#known').getByText('No case yet.').waitFor();
  });

  it('updates by itself when something happens elsewhere', async () => {
    const number = await page.locator('#caregiver-pick').inputValue();
    await page.locator('#connection').filter({ hasText: 'Updates by itself' }).waitFor();
    await post(line.base, `/practice/phones/${encodeURIComponent(number)}/texts`, { body: 'tube came out, elsewhere' });
    await expect.poll(() => caregiverLines().filter({ hasText: 'tube came out, elsewhere' }).count()).toBe(1);
  });

  it('lights the current state on the map and names it in words', async () => {
    expect(await page.locator('#here').textContent()).toContain('not begun');
    await text('the g tube came out');
    const lit = page.locator('#charts svg').first().locator('.lit');
    await expect.poll(() => lit.count()).toBe(1);
    const words = (await lit.locator('tspan').allTextContents()).join(' ');
    expect(await page.locator('#here dd').first().textContent()).toContain(words);
    await page.getByText('Ways on from here').first().click();
    expect(await page.locator('.chart').first().locator('li').count()).toBeGreaterThan(0);
  });

  it('takes a number not on file, by its shape only', async () => {
    await page.locator('#caregiver-pick').selectOption({ label: 'A number not on file' });
    await page.locator('#other-number').fill('5550199');
    await page.locator('#other-number').press('Enter');
    await page.locator('#other-error').filter({ hasText: '+ and 7 to 15 digits' }).waitFor();
    expect(await page.locator('#other-number').getAttribute('aria-invalid')).toBe('true');
    await page.locator('#caregiver-text').fill('the g tube came out');
    await page.locator('#caregiver-text').press('Enter');
    await page.locator('#caregiver-error').filter({ hasText: 'Choose a number first.' }).waitFor();
    await page.locator('#other-number').fill('+1 (212) 555-0199');
    await page.getByRole('button', { name: 'Use' }).click();
    expect(await page.locator('#other-number').inputValue()).toBe('+12125550199');
    await text('the g tube came out');
    await expect.poll(() => caregiverLines().count()).toBeGreaterThanOrEqual(2);
  });

  it('says in place what the line refused, gives the text back, and sends it once', async (context) => {
    if (!line.refuse) return context.skip('a real line cannot be told to refuse');
    line.refuse('The line is being tidied.');
    const box = page.locator('#caregiver-text');
    await box.fill('the g tube came out');
    await box.press('Enter');
    await page.locator('#caregiver-error').filter({ hasText: 'Not sent. The line is being tidied.' }).waitFor();
    expect(await box.inputValue()).toBe('the g tube came out');
    await page.getByRole('button', { name: '+5 min' }).click();
    await page.locator('#clock-error').filter({ hasText: 'The clock did not move.' }).waitFor();
    line.refuse(null);
    await box.press('Enter');
    await expect.poll(() => page.locator('#caregiver .in').count()).toBe(1);
    await expect.poll(() => page.locator('#caregiver-error').textContent()).toBe('');
  });

  it('sends a text that was written before the page knew the numbers', async () => {
    await page.route('**/practice/state', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 1000));
      await route.continue();
    });
    await page.reload();
    await text('the g tube came out');
    expect(await page.locator('#caregiver-error').textContent()).toBe('');
    expect(await page.locator('#caregiver-text').inputValue()).toBe('');
  });

  it('can be walked by keyboard alone, in the order it is read', async () => {
    const reached: string[] = [];
    while (reached.at(-1) !== 'charts') {
      await page.keyboard.press('Tab');
      const focused = page.locator(':focus');
      reached.push((await focused.getAttribute('id')) ?? (await focused.textContent()) ?? '');
    }
    const stops = ['plus-five', 'plus-hour', 'next-timer', 'reset', 'caregiver-pick', 'caregiver-text', 'nurse-pick'];
    const order = [...stops, 'nurse-text', 'case', 'charts'];
    expect(reached[0]).toBe("Skip to the caregiver's text box");
    expect(reached.filter((id) => order.includes(id))).toEqual(order);

    await page.reload();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.keyboard.type('the g tube came out');
    await page.keyboard.press('Enter');
    await caregiverLines().filter({ hasText: 'the g tube came out' }).waitFor();
    expect(await page.locator(':focus').getAttribute('id')).toBe('caregiver-text');
  });
});
