import { expect, test, type Locator } from '@playwright/test';

test('a lens stays under the hand while rings come and go behind it', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto('lessons/extension/?extension=20');
  const lens = page.getByLabel(/^Lens: move it/);
  await lens.scrollIntoViewIfNeeded();
  const middle = async () => {
    const grip = (await lens.locator('.grip').boundingBox())!;
    return { x: grip.x + grip.width / 2, y: grip.y + grip.height / 2 };
  };
  const start = await middle();
  const picked = page.locator('input[name^="ring-"]:checked');
  const seen = new Set<number>();
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  // A ring's length takes more pixels than one step: each comes and goes under the hand.
  for (let moved = 3; moved <= 120; moved += 3) {
    await page.mouse.move(start.x - moved, start.y);
    seen.add(await picked.count());
    // Rings are whole millimetres long, which are a few pixels each.
    expect(Math.abs((await middle()).x - (start.x - moved)), `${moved} px`).toBeLessThan(4);
  }
  await page.mouse.up();
  expect([...seen].sort()).toEqual(expect.arrayContaining([0, 1, 2]));
});

test('a lens is turned round by its free end, by hand and by key, and only past the middle', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto('lessons/reversed/?drawn=upright');
  const [upright, turned] = ['the right way round', 'turned round'].map((way) =>
    page.getByRole('button', { name: `Free end of the lens, ${way}` }),
  ) as [Locator, Locator];
  const pull = async (by: number) => {
    const grip = (await upright.locator('.grip').boundingBox())!;
    const [x, y] = [grip.x + grip.width / 2, grip.y + grip.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + by, y, { steps: 8 });
    await page.mouse.up();
  };
  await upright.scrollIntoViewIfNeeded();
  await pull(8);
  await expect(turned).toHaveCount(0);
  await pull(300);
  await expect(turned).toBeVisible();
  await expect(page).toHaveURL(/drawn=turned/);
  await turned.press('Enter');
  await expect(upright).toBeVisible();
});
