import { expect, test, type Page } from '@playwright/test';
import { readPdf, uprightStrokes } from '../support/pdf.ts';
import { ofSheets, plain } from './pages.ts';
import { expectLearnersSheet } from './walk/paper-sheet.ts';

/** The dialogue that a button opens is closed by nobody here: what it would print is read instead. */
async function printedBy(page: Page, button: string) {
  await page.evaluate(() => delete document.documentElement.dataset['asked']);
  await page.getByRole('button', { name: button, exact: true }).click();
  // What the paper needs may be fetched first.
  await page.waitForSelector('[data-asked]');
  return readPdf(await page.pdf({ format: 'A4' }));
}

const open = async (page: Page, path: string) => {
  await page.addInitScript(() => (window.print = () => (document.documentElement.dataset['asked'] = '')));
  await page.goto(path);
  await expect(page.locator('.readings output').first()).toBeVisible();
};

// From a wide window, and on Letter, every lesson is printed where it is walked through.
test(`/${ofSheets} prints a sheet of two pages from a phone, and apart from it what is not for learners`, async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.emulateMedia({ colorScheme: 'dark' });
  await open(page, ofSheets);
  await expectLearnersSheet(page, 'A4');
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  const learner = await printedBy(page, 'Learner’s sheet');
  expect(learner).toHaveLength(2);
  expect(learner[0]!.text).toContain('How it works');
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  const instructor = await printedBy(page, 'Instructor’s page');
  expect(instructor).toHaveLength(1);
  expect(instructor[0]!.text).toContain('For the instructor');
  expect(instructor[0]!.text).not.toContain('How it works');
  // What was asked for once is not printed again unasked, and the screen is as it was.
  expect(await page.evaluate(() => document.documentElement.dataset['paper'])).toBeUndefined();
  await expect(page.locator('.paper-sheets')).toHaveCount(0);
});

test(`/${plain} prints eight problems, the same for the same number, and their key apart`, async ({ page }) => {
  await open(page, plain);
  const sheetOf = async (number: string) => {
    // Problems come to life when a reader comes near them.
    await page.getByLabel('On paper: sheet no.').scrollIntoViewIfNeeded();
    await page.getByLabel('On paper: sheet no.').fill(number);
    return printedBy(page, 'Print eight problems');
  };
  const sheet = await sheetOf('12');
  const key = await printedBy(page, 'Print their key');
  expect(sheet).toHaveLength(1);
  expect(key.length).toBeLessThanOrEqual(2);
  const [problems, answers] = [sheet, key].map((pages) => pages.map(({ text }) => text).join(' ')) as [string, string];
  for (const text of [problems, answers]) expect(text).toContain('sheet no. 12');
  expect(problems).not.toContain('set of numbers');
  expect(answers.match(/set of numbers \d/g)).toHaveLength(8);
  expect((await sheetOf('13'))[0]!.text).not.toBe(problems);
  await page.reload();
  expect((await sheetOf('12'))[0]!.text).toBe(problems);
  await page.getByLabel('On paper: sheet no.').fill('0');
  await expect(page.getByRole('button', { name: 'Print eight problems' })).toBeDisabled();
});

test('what is to scale is as large on paper as its ratio says', async ({ page }) => {
  await open(page, 'lessons/extension/');
  const file = await page.pdf({ format: 'A4' });
  const [first] = await readPdf(file);
  // The sensor, 36 mm wide, at 1:2.
  expect(first!.text).toContain('scale 1:2');
  expect((await uprightStrokes(file)).some((length) => Math.abs(length - 18) < 0.05)).toBe(true);
});
