import { expect, test, type Page } from '@playwright/test';
import { reported } from './walk/axe.ts';
import { watched } from './walk/watch.ts';

const filled = (page: Page) => page.locator('#effective-f-number .fill-in');

test('a formula is filled in for another letter, and its address brings the same back', async ({ page, baseURL }) => {
  const faults = watched(page, baseURL!);
  const scripts: string[] = [];
  page.on('request', (request) => {
    if (request.resourceType() === 'script') scripts.push(request.url());
  });
  await page.goto('formulas/');
  await page.getByRole('link', { name: 'Which f-number counts close up?' }).click();
  await expect(page.getByRole('heading', { name: 'Which f-number counts close up?' })).toBeInViewport();
  expect(
    scripts.filter((url) => /fill-?in/i.test(url)),
    'loaded before a formula is opened',
  ).toEqual([]);

  await page.locator('#effective-f-number summary').click();
  const form = filled(page);
  await form.getByLabel('f-number N', { exact: true }).fill('f/5.6');
  await form.getByLabel('I want to know').selectOption('magnification');
  await form.getByLabel('pupil magnification P').fill('1');
  await form.getByRole('textbox', { name: 'effective f-number' }).fill('11.2');
  await expect(form.locator('output')).toHaveText('1×');
  await form.getByLabel('f-number N', { exact: true }).fill('nonsense');
  await form.getByLabel('pupil magnification P').focus();
  await expect(form.locator('.notice')).toContainText('f-number takes');
  await expect(form.locator('.words')).toHaveText('Fill in the f-number, and the answer follows.');
  await form.getByLabel('f-number N', { exact: true }).fill('5.6');
  await expect(form.locator('.notice')).toHaveCount(0);
  const equation = form.locator('[data-equation] .katex-html');
  const before = await equation.textContent();
  expect(before).toContain('11.2');

  const address = page.url();
  expect(new URL(address).hash).toBe('#effective-f-number');
  await page.goto('about:blank');
  await page.goto(address);
  await expect(form.locator('output')).toHaveText('1×');
  await expect(form.getByLabel('f-number N', { exact: true })).toHaveValue('f/5.6');
  await expect(form).toBeInViewport();
  expect(await equation.textContent()).toBe(before);
  await page.setViewportSize({ width: 360, height: 740 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  await page.setViewportSize({ width: 1280, height: 720 });
  // The page that it stands in is looked at with the others.
  expect(await reported(page, '#effective-f-number')).toEqual([]);
  expect(faults).toEqual([]);
});

test('a link to a formula that the sheet does not have is answered in words', async ({ page }) => {
  await page.goto('formulas/?formula=nonsense');
  await expect(page.locator('[data-sheet-notice]')).toContainText('“nonsense”');
});

/** Pages of a PDF as the browser writes it: each is an object of its own. */
const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)!.length;

test('on A4 and on Letter the card is two pages and the book twelve at most', async ({ page }) => {
  await page.goto('formulas/card/');
  for (const format of ['A4', 'Letter']) expect(pagesOf(await page.pdf({ format })), format).toBe(2);
  await page.goto('formulas/');
  for (const format of ['A4', 'Letter']) expect(pagesOf(await page.pdf({ format })), format).toBeLessThanOrEqual(12);
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });

  test('the sheet opens to letters and an example, and shows no control that would need one', async ({ page }) => {
    await page.goto('formulas/#effective-f-number');
    const entry = page.locator('#effective-f-number');
    await entry.getByText('Letters, and an example').click();
    await expect(entry.locator('[data-equation] .katex').first()).toBeVisible();
    await expect(entry.getByText('as marked on the lens')).toBeVisible();
    await expect(page.locator('[data-print]')).toBeHidden();
  });
});
