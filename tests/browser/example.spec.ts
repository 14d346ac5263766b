import { expect, test } from '@playwright/test';
import { plain } from './pages.ts';

test(`the worked example of /${plain} keeps the crate’s numbers until asked for the figure’s`, async ({ page }) => {
  await page.goto(plain);
  const example = page.locator('[data-example]');
  const built = await example.textContent();
  const sliders = page.locator('.controls input[type=range]');
  for (const slider of await sliders.all()) {
    await slider.focus();
    await page.keyboard.press('PageUp');
  }
  expect(await example.textContent()).toBe(built);
  const button = example.locator('[data-example-switch]');
  await button.click();
  await expect(button).toHaveAttribute('aria-pressed', 'true');
  expect(await example.textContent()).not.toBe(built);
  await button.click();
  expect(await example.textContent()).toBe(built);
});
