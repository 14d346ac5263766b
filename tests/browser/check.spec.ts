import { expect, test } from '@playwright/test';
import { expectNarrow } from './walk/formulas.ts';
import { watched } from './walk/watch.ts';

test('an answer is checked, its working shown, what was read corrected, and its address brings it back', async ({
  page,
  baseURL,
}) => {
  const faults = watched(page, baseURL!);
  await page.goto('check/');
  await page.getByLabel('What you have').fill('50 mm, 36 mm ring, f/8');
  await page.getByLabel('What you found').fill('m 1.39, room 119 mm, depth');
  await page.getByRole('button', { name: 'Check', exact: true }).click();
  const answers = page.locator('.answers > li');
  await expect(answers).toHaveCount(3);
  await expect(page.getByRole('heading', { name: '3 answers' })).toBeFocused();
  await expect(answers.nth(0)).toContainText('A known slip. That is the focal length divided by the rings.');
  await expect(answers.nth(1)).toContainText('Right.');
  await expect(answers.nth(2).locator('output')).toHaveText('1.06\u202fmm');

  await answers.nth(0).getByText('The whole working').click();
  await expect(answers.nth(0).locator('.formula-lines .katex-html').last()).toContainText('0.72');
  await expect(answers.nth(0).getByRole('link', { name: 'What does each extension ring give?' })).toBeVisible();
  await page.setViewportSize({ width: 390, height: 844 });
  await expectNarrow(page);

  // What was read is corrected: another focal length's number is left out, and nothing can be told any more.
  await page.getByLabel('“50 mm” is the').selectOption('left-out');
  await expect(answers.nth(0)).toContainText('Cannot be told.');
  await page.getByLabel('“50 mm” is the').selectOption('focal-length');
  await expect(answers.nth(0)).toContainText('A known slip.');

  await page.goto(page.url());
  await expect(answers).toHaveCount(3);
  await expect(page.getByLabel('What you found')).toHaveValue('m 1.39, room 119 mm, depth');

  await page.getByLabel('What you have').fill('bananas \u0000 <b>1e999</b>');
  await page.getByLabel('What you found').fill('');
  await page.getByRole('button', { name: 'Check', exact: true }).click();
  await expect(page.locator('section.outcome')).toContainText('There is nothing to check yet.');
  await page.getByLabel('What you have').fill('');
  await page.getByRole('button', { name: 'Check', exact: true }).click();
  await expect(page.getByRole('status').first()).toContainText('Write what you have');
  expect(faults).toEqual([]);
});
