import { expect, test } from '@playwright/test';
import { sharing } from './pages.ts';
import { firstHandle, gripOf } from './walk/figure.ts';

for (const path of sharing) {
  test.describe(`projected, /${path}`, () => {
    test('opens from its button, blanks, and goes back to the lesson', async ({ page }) => {
      await page.goto(path);
      await page.getByRole('button', { name: /Projected view/ }).click();
      const stage = page.locator('.stage');
      await expect(stage).toHaveAttribute('aria-label', /^Projected view, step 1 of/);
      await page.keyboard.press('.');
      await expect(page.locator('.blank')).toBeVisible();
      await page.keyboard.press('.');
      await expect(page.locator('.blank')).toBeHidden();
      await page.keyboard.press('Escape');
      await expect(stage).toBeHidden();
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    });

    test('takes the clicker’s keys after a drag, and leaves arrows to a handle reached by keyboard', async ({
      page,
    }) => {
      await page.goto(path);
      await page.keyboard.press('Alt+KeyP');
      const stage = page.locator('.stage');
      const step = (number: number) =>
        expect(stage).toHaveAttribute('aria-label', new RegExp(`^Projected view, step ${number} of`));
      const { x, y } = await gripOf(firstHandle(stage, page));
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x - 24, y - 24, { steps: 4 });
      await page.mouse.up();
      await page.keyboard.press('PageDown');
      await step(2);
      await page.keyboard.press('ArrowRight');
      await step(3);

      const reached = stage.locator('svg [role=slider]').first();
      await page.keyboard.press('Tab');
      await expect(reached).toBeFocused();
      await page.keyboard.press('ArrowRight');
      await step(3);
      const value = await reached.getAttribute('aria-valuenow');
      await page.keyboard.press('b');
      await expect(page.locator('.blank')).toBeVisible();
      await page.keyboard.press('.');
      await expect(page.locator('.blank')).toBeHidden();
      expect(await reached.getAttribute('aria-valuenow')).toBe(value);
      await page.keyboard.press('PageUp');
      await step(2);
    });

    test('holds the focus while it is open and gives it back to the button', async ({ page }) => {
      await page.goto(path);
      const button = page.getByRole('button', { name: /Projected view/ });
      await button.click();
      await page.keyboard.press('ArrowRight');
      await expect(page).toHaveURL(/stage=2/);
      await page.keyboard.press('Space');
      await expect(page).toHaveURL(/stage=2/);
      for (let press = 0; press < 8; press++) {
        await page.keyboard.press('Tab');
        // Past its last control the focus is the browser's own, which a page sees as its body.
        const outside = await page.evaluate(() => !document.activeElement?.closest('.stage, body:not(:focus-within)'));
        expect(outside).toBe(false);
      }
      await page.keyboard.press('Escape');
      await expect(button).toBeFocused();
    });

    test('opens at a step from its bare number as from its listed address', async ({ page }) => {
      await page.goto(path);
      const links = page.locator('.stage-steps a');
      const last = await links.count();
      const listed = (await links.last().getAttribute('href'))!;
      const caption = page.locator('.stage .caption');
      await page.goto(`${path}${listed}`);
      const said = await caption.innerText();
      await page.goto(`${path}?stage=${last}`);
      await expect(caption).toHaveText(said);
    });
  });
}
