import { expect, test } from '@playwright/test';
import { lessons } from './pages.ts';

test.use({ javaScriptEnabled: false });

for (const path of lessons) {
  test(`/${path} reads without scripts, with its figure and its worked example`, async ({ page }) => {
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    const sheet = page.locator('.sheet svg').first();
    await expect(sheet).toBeVisible();
    expect(await sheet.locator('*').count()).toBeGreaterThan(20);
    expect(await sheet.innerHTML()).not.toMatch(/NaN|undefined/);
    for (const output of await page.locator('output[name]').all()) await expect(output).not.toBeEmpty();
    const numbers = await page.locator('[data-number]').allTextContents();
    expect(numbers.filter((number) => /^[—\s]*$|NaN|undefined/.test(number))).toEqual([]);
    await expect(page.locator('#example .katex').first()).toBeVisible();
    await expect(page.locator('[data-working] .katex').first()).toBeVisible();
    await expect(page.locator('.controls')).toBeHidden();
    await expect(page.locator('.theme')).toBeHidden();
  });
}
