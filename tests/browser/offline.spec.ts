import { expect, test } from '@playwright/test';
import { lessons, pages } from './pages.ts';

test.use({ serviceWorkers: 'allow', reuseContext: false });

test('after one visit every page is at hand without a network', async ({ page, context }) => {
  await page.goto('');
  await page.evaluate(() => navigator.serviceWorker.ready.then(({ active }) => active?.state));
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await context.setOffline(true);
  for (const path of pages) {
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  }
  // What is fetched only when it is asked for is at hand too.
  await page.goto('formulas/?formula=effective-f-number');
  await expect(page.locator('#effective-f-number output')).toBeVisible();
  await page.goto(`${lessons[0]}?stage=1`);
  await expect(page.locator('.stage .question')).toBeVisible();
});
