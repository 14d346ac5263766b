import { expect, test } from '@playwright/test';
import { expectNarrow } from './walk/formulas.ts';
import { watched } from './walk/watch.ts';

test('a slash opens the search, which finds by words and by numbers, and leads there', async ({ page, baseURL }) => {
  const faults = watched(page, baseURL!);
  await page.goto('course/');
  await page.keyboard.press('/');
  const field = page.getByRole('searchbox');
  await expect(field).toBeFocused();
  const results = page.locator('#search-results > li');
  await field.fill('NA');
  await expect(results.filter({ hasText: 'numerical aperture' }).first()).toBeVisible();
  await field.fill('0,5x');
  await expect(results.filter({ hasText: 'magnification' }).first()).toBeVisible();
  await field.fill('zzzzqqq');
  await expect(page.getByRole('status').first()).toContainText('Nothing was found');
  await field.fill('50 mm on 36 mm of rings at f/8');
  await expect(page.getByRole('link', { name: /check an answer, with these numbers/ })).toBeVisible();
  await page.setViewportSize({ width: 390, height: 844 });
  await expectNarrow(page);
  await page.goto(page.url());
  await expect(field).toHaveValue('50 mm on 36 mm of rings at f/8');

  await page.getByRole('link', { name: /check an answer, with these numbers/ }).click();
  await expect(page.getByLabel('What you have')).toHaveValue('50 mm on 36 mm of rings at f/8');
  await expect(page.locator('section.outcome')).toContainText('There is nothing to check yet.');
  // In a field a slash is a slash.
  await page.getByLabel('What you found').fill('');
  await page.getByLabel('What you found').press('/');
  await expect(page.getByLabel('What you found')).toHaveValue('/');
  expect(faults).toEqual([]);
});
