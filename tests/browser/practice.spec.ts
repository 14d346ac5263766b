import { expect, test } from '@playwright/test';
import { sharing } from './pages.ts';
import { comeToProblems, familiesOf } from './walk/problems.ts';

for (const path of sharing) {
  test.describe(`problems of /${path}`, () => {
    test('stay in the address whatever the figure is set to', async ({ page }) => {
      const [family] = await familiesOf(path);
      const named = `${family!.id}:7`;
      const problem = () => new URL(page.url()).searchParams.get('practice');
      await page.goto(`${path}?practice=${named}`);
      // The instructor's part is folded until it is asked for.
      await page.locator('.part-instructor summary').first().click();
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
      await page.goto(`${path}?practice=nonsense:0`);
      await comeToProblems(page);
      await expect(page.locator('.practice .notice')).toContainText('nonsense');
    });

    test('remember what was worked, and survive a record that is garbage', async ({ page }) => {
      await page.goto(path);
      const slug = path.split('/')[1]!;
      await page.evaluate((key) => localStorage.setItem(key, '{"x":3'), `ring-and-ruler.progress.${slug}`);
      await page.reload();
      await comeToProblems(page);
      await expect(page.locator('.practice .notice')).toContainText('record of your problems');
      await page.locator('.practice').getByRole('button', { name: 'Show the working' }).click();
      await page.reload();
      await comeToProblems(page);
      await expect(page.locator('.practice .score')).toContainText('1 tried');
    });
  });
}
