import { expect, test, type Page } from '@playwright/test';
import { readPdf } from '../support/pdf.ts';
import { scalesOn } from '../support/scales-on-paper.ts';
import { unmetIn } from './walk/references.ts';

/** Puts the first step of every lesson into the plan; returns how many lessons there are. */
async function planOfAll(page: Page): Promise<number> {
  await page.goto('workshop/');
  const lessons = page.getByLabel('Steps of a lesson').locator('option');
  const slugs = await lessons.evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
  for (const slug of slugs) {
    await page.getByLabel('Steps of a lesson').selectOption(slug);
    await page.getByRole('button', { name: 'Add step 1:' }).click();
  }
  return slugs.length;
}

test('the wall has all that the figure of any lesson refers to', async ({ page }) => {
  const count = await planOfAll(page);
  expect(count).toBeGreaterThan(20);
  await page.getByRole('button', { name: 'Start on this screen' }).click();
  for (let step = 1; step <= count; step++) {
    await page.keyboard.type(`j${step}`);
    await page.keyboard.press('Enter');
    const figure = page.locator('.stage .lesson:not([data-away])');
    await expect(page.locator('.stage')).toHaveAttribute('aria-label', new RegExp(`step ${step} of`));
    await expect(figure.locator('svg, canvas').first()).toBeAttached();
    expect(await figure.evaluate(unmetIn), `${await figure.getAttribute('data-lesson')}`).toEqual([]);
  }
  // A subject is there by its lines, whichever it is.
  await page.keyboard.type('j1');
  await page.keyboard.press('Enter');
  const subject = page.locator('.stage .lesson:not([data-away]) use').first();
  await expect(subject).toBeVisible();
  expect(await subject.evaluate((use) => (use as SVGUseElement).getBBox().width)).toBeGreaterThan(20);
});

test('the handout has all that the figure of any lesson refers to, and a ruler finds the ratios that it states', async ({
  page,
}) => {
  await page.addInitScript(() => (window.print = () => undefined));
  const count = await planOfAll(page);
  for (const part of [/running order/, /^Problems, with/, /^Their answers/, /field card/])
    await page.getByRole('checkbox', { name: part }).uncheck();
  for (const paper of ['A4', 'Letter'] as const) {
    await page.getByLabel('Paper').selectOption({ label: paper });
    await page.getByRole('button', { name: 'Print', exact: true }).click();
    await expect(page.locator('.handout .drawing svg.paper-sheet')).toHaveCount(count);
    expect(await page.locator('.handout').evaluate(unmetIn)).toEqual([]);
    const pages = await readPdf(await page.pdf({ preferCSSPageSize: true }));
    const scales = pages.flatMap(scalesOn);
    expect(scales.length).toBeGreaterThan(10);
    for (const { stated, measured, length } of scales) {
      const off = (measured / stated - 1) * length;
      expect(Math.abs(off), `${length} mm on paper, stated as ${stated}, are off by ${off} mm`).toBeLessThan(0.1);
    }
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect(page.locator('.handout')).toHaveCount(0);
  }
});
