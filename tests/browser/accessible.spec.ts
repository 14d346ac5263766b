import { expect, test } from '@playwright/test';
import { ofSheets, plain } from './pages.ts';
import { reported } from './walk/axe.ts';

test(`axe finds nothing to report on a projected step of /${plain}`, async ({ page }) => {
  await page.goto(`${plain}?stage=1`);
  await expect(page.locator('.stage')).toBeVisible();
  expect(await reported(page, '.stage')).toEqual([]);
});

test(`nothing that has the focus on /${ofSheets} lies under the figure of a narrow phone, walked through backwards`, async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await page.goto(ofSheets);
  await expect(page.locator('.readings output').first()).toBeVisible();
  await page.locator('a[href]').last().focus();
  const covered: string[] = [];
  let stops = 0;
  for (;;) {
    await page.keyboard.press('Shift+Tab');
    const stop = await page.evaluate(() => {
      const [figure, focused] = [document.querySelector('.drawing')!, document.activeElement!];
      if (!focused.closest('main')) return undefined;
      const [over, under] = [figure.getBoundingClientRect(), focused.getBoundingClientRect()];
      const isCovered = !figure.contains(focused) && under.top >= over.top && under.bottom <= over.bottom;
      return { isCovered, html: focused.outerHTML.slice(0, 120) };
    });
    if (stop === undefined) break;
    stops++;
    if (stop.isCovered) covered.push(stop.html);
  }
  expect(stops).toBeGreaterThan(10);
  expect(covered).toEqual([]);
});

test(`a handle of /${plain} takes the focus on a narrow phone without moving the text below the figure`, async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await page.goto(plain);
  await expect(page.locator('.readings output').first()).toBeVisible();
  await page.locator('#limits').scrollIntoViewIfNeeded();
  // The problems above come to life when a reader comes near them, and may find another height.
  await expect(page.locator('.part-check [inert]')).toHaveCount(0);
  // Parts that come into view for the first time find their height, and what stands on the screen keeps its place.
  const scrolled = async () => {
    let [before, now] = [NaN, await page.evaluate(() => Math.round(scrollY))];
    while (now !== before) {
      await page.waitForTimeout(250);
      [before, now] = [now, await page.evaluate(() => Math.round(scrollY))];
    }
    return now;
  };
  const before = await scrolled();
  await page.locator('.drawing svg [role=slider]').first().focus();
  expect(Math.abs((await scrolled()) - before)).toBeLessThan(3);
});
