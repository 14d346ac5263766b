import { expect, test } from '@playwright/test';
import { ofSheets } from './pages.ts';

test.use({ javaScriptEnabled: false });

// What the figure and the numbers of every lesson say without scripts is looked at where each is walked through.
test(`/${ofSheets} reads without scripts, and shows no control that would need one`, async ({ page }) => {
  await page.goto(ofSheets);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.locator('.sheet svg').first()).toBeVisible();
  await expect(page.locator('#example .katex').first()).toBeVisible();
  await expect(page.locator('[data-working] .katex').first()).toBeVisible();
  await expect(page.locator('.controls')).toBeHidden();
  await expect(page.locator('.theme')).toBeHidden();
  await expect(page.locator('.grip').first()).toBeHidden();
  await expect(page.locator('.predict input').first()).toBeHidden();
  // A picture that nothing computes takes no more room than the sentence that says so.
  const { height } = (await page.locator('.picture-sheet').first().boundingBox())!;
  expect(height).toBeLessThan(160);
});
