import { expect, test, type Page } from '@playwright/test';
import { lessons } from './pages.ts';

/** The readings of a lesson by name, base units. */
async function readings(page: Page): Promise<Record<string, string | undefined>> {
  return page
    .locator('output[name]')
    .evaluateAll((outputs) =>
      Object.fromEntries(
        outputs.map((output) => [output.getAttribute('name'), output.getAttribute('data-value') ?? output.textContent]),
      ),
    );
}

const fields = (page: Page) => page.locator('.controls input.field');

for (const path of lessons) {
  test.describe(`/${path}`, () => {
    test('labels every input and gives it a range and a step', async ({ page }) => {
      await page.goto(path);
      for (const field of await fields(page).all()) {
        const id = await field.getAttribute('id');
        await expect(page.locator(`label[for="${id}"]`)).toBeVisible();
        for (const attribute of ['name', 'min', 'max', 'step']) await expect(field).toHaveAttribute(attribute, /./);
      }
    });

    test('moves to the ends of every slider without an empty or broken number anywhere', async ({ page }) => {
      const errors: string[] = [];
      page.on('pageerror', ({ message }) => errors.push(message));
      await page.goto(path);
      for (const slider of await page.locator('.controls input[type=range]').all()) {
        for (const key of ['Home', 'End']) {
          await slider.focus();
          await page.keyboard.press(key);
          // In the page: thousands of characters a key would take longer on their way than to look through.
          const faults = await page.evaluate(() => {
            const broken = (text: string, pattern: RegExp) => pattern.exec(text)?.[0];
            const empty = [...document.querySelectorAll('output[name]')].filter((output) => output.textContent === '');
            return [
              broken(document.querySelector('main')!.textContent, /.{0,20}(?:NaN|undefined|\[object)/),
              ...[...document.querySelectorAll('.sheet svg')].map((sheet) =>
                broken(sheet.innerHTML, /.{0,20}(?:NaN|undefined|Infinity(?! ))/),
              ),
              ...empty.map((output) => `${output.getAttribute('name')} is empty`),
            ].filter(Boolean);
          });
          expect(faults).toEqual([]);
        }
        await page.getByRole('button', { name: 'Back to the start' }).click();
      }
      expect(errors).toEqual([]);
    });

    test('refuses nonsense in every field with a notice, and changes nothing', async ({ page }) => {
      await page.goto(path);
      const before = await readings(page);
      for (const field of await fields(page).all()) {
        const name = (await field.getAttribute('name'))!;
        for (const nonsense of ['abc', '-1e9', '1e999', '12 parsec']) {
          await field.fill(nonsense);
          await field.press('Enter');
          await expect(page.locator(`[id="notice-${name}"]`)).toContainText(/Nothing was changed|runs from/);
        }
        await field.press('Escape');
        await expect(page.locator(`[id="notice-${name}"]`)).toHaveCount(0);
        await expect(field).not.toHaveAttribute('aria-invalid');
        expect(await readings(page)).toEqual(before);
      }
    });

    test('leaves no refused text behind when the figure is set from elsewhere', async ({ page }) => {
      await page.goto(path);
      const field = fields(page).first();
      const before = await field.inputValue();
      await field.fill('a lot');
      await field.press('Enter');
      await expect(field).toHaveAttribute('aria-invalid', 'true');
      await expect(field).toHaveValue('a lot');
      await page.getByRole('button', { name: 'Back to the start' }).click();
      await expect(field).toHaveValue(before);
      await expect(field).not.toHaveAttribute('aria-invalid');
      // Emptied and typed anew, key by key, the text is the reader's until it is given.
      await field.fill('');
      await field.pressSequentially('a lo');
      await expect(field).toHaveValue('a lo');
    });

    test('moves a value at once when its slider leaves an end', async ({ page }) => {
      await page.goto(path);
      for (const input of await page.locator('.controls .input').all()) {
        const [slider, field] = [input.locator('input[type=range]'), input.locator('input.field')];
        for (const [key, back] of [
          ['Home', 'ArrowRight'],
          ['End', 'ArrowLeft'],
        ] as const) {
          await slider.focus();
          await page.keyboard.press(key);
          const there = await field.inputValue();
          await page.keyboard.press(back);
          await expect(field).not.toHaveValue(there);
        }
        await page.getByRole('button', { name: 'Back to the start' }).click();
      }
    });

    test('names what is wrong in a link and keeps the rest', async ({ page }) => {
      const name = await test.step('find an input', async () => {
        await page.goto(path);
        return (await fields(page).first().getAttribute('name'))!;
      });
      const before = await readings(page);
      for (const link of [`${name}=garbage`, 'sheet=garbage', 'stage=99', 'stage=abc']) {
        await page.goto(`${path}?${link}`);
        await expect(page.locator('.notices')).toContainText(`as “${link.split('=')[1]}”`);
        expect(await readings(page)).toEqual(before);
      }
      await page.getByRole('button', { name: 'Back to the start' }).click();
      await expect(page.locator('.notices')).toHaveCount(0);
    });

    test('shows the same state to whoever opens its address', async ({ page, context }) => {
      await page.goto(path);
      for (const slider of await page.locator('.controls input[type=range]').all()) {
        await slider.focus();
        await page.keyboard.press('ArrowRight');
        await page.keyboard.press('ArrowRight');
      }
      const here = await readings(page);
      await expect.poll(() => new URL(page.url()).search).not.toBe('');
      await page.waitForTimeout(400);
      const other = await context.newPage();
      await other.goto(page.url());
      await expect.poll(() => readings(other)).toEqual(here);
    });

    test('keeps formulas and prose in step with the readings, in both halves of the formula', async ({ page }) => {
      await page.goto(path);
      const slider = page.locator('.controls input[type=range]').first();
      const name = (await slider.locator('xpath=ancestor::*[@data-quantity][1]').getAttribute('data-quantity'))!;
      await slider.focus();
      for (let press = 0; press < 5; press++) await page.keyboard.press('ArrowRight');
      const field = await page.locator(`input[name="${name}"]`).inputValue();
      const plain = (text: string) => text.replace(/[\s\u2009\u202f]|f\/|×/g, '');
      const slots = page.locator(`.part-formula [data-number="${name}"]:not([data-printed])`);
      const texts = () => slots.evaluateAll((elements) => elements.map((element) => element.textContent));
      // What nobody sees while the hand moves follows when it rests.
      const all = await slots.count();
      await expect.poll(async () => (await texts()).map(plain)).toEqual(Array<string>(all).fill(plain(field)));
      const kinds = await slots.evaluateAll(
        (elements) => new Set(elements.map((element) => element.namespaceURI)).size,
      );
      if (all > 0) expect(kinds, 'HTML and MathML').toBe(2);
    });

    test('keeps the whole page still while values change', async ({ page }) => {
      await page.goto(path);
      await page.evaluate(() => document.fonts.ready);
      await page.waitForTimeout(300);
      await page.evaluate(() => {
        const shifts: number[] = [];
        Object.assign(window, { shifts });
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries() as (PerformanceEntry & { value: number })[]) shifts.push(entry.value);
        }).observe({ type: 'layout-shift', buffered: false });
      });
      const slider = page.locator('.controls input[type=range]').first();
      await slider.scrollIntoViewIfNeeded();
      const box = (await slider.boundingBox())!;
      await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
      await page.mouse.down();
      for (let part = 0; part <= 20; part++)
        await page.mouse.move(box.x + (box.width * part) / 20, box.y + box.height / 2);
      await page.mouse.up();
      await page.waitForTimeout(500);
      const total = await page.evaluate(() =>
        (window as unknown as { shifts: number[] }).shifts.reduce((sum, value) => sum + value, 0),
      );
      expect(total).toBeLessThan(0.01);
    });

    test('lights a quantity in figure, formula and slider together', async ({ page }) => {
      await page.goto(path);
      const letter = page.locator('.part-formula .katex [data-quantity]').first();
      const name = (await letter.getAttribute('data-quantity'))!;
      const all = page.locator(`[data-quantity="${name}"]`);
      await letter.scrollIntoViewIfNeeded();
      await expect
        .poll(async () => {
          // Parts that come into view take up their real height, and what was scrolled to moves once more.
          const { x, y, width, height } = (await letter.boundingBox())!;
          await page.mouse.move(x + width / 2, y + height / 2);
          return all.evaluateAll((elements) => elements.every((element) => element.classList.contains('lit')));
        })
        .toBe(true);
      expect(await all.count()).toBeGreaterThan(1);
    });
  });
}
