import { expect, test } from '@playwright/test';

/** By lesson, two settings of its figure: with numbers only, and with an answer in words. */
const settings = {
  'life-size': ['', '?magnification=4'],
  extension: ['', '?lens=lens-18&extension=12'],
  diffraction: ['', '?f-number=32&magnification=4'],
  'depth-of-field': ['', '?magnification=5&f-number=2.8'],
};
const screens = [
  [1280, 720],
  [1440, 900],
  [360, 800],
] as const;

for (const [lesson, [numbers, words]] of Object.entries(settings)) {
  test(`a reading of ${lesson} that turns into words moves nothing below it`, async ({ page }) => {
    for (const [width, height] of screens) {
      await page.setViewportSize({ width, height });
      const heights: number[] = [];
      for (const setting of [numbers!, words!]) {
        await page.goto(`lessons/${lesson}/${setting}`);
        await expect(page.locator('.readings [data-type=object]')).toHaveCount(setting === numbers ? 0 : 1);
        heights.push(await page.locator('.readings').evaluate((readings) => readings.getBoundingClientRect().height));
      }
      expect(heights[1], `at ${width} × ${height}`).toBe(heights[0]);
    }
  });
}
