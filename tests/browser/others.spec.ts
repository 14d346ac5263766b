import { expect, test } from '@playwright/test';
import { others } from './pages.ts';
import { coloursAt, expectAccessible, thinOut } from './walk/axe.ts';
import { expectNarrow } from './walk/formulas.ts';
import { expectPolicy } from './walk/policy.ts';
import { watched } from './walk/watch.ts';

for (const [index, path] of others.entries()) {
  test(`/${path} is accessible, keeps to its policy and asks no other host`, async ({ page, baseURL }) => {
    const faults = watched(page, baseURL!);
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expectPolicy(page, baseURL!);
    await page.mouse.wheel(0, 20000);
    await expectNarrow(page);
    await page.setViewportSize({ width: 1280, height: 720 });
    await thinOut(page);
    await expectAccessible(page, coloursAt(index));
    expect(faults).toEqual([]);
  });
}
