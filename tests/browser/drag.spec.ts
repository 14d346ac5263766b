import { expect, test } from '@playwright/test';
import { lessons } from './pages.ts';

for (const path of lessons) {
  for (const size of [
    { width: 1280, height: 720 },
    { width: 390, height: 844 },
  ]) {
    test(`/${path} lets the thing itself be dragged at ${size.width} pixels`, async ({ page }) => {
      await page.setViewportSize(size);
      await page.goto(path);
      const handle = page
        .locator('svg [role=slider]')
        .filter({ has: page.locator('.grip') })
        .first();
      await handle.scrollIntoViewIfNeeded();
      const before = (await handle.getAttribute('aria-valuetext'))!;
      const grip = (await handle.locator('.grip').first().boundingBox())!;
      const [x, y] = [grip.x + grip.width / 2, grip.y + grip.height / 2];
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x - 12, y - 12, { steps: 4 });
      await page.mouse.move(x - 24, y - 24, { steps: 4 });
      await page.mouse.up();
      await expect(handle).not.toHaveAttribute('aria-valuetext', before);
    });
  }
}
