import { expect, type Locator, type Page } from '@playwright/test';

export const firstHandle = (within: Page | Locator, page: Page): Locator =>
  within
    .locator('svg [role=slider]')
    .filter({ has: page.locator('.grip') })
    .first();

/** The middle of a handle's grip, on the screen. */
export async function gripOf(handle: Locator): Promise<{ x: number; y: number }> {
  const box = (await handle.locator('.grip').first().boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function pull(page: Page, handle: Locator, by: number): Promise<void> {
  const { x, y } = await gripOf(handle);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + by, y + by, { steps: 2 });
  await page.mouse.move(x + 2 * by, y + 2 * by, { steps: 2 });
  await page.mouse.up();
}

type End = 'aria-valuemin' | 'aria-valuemax';
const isAtEnd = (handle: Locator, end: End): Promise<boolean> =>
  handle.evaluate((slider, at) => slider.getAttribute('aria-valuenow') === slider.getAttribute(at), end);

/** The thing itself follows the hand, and the keys where the hand cannot. */
export async function dragFirstHandle(page: Page): Promise<void> {
  const handle = firstHandle(page, page);
  await handle.scrollIntoViewIfNeeded();
  const before = (await handle.getAttribute('aria-valuetext'))!;
  await pull(page, handle, -12);
  // A thing that stands at an end, as a focus ring at its closest, goes one way only.
  const isStuck = before === (await handle.getAttribute('aria-valuetext'));
  if (isStuck && ((await isAtEnd(handle, 'aria-valuemin')) || (await isAtEnd(handle, 'aria-valuemax')))) {
    await pull(page, handle, 12);
  }
  await expect(handle).not.toHaveAttribute('aria-valuetext', before);
  const dragged = (await handle.getAttribute('aria-valuetext'))!;
  await handle.press((await isAtEnd(handle, 'aria-valuemax')) ? 'ArrowDown' : 'ArrowUp');
  await expect(handle).not.toHaveAttribute('aria-valuetext', dragged);
}

/** Where a lesson begins with choices, its numbers are folded: here they lie open. */
export function openFolds(page: Page): Promise<void> {
  return page.evaluate(() =>
    document.querySelectorAll('.controls details').forEach((fold) => ((fold as HTMLDetailsElement).open = true)),
  );
}

/** Slider and field of the first input do the same, and nonsense does nothing. In every lesson, but in no browser, `controls.component.test.ts` tries them. */
export async function moveFirstInput(page: Page): Promise<void> {
  const field = page.locator('.controls input.field').first();
  const name = (await field.getAttribute('name'))!;
  const slider = page.locator(`.controls [data-quantity="${name}"] input[type=range]`);
  const before = await field.inputValue();
  await slider.press('ArrowRight');
  await expect(field).not.toHaveValue(before);
  await expect(slider).toHaveAttribute('aria-valuetext', await field.inputValue());
  const readings = await page.locator('.readings').innerText();
  const notice = page.locator(`[id="notice-${name}"]`);
  await field.fill('12 parsec');
  await field.press('Enter');
  await expect(notice).toContainText(/The setting is unchanged|runs from/);
  await field.press('Escape');
  await expect(notice).toHaveCount(0);
  expect(await page.locator('.readings').innerText()).toBe(readings);
}
