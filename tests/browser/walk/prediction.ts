import { expect, type Locator, type Page } from '@playwright/test';

/** Commits to every prediction in turn, on a phone; the figure answers, words say what happened, and both are seen. */
export async function predict(page: Page): Promise<void> {
  const before = page.viewportSize()!;
  await page.setViewportSize({ width: 390, height: 844 });
  const forms = await page.locator('.predict').all();
  expect(forms.length).toBeGreaterThan(0);
  for (const form of forms) {
    const said = await page.locator('.readings').textContent();
    // One that stands under a later heading is opened with it.
    await form.evaluate((within) => within.closest('details')?.setAttribute('open', ''));
    await form.locator('input[type=radio]').first().check();
    await form.getByRole('button', { name: 'That is my guess' }).click();
    await expect(form.locator('.verdict')).toContainText(/That is what happens|The figure says otherwise/);
    await expect(form.locator('[data-holds]')).toHaveCount(1);
    await expect.poll(() => page.locator('.readings').textContent(), 'what the figure says').not.toBe(said);
    await expect.poll(() => outOfSight(form), 'what a phone does not show of the answer').toEqual([]);
    await page.getByRole('button', { name: 'Reset all settings' }).click();
  }
  await page.setViewportSize(before);
}

/** Of a verdict and the figure that it speaks of, what lies out of the window or under something else. */
function outOfSight(form: Locator): Promise<string[]> {
  return form.evaluate((within) => {
    const verdict = within.querySelector('.verdict')!;
    const figure = document.querySelector('.part-figure .drawing')!;
    return [verdict, figure].flatMap((element) => {
      const { left, top, bottom } = element.getBoundingClientRect();
      // A little inside its first and last line, where nothing of another may lie.
      const isSeen = [top + 8, bottom - 8].every((y) => element.contains(document.elementFromPoint(left + 24, y)));
      return isSeen ? [] : [element.className];
    });
  });
}
