import { expect, test } from '@playwright/test';
import { drawProblem } from '#core/practice/problem.ts';
import type { ProblemFamily } from '#core/practice/family.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { lessons } from './pages.ts';

for (const path of lessons) {
  test.describe(`problems of /${path}`, () => {
    test('are marked right, or told which slip gave that number', async ({ page }) => {
      const { families } = (await import(`../../${path}problems.ts`)) as { families: readonly ProblemFamily[] };
      for (const family of families.filter(({ kind }) => kind === 'number')) {
        const problem = drawProblem(family, 7);
        if (problem.kind !== 'number') continue;
        await page.goto(`${path}?practice=${family.id}:7`);
        const practice = page.locator('.practice');
        await practice.scrollIntoViewIfNeeded();
        await expect(practice.locator('.question')).toHaveText(problem.question);
        const answer = page.locator('#practice-answer');
        const mark = practice.getByRole('button', { name: 'Mark it' });

        await mark.click();
        await expect(practice.locator('.verdict')).toContainText('Type an answer first');
        await answer.fill('a lot');
        await mark.click();
        await expect(practice.locator('.verdict')).toContainText('Not ready to mark');

        const mistake = problem.mistakes.find(({ value }) => value > 0);
        if (mistake) {
          await answer.fill(printQuantity(problem.family.asks, mistake.value, { exact: true }));
          await mark.click();
          await expect(practice.locator('.verdict')).toContainText(mistake.because);
        }
        await answer.fill(printQuantity(problem.family.asks, problem.answer, { exact: true }));
        await mark.click();
        await expect(practice.locator('[data-verdict=right]')).toBeVisible();

        await practice.getByRole('button', { name: 'Full working' }).click();
        const working = page.locator(`[data-working="${family.id}"]`);
        await expect(working).toBeVisible();
        await expect(working.locator('.katex').first()).toBeVisible();
      }
    });

    test('stay in the address whatever the figure is set to', async ({ page }) => {
      const { families } = (await import(`../../${path}problems.ts`)) as { families: readonly ProblemFamily[] };
      const named = `${families[0]!.id}:7`;
      const problem = () => new URL(page.url()).searchParams.get('practice');
      await page.goto(`${path}?practice=${named}`);
      await page.locator('.stage-steps a').first().click();
      await expect(page).toHaveURL(/stage=1/);
      expect(problem()).toBe(named);
      await page.keyboard.press('PageDown');
      await expect(page).toHaveURL(/stage=2/);
      expect(problem()).toBe(named);
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'Back to the start' }).click();
      await expect(page).not.toHaveURL(/stage/);
      expect(problem()).toBe(named);
      await page.locator('.practice').getByRole('button', { name: 'Fresh numbers' }).click();
      expect(problem()).not.toBe(named);
    });

    test('say what a link to a problem should look like', async ({ page }) => {
      await page.goto(`${path}?practice=nonsense:0`);
      await page.locator('.practice').scrollIntoViewIfNeeded();
      await expect(page.locator('.practice .notice')).toContainText('nonsense');
    });

    test('remember what was worked, and survive a record that is garbage', async ({ page }) => {
      await page.goto(path);
      const slug = path.split('/')[1]!;
      await page.evaluate((key) => localStorage.setItem(key, '{"x":3'), `ring-and-ruler.progress.${slug}`);
      await page.reload();
      await page.locator('.practice').scrollIntoViewIfNeeded();
      await expect(page.locator('.practice .notice')).toContainText('record of your problems');
      await page.locator('.practice').getByRole('button', { name: 'Full working' }).click();
      await page.reload();
      await page.locator('.practice').scrollIntoViewIfNeeded();
      await expect(page.locator('.practice .score')).toContainText('1 worked');
    });
  });
}
