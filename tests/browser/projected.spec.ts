import { expect, test, type Page } from '@playwright/test';
import { lessons } from './pages.ts';

/** The addresses of a lesson's steps, as it lists them. */
async function stepsOf(page: Page, path: string): Promise<string[]> {
  await page.goto(path);
  return page.locator('.stage-steps a').evaluateAll((anchors) => anchors.map((anchor) => anchor.getAttribute('href')!));
}

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

    test('takes the clicker’s keys after a drag, and leaves arrows to a handle reached by keyboard', async ({
      page,
    }) => {
      await page.goto(path);
      await page.keyboard.press('Alt+KeyP');
      const stage = page.locator('.stage');
      const step = (number: number) =>
        expect(stage).toHaveAttribute('aria-label', new RegExp(`^Projected view, step ${number} of`));
      const handle = stage
        .locator('svg [role=slider]')
        .filter({ has: page.locator('.grip') })
        .first();
      const grip = (await handle.locator('.grip').first().boundingBox())!;
      await page.mouse.move(grip.x + grip.width / 2, grip.y + grip.height / 2);
      await page.mouse.down();
      await page.mouse.move(grip.x - 12, grip.y - 12, { steps: 4 });
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

    test('leaves the figure almost half of the height of a phone', async ({ page }) => {
      await page.setViewportSize({ width: 390, height: 844 });
      const links = await stepsOf(page, path);
      for (const link of links) {
        await page.goto(`${path}${link}`);
        const [figure, caption, question, buttons] = await Promise.all(
          ['.figure', '.caption', '.question', 'nav'].map((part) => page.locator(`.stage > ${part}`).boundingBox()),
        );
        expect(figure!.height, link).toBeGreaterThan(0.45 * 844);
        expect(caption!.y + caption!.height, link).toBeLessThanOrEqual(844);
        expect(buttons!.y, link).toBeGreaterThanOrEqual(question!.y + question!.height);
        expect(figure!.y, link).toBeGreaterThanOrEqual(buttons!.y + buttons!.height);
      }
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
      const links = await stepsOf(page, path);
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
      const links = await stepsOf(page, path);
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
