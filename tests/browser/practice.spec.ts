import { expect, test } from '@playwright/test';
import { ofSheets, plain } from './pages.ts';
import { comeToProblems, familiesOf } from './walk/problems.ts';

test.describe('problems of a lesson', () => {
  test('stay in the address whatever the figure is set to', async ({ page }) => {
    const [family] = await familiesOf(plain);
    const named = `${family!.id}:7`;
    const problem = () => new URL(page.url()).searchParams.get('practice');
    await page.goto(`${plain}?practice=${named}`);
    // The problem that the address names takes the height that it needs, and moves what stands below it: a click would miss.
    await page.locator('.lesson[data-settled]').waitFor();
    await page.locator('.part-check [data-island]:not([inert])').waitFor({ state: 'attached' });
    // The instructor's part is folded until it is asked for; by keyboard, for parts that come into view take their height then, and a click may miss.
    await page.locator('.part-instructor summary').first().press('Enter');
    await page.locator('.stage-steps a').first().click();
    await expect(page).toHaveURL(/stage=[a-z-]+/);
    expect(problem()).toBe(named);
    await page.keyboard.press('PageDown');
    await expect(page).toHaveURL(/stage=[a-z-]+&answered/);
    expect(problem()).toBe(named);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Reset all settings' }).click();
    await expect(page).not.toHaveURL(/stage/);
    expect(problem()).toBe(named);
    await page.locator('.practice').getByRole('button', { name: 'New numbers' }).click();
    expect(problem()).not.toBe(named);
  });

  test('say what a link to a problem should look like', async ({ page }) => {
    await page.goto(`${ofSheets}?practice=nonsense:0`);
    await comeToProblems(page);
    await expect(page.locator('.practice .notice')).toContainText('nonsense');
  });

  test('remember what was worked, and survive a record that is garbage', async ({ page }) => {
    await page.goto(plain);
    const slug = plain.split('/')[1]!;
    await page.evaluate((key) => localStorage.setItem(key, '{"x":3'), `ring-and-ruler.progress.${slug}`);
    await page.reload();
    await comeToProblems(page);
    await expect(page.locator('.practice .notice')).toContainText('record of your problems');
    await page.locator('.practice').getByRole('button', { name: 'Show the working' }).click();
    const working = page.locator('[data-working]:not([hidden])');
    // Right below what asked for it, and in sight.
    await expect(working.getByRole('heading')).toBeInViewport();
    const [asked, opened, printing] = await Promise.all(
      [page.locator('.practice .actions'), working, page.locator('.print-problems')].map((one) => one.boundingBox()),
    );
    expect(opened!.y - (asked!.y + asked!.height)).toBeLessThan(24);
    expect(printing!.y).toBeGreaterThan(opened!.y + opened!.height);
    await page.reload();
    await comeToProblems(page);
    await expect(page.locator('.practice .score')).toContainText('1 tried');
  });
});
