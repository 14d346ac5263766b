import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { lessons, pages, sharing } from './pages.ts';

// The page of sources has thousands of cells, and axe looks at each.
test.setTimeout(400_000);

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in ${colorScheme} colours`, () => {
    test.use({ colorScheme });

    for (const path of pages) {
      test(`axe finds nothing to report on /${path}`, async ({ page }) => {
        await page.goto(path);
        const axe = new AxeBuilder({ page });
        // What is named and in which order does not change with the colours.
        if (colorScheme === 'dark') axe.withRules(['color-contrast', 'link-in-text-block']);
        const { violations } = await axe.analyze();
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join('; ')}`)).toEqual([]);
      });
    }

    test('axe finds nothing to report on a projected step', async ({ page }) => {
      await page.goto(`${lessons[0]}?stage=1`);
      await expect(page.locator('.stage')).toBeVisible();
      const { violations } = await new AxeBuilder({ page }).include('.stage').analyze();
      expect(violations.map(({ id }) => id)).toEqual([]);
    });
  });
}

for (const path of lessons) {
  test(`/${path} is walked through by keyboard: slider, field and handle move the readings`, async ({ page }) => {
    await page.goto(path);
    const field = page.locator('.controls input.field').first();
    const name = (await field.getAttribute('name'))!;
    const slider = page.locator(`.controls [data-quantity="${name}"] input[type=range]`);
    const before = await field.inputValue();
    await slider.focus();
    await page.keyboard.press('ArrowRight');
    await expect(field).not.toHaveValue(before);
    await expect(slider).toHaveAttribute('aria-valuetext', await field.inputValue());

    const handle = page.locator('svg [role=slider]').first();
    const valueText = (await handle.getAttribute('aria-valuetext'))!;
    await handle.focus();
    await page.keyboard.press('ArrowUp');
    await expect(handle).not.toHaveAttribute('aria-valuetext', valueText);
  });

  test(`/${path} fits a narrow phone without sideways scrolling`, async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(path);
    await expect(page.locator('.readings output').first()).toBeVisible();
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBeLessThanOrEqual(0);
  });
}

for (const path of sharing) {
  test(`nothing that has the focus on /${path} lies under the figure of a narrow phone, walked through backwards`, async ({
    page,
  }) => {
    await page.setViewportSize({ width: 360, height: 640 });
    await page.goto(path);
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

  test(`a handle of /${path} takes the focus on a narrow phone without moving the text below the figure`, async ({
    page,
  }) => {
    await page.setViewportSize({ width: 360, height: 640 });
    await page.goto(path);
    await expect(page.locator('.readings output').first()).toBeVisible();
    await page.locator('#limits').scrollIntoViewIfNeeded();
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
}
