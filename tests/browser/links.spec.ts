import { expect, test } from '@playwright/test';

test('a link that names a tab turns to it and keeps what is set; any other sets the figure, and Back brings what was', async ({
  page,
}) => {
  await page.goto('lessons/life-size/');
  const width = page.locator('[name="sensor-width"]');
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.controls details')) fold.open = true;
  });
  await width.fill('22.3');
  await width.press('Enter');
  // They may stand in parts that are folded.
  await page.locator('.lesson a', { hasText: '“Printed at one size”' }).dispatchEvent('click');
  await expect(page.locator('.tabs [aria-pressed=true]')).toContainText('Printed at one size');
  await expect(width).toHaveValue(/22\.3/);

  const setting = page.locator('.lesson a[href^="?magnification"]').first();
  await setting.dispatchEvent('click');
  await expect(width).toHaveValue(/36/);
  await page.goBack();
  await expect(width).toHaveValue(/22\.3/);
  await expect(page.locator('.tabs [aria-pressed=true]')).toContainText('Printed at one size');
});
