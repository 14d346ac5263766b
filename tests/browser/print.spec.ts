import { expect, test } from '@playwright/test';
import { lessons } from './pages.ts';

for (const path of lessons) {
  test(`/${path} prints its figure in black on white, without controls`, async ({ page }) => {
    await page.goto(path);
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    for (const hidden of [
      '.controls',
      '.tabs',
      '.bench-actions',
      '.theme',
      '.practice .actions',
      '.grip',
      '.grip + .arrows',
    ]) {
      for (const element of await page.locator(hidden).all()) await expect(element).toBeHidden();
    }
    await expect(page.locator('.sheet svg').first()).toBeVisible();
    const [ink, paper] = await page.evaluate(() => {
      const style = getComputedStyle(document.documentElement);
      return [style.color, style.backgroundColor];
    });
    expect(ink).toMatch(/rgb\(0, 0, 0\)/);
    expect(paper).toMatch(/rgb\(255, 255, 255\)|rgba\(0, 0, 0, 0\)/);
  });

  test(`/${path} prints only addresses that can be typed, and no line that leads up to a formula without it`, async ({
    page,
  }) => {
    await page.goto(path);
    await page.emulateMedia({ media: 'print' });
    const { links, lines } = await page.evaluate(() => ({
      links: [...document.querySelectorAll('main a[href]:not([href^=http])')].map(
        (link) => getComputedStyle(link, '::after').content,
      ),
      lines: [...document.querySelectorAll('.formula')].flatMap(({ previousElementSibling: line }) =>
        line?.tagName === 'P' ? [getComputedStyle(line).breakAfter] : [],
      ),
    }));
    expect(new Set(links)).toEqual(new Set(['none']));
    expect(new Set(lines)).toEqual(new Set(['avoid']));
  });
}
