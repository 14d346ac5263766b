import { expect, test, type Page } from '@playwright/test';
import { ofSheets, plain } from './pages.ts';
import { firstHandle, gripOf } from './walk/figure.ts';

const stageOf = (page: Page) => page.locator('.stage');

/** Waits until the view stands there: `2 answer`. */
const at = (page: Page, place: string) => {
  const [step, half] = place.split(' ');
  return expect(stageOf(page)).toHaveAttribute(
    'aria-label',
    new RegExp(`^Projected view, step ${step} of \\d+, ${half}$`),
  );
};

const open = async (page: Page, path: string) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(path);
};

test.describe('the projected view', () => {
  test('opens from the head of the lesson, blanks, and comes back to the step it was left at', async ({ page }) => {
    await open(page, plain);
    const button = page.getByRole('button', { name: 'Project this lesson' });
    await button.click();
    await at(page, '1 question');
    for (const key of ['.', 'b']) {
      await page.keyboard.press(key);
      await expect(page.locator('.blank')).toBeVisible();
      await page.keyboard.press(key);
      await expect(page.locator('.blank')).toBeHidden();
    }
    await page.keyboard.press('PageDown');
    await at(page, '1 answer');
    await page.keyboard.press('Escape');
    await expect(stageOf(page)).toBeHidden();
    await expect(button).toBeFocused();
    await page.keyboard.press('Alt+KeyP');
    await at(page, '1 answer');
  });

  test('is left by the browser’s Back, however many steps were shown, and entered again by Forward', async ({
    page,
  }) => {
    await open(page, ofSheets);
    const entries = () => page.evaluate(() => history.length);
    // A browser counts no more than fifty; that Back leaves at once says the same.
    const after = Math.min(50, (await entries()) + 1);
    const { href } = new URL(page.url());
    await page.getByRole('button', { name: 'Project this lesson' }).click();
    for (const place of ['1 question', '1 answer', '2 question', '2 answer']) {
      if (place !== '1 question') await page.keyboard.press('PageDown');
      await at(page, place);
    }
    expect(await entries()).toBe(after);
    await page.goBack();
    await expect(stageOf(page)).toBeHidden();
    expect(page.url()).toBe(href);
    await page.goForward();
    await at(page, '2 answer');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await expect(stageOf(page)).toBeHidden();
    expect(new URL(page.url()).pathname).toBe(new URL(href).pathname);
    expect(await entries()).toBe(after);
  });

  test('goes on with every key that says so, back the same way, and jumps to a number', async ({ page }) => {
    await open(page, ofSheets);
    await page.keyboard.press('Alt+KeyP');
    for (const [key, place] of [
      ['Space', '1 answer'],
      ['Enter', '2 question'],
      ['PageDown', '2 answer'],
      ['ArrowRight', '3 question'],
      ['PageUp', '2 answer'],
      ['ArrowLeft', '2 question'],
      ['End', '6 answer'],
      ['Home', '1 question'],
    ] as const) {
      await page.keyboard.press(key);
      if (key !== 'End') await at(page, place);
    }
    await page.keyboard.type('4');
    await expect(stageOf(page).locator('.typed')).toHaveText(/step 4/);
    await page.keyboard.press('Enter');
    await at(page, '4 question');
    await page.keyboard.type('99');
    await page.keyboard.press('Enter');
    const last = await page.locator('.stage-steps > li').count();
    await at(page, `${last} question`);
  });

  test('marks words that no longer hold, and the next key puts the figure back', async ({ page }) => {
    await open(page, plain);
    await page.keyboard.press('Alt+KeyP');
    await page.keyboard.press('PageDown');
    await at(page, '1 answer');
    const said = await stageOf(page).locator('.caption').innerText();
    await drag(page);
    await expect(stageOf(page).locator('.caption')).toContainText('Moved; the next key puts it back.');
    await page.keyboard.press('PageDown');
    await at(page, '2 question');
    await page.keyboard.press('PageUp');
    await at(page, '1 answer');
    await expect(stageOf(page).locator('.caption')).toHaveText(said);
  });

  test('takes the clicker’s keys after a drag and in the middle of one, and leaves arrows to a handle reached by keyboard', async ({
    page,
  }) => {
    await open(page, ofSheets);
    await page.keyboard.press('Alt+KeyP');
    await drag(page);
    await page.keyboard.press('PageDown');
    await at(page, '1 answer');
    await page.mouse.down();
    await page.keyboard.press('PageDown');
    await page.mouse.up();
    await at(page, '2 question');

    const reached = stageOf(page).locator('svg [role=slider]').first();
    await page.keyboard.press('Tab');
    await expect(reached).toBeFocused();
    await page.keyboard.press('ArrowRight');
    await at(page, '2 question');
    await page.keyboard.press('Home');
    await at(page, '1 question');
  });

  test('holds the focus while it is open', async ({ page }) => {
    await open(page, plain);
    await page.keyboard.press('Alt+KeyP');
    for (let press = 0; press < 8; press++) {
      await page.keyboard.press('Tab');
      // Past its last control the focus is the browser's own, which a page sees as its body.
      const outside = await page.evaluate(() => !document.activeElement?.closest('.stage, body:not(:focus-within)'));
      expect(outside).toBe(false);
    }
  });

  test('opens at a question and at an answer from their bare addresses as from the full ones', async ({ page }) => {
    await open(page, ofSheets);
    const item = page.locator('.stage-steps > li').last();
    const number = await page.locator('.stage-steps > li').count();
    const caption = page.locator('.stage .caption');
    await page.goto(`${ofSheets}${await item.getAttribute('data-stage-answered')}`);
    await expect(caption).not.toBeEmpty();
    const said = await caption.innerText();
    await page.goto(`${ofSheets}?stage=${number}&answered`);
    await expect(caption).toHaveText(said);
    await page.goto(`${ofSheets}?stage=${number}`);
    await at(page, `${number} question`);
    await expect(caption).toBeEmpty();
  });

  test('shows the change happening, unless the reader wants no motion', async ({ page }) => {
    await open(page, plain);
    await page.emulateMedia({ reducedMotion: 'no-preference' });
    await page.keyboard.press('Alt+KeyP');
    await page.keyboard.type('2');
    await page.keyboard.press('Enter');
    await at(page, '2 question');
    const before = await stageOf(page).locator('.figure').innerHTML();
    await page.keyboard.press('PageDown');
    await at(page, '2 answer');
    await expect(stageOf(page).locator('.caption')).not.toBeEmpty();
    expect(await stageOf(page).locator('.figure').innerHTML()).not.toBe(before);
  });
});

async function drag(page: Page) {
  const { x, y } = await gripOf(firstHandle(stageOf(page), page));
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 24, y - 24, { steps: 4 });
  await page.mouse.up();
}
