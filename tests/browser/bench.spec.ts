import { expect, test, type Page } from '@playwright/test';
import { ofSheets, plain } from './pages.ts';

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

test.describe('a lesson', () => {
  test('leaves no refused text behind when the figure is set from elsewhere', async ({ page }) => {
    await page.goto(plain);
    const field = fields(page).first();
    const before = await field.inputValue();
    await field.fill('a lot');
    await field.press('Enter');
    await expect(field).toHaveAttribute('aria-invalid', 'true');
    await expect(field).toHaveValue('a lot');
    await page.getByRole('button', { name: 'Reset all settings' }).click();
    await expect(field).toHaveValue(before);
    await expect(field).not.toHaveAttribute('aria-invalid');
    // Emptied and typed anew, key by key, the text is the reader's until it is given.
    await field.fill('');
    await field.pressSequentially('a lo');
    await expect(field).toHaveValue('a lo');
  });

  test('names what is wrong in a link and keeps the rest', async ({ page }) => {
    const name = await test.step('find an input', async () => {
      await page.goto(ofSheets);
      return (await fields(page).first().getAttribute('name'))!;
    });
    const before = await readings(page);
    // A page takes long to open: what is wrong in two ways stands in one link.
    for (const link of [`${name}=garbage&stage=99`, 'sheet=rubbish&stage=abc']) {
      await page.goto(`${ofSheets}?${link}`);
      for (const value of new URLSearchParams(link).values())
        await expect(page.locator('.bench').first()).toContainText(`“${value}”`);
      expect(await readings(page)).toEqual(before);
    }
    await page.getByRole('button', { name: 'Reset all settings' }).click();
    await expect(page.locator('.notices')).toHaveCount(0);
  });

  test('shows the same state to whoever opens its address', async ({ page, context }) => {
    await page.goto(ofSheets);
    for (const slider of await page.locator('.controls input[type=range]').all()) {
      await slider.focus();
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('ArrowRight');
    }
    const here = await readings(page);
    // The address follows when the hand has rested.
    await expect.poll(() => new URL(page.url()).search).not.toBe('');
    await page.waitForTimeout(400);
    const other = await context.newPage();
    await other.goto(page.url());
    await expect.poll(() => readings(other)).toEqual(here);
  });

  test('keeps formulas and prose in step with the readings, in both halves of the formula', async ({ page }) => {
    await page.goto(plain);
    const slider = page.locator('.controls input[type=range]').first();
    const name = (await slider.locator('xpath=ancestor::*[@data-quantity][1]').getAttribute('data-quantity'))!;
    await slider.focus();
    for (let press = 0; press < 5; press++) await page.keyboard.press('ArrowRight');
    const field = await page.locator(`input[name="${name}"]`).inputValue();
    const bare = (text: string) => text.replace(/[\s\u2009\u202f]|f\/|×/g, '');
    const slots = page.locator(`.part-formula [data-number="${name}"]:not([data-printed])`);
    const texts = () => slots.evaluateAll((elements) => elements.map((element) => element.textContent));
    // What nobody sees while the hand moves follows when it rests.
    const all = await slots.count();
    await expect.poll(async () => (await texts()).map(bare)).toEqual(Array<string>(all).fill(bare(field)));
    const kinds = await slots.evaluateAll((elements) => new Set(elements.map((element) => element.namespaceURI)).size);
    expect(kinds, 'HTML and MathML').toBe(2);
  });

  test('lights a quantity in figure, formula and slider together', async ({ page }) => {
    await page.goto(plain);
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
