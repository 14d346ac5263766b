import { expect, type Page } from '@playwright/test';

/** Commits to every prediction in turn; the figure answers, and words say what happened. */
export async function predict(page: Page): Promise<void> {
  const forms = await page.locator('.predict').all();
  expect(forms.length).toBeGreaterThan(0);
  for (const form of forms) {
    const before = await page.locator('.readings').textContent();
    // One that stands under a later heading is opened with it.
    await form.evaluate((within) => within.closest('details')?.setAttribute('open', ''));
    await form.locator('input[type=radio]').first().check();
    await form.getByRole('button', { name: 'That is my guess' }).click();
    await expect(form.locator('.verdict')).toContainText(/That is what happens|The figure says otherwise/);
    await expect(form.locator('[data-holds]')).toHaveCount(1);
    await expect.poll(() => page.locator('.readings').textContent(), 'what the figure says').not.toBe(before);
    await page.getByRole('button', { name: 'Reset all settings' }).click();
  }
}
