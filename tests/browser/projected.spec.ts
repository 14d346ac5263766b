import { expect, test } from '@playwright/test';
import { lessons } from './pages.ts';

for (const path of lessons) {
  test.describe(`projected, /${path}`, () => {
    test('plays all steps with a clicker, blanks, and goes back to the lesson', async ({ page }) => {
      await page.goto(path);
      const steps = await page.locator('.stage-steps > li').count();
      expect(steps).toBeGreaterThan(3);
      await page.keyboard.press('Alt+KeyP');
      const stage = page.locator('.stage');
      for (let step = 1; step <= steps; step++) {
        await expect(stage).toHaveAttribute('aria-label', `Projected view, step ${step} of ${steps}`);
        await expect(page).toHaveURL(new RegExp(`stage=${step}(&|$)`));
        await expect(stage.locator('.question')).not.toBeEmpty();
        expect(await stage.locator('.caption').innerText()).not.toMatch(/[{}]|NaN|undefined/);
        await page.keyboard.press('PageDown');
      }
      await expect(stage).toHaveAttribute('aria-label', `Projected view, step ${steps} of ${steps}`);
      await page.keyboard.press('PageUp');
      await expect(stage).toHaveAttribute('aria-label', `Projected view, step ${steps - 1} of ${steps}`);
      await page.keyboard.press('.');
      await expect(page.locator('.blank')).toBeVisible();
      await page.keyboard.press('.');
      await expect(page.locator('.blank')).toBeHidden();
      await page.keyboard.press('Escape');
      await expect(stage).toBeHidden();
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
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

    test('opens at a step from its address and shows nothing smaller than 1/25 of the height', async ({ page }) => {
      await page.goto(path);
      const links = await page
        .locator('.stage-steps a')
        .evaluateAll((anchors) => anchors.map((anchor) => anchor.getAttribute('href')!));
      for (const link of links) {
        await page.goto(`${path}${link}`);
        await expect(page.locator('.stage')).toBeVisible();
        await page.waitForTimeout(150);
        const small = await page.locator('.stage').evaluate((root) =>
          [...root.querySelectorAll<HTMLElement>('h2, p, text')]
            .filter((element) => element.textContent.trim() !== '' && !element.closest('.visually-hidden'))
            .filter((element) => parseFloat(getComputedStyle(element).fontSize) < window.innerHeight / 25)
            .map((element) => element.textContent),
        );
        expect(small, link).toEqual([]);
      }
    });

    test('keeps every text of the figure inside the sheet', async ({ page }) => {
      await page.goto(path);
      const links = await page
        .locator('.stage-steps a')
        .evaluateAll((anchors) => anchors.map((anchor) => anchor.getAttribute('href')!));
      for (const link of links) {
        await page.goto(`${path}${link}`);
        await page.waitForTimeout(200);
        const outside = await page.locator('.stage :is(.sheet, .picture-sheet)').evaluate((sheet) => {
          const frame = sheet.getBoundingClientRect();
          return [...sheet.querySelectorAll('text')]
            .filter((text) => {
              const box = text.getBoundingClientRect();
              return (
                box.width > 0 &&
                (box.left < frame.left - 2 ||
                  box.right > frame.right + 2 ||
                  box.top < frame.top - 2 ||
                  box.bottom > frame.bottom + 2)
              );
            })
            .map((text) => text.textContent);
        });
        expect(outside, link).toEqual([]);
      }
    });
  });
}
