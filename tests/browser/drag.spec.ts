import { expect, test, type Locator, type Page } from '@playwright/test';
import { plain } from './pages.ts';
import { firstHandle, gripOf } from './walk/figure.ts';
import { drawn } from './walk/watch.ts';

/** Takes hold of a grip and tells where that is after each of these movements, in pixels from where it was. */
async function following(page: Page, handle: Locator, movements: readonly number[]): Promise<number[]> {
  await handle.scrollIntoViewIfNeeded();
  const start = await gripOf(handle);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  const found: number[] = [];
  for (const movement of movements) {
    await page.mouse.move(start.x + movement, start.y, { steps: 4 });
    await drawn(page);
    found.push((await gripOf(handle)).x - start.x);
  }
  await page.mouse.up();
  return found;
}

for (const [what, address, label, movements] of [
  ['the edge of the subject', 'lessons/life-size/', /^Subject/, [-20, -30, 20, 60]],
  ['the subject before a lens', 'lessons/extension/', /^Subject/, [12, -20, -60]],
  ['the subject beyond life size', 'lessons/extension/?extension=60', /^Subject/, [-30, -90, 4]],
  ['the deadline of a stack', 'lessons/stacking/?sheet=time', /^Deadline/, [-40, -90, 5]],
  ['a limit of depth, off the sheet and back', 'lessons/depth-of-field/', /^far/, [-60, -165, -40, 20]],
] as const) {
  test(`${what} stays under the hand`, async ({ page }) => {
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.goto(address);
    const handle = page
      .locator('svg [role=slider]')
      .filter({ has: page.locator('.grip') })
      .and(page.getByLabel(label));
    const found = await following(page, handle, movements);
    // A limit jumps from mark to mark of the f-number, and stops at the edge of the sheet; a deadline has two figures.
    const marks = address.includes('depth') ? 14 : address.includes('time') ? 8 : 1;
    for (const [index, movement] of movements.entries()) {
      if (movement > -150) expect(Math.abs(found[index]! - movement), `${movement} px`).toBeLessThan(marks);
    }
  });
}

test('a far limit that has gone off the sheet, or to infinity, can be taken back in', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto('lessons/depth-of-field/?magnification=0.03&focal-length=20&f-number=32');
  const far = page.getByLabel(/^far .*move this limit/);
  await far.focus();
  await page.keyboard.press('End');
  await expect(far).toBeFocused();
  await expect(far).toHaveAttribute('aria-valuetext', 'f/64');
  await page.keyboard.press('Home');
  await expect(far).toHaveAttribute('aria-valuetext', 'f/0.95');
});

test(`/${plain} lets a finger drag the thing itself`, async ({ browser, baseURL }) => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  const page = await context.newPage();
  await page.goto(new URL(plain, baseURL).href);
  const handle = firstHandle(page, page);
  await handle.scrollIntoViewIfNeeded();
  const { x, y } = await gripOf(handle);
  await page.evaluate(() => addEventListener('pointercancel', () => document.body.setAttribute('data-cancelled', '')));
  const session = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', moved: number) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x: x - moved, y: y - moved / 2 }],
    });
  await touch('touchStart', 0);
  const seen = new Set<string | null>();
  for (let moved = 4; moved <= 48; moved += 4) {
    await touch('touchMove', moved);
    await page.waitForTimeout(20);
    if (moved % 16 === 0) seen.add(await handle.getAttribute('aria-valuetext'));
  }
  await touch('touchEnd', 48);
  // Told of a scroll instead, the page would have cancelled the drag after a few pixels.
  await expect(page.locator('body')).not.toHaveAttribute('data-cancelled');
  expect(seen.size).toBeGreaterThan(1);
  await context.close();
});
