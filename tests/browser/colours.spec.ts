import { expect, test, type Page } from '@playwright/test';

const ground = (page: Page) => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);

test('light or dark, once chosen, is there before the first paint of the next page', async ({ page }) => {
  await page.goto('');
  const light = await ground(page);
  await page.getByLabel('Colours').selectOption('dark');
  const dark = await ground(page);
  expect(dark).not.toBe(light);
  await page.goto('glossary/', { waitUntil: 'commit' });
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  expect(await ground(page)).toBe(dark);
});

test('a stored choice that is garbage is said and left out', async ({ page }) => {
  await page.goto('');
  await page.evaluate(() => localStorage.setItem('ring-and-ruler.theme', '"plaid"'));
  await page.reload();
  await expect(page.getByRole('status').filter({ hasText: 'choice of colours' })).toContainText(
    'system, light or dark',
  );
  await expect(page.locator('html')).not.toHaveAttribute('data-theme', /./);
});
