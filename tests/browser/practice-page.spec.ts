import { expect, test, type Page } from '@playwright/test';
import type { ProblemFamily } from '#core/practice/family.ts';
import { printQuantity } from '#core/quantity/print.ts';
import type { SheetProblem } from '#core/practice/versions.ts';
import { qrCode } from '#site/kit/qr.ts';
import { drawnFrom, readSheetText } from '#site/practice/sheet.ts';
import { everyLessonFile } from '../support/lessons.ts';
import { readPdf } from '../support/pdf.ts';
import { reported } from './walk/axe.ts';
import { expectNarrow } from './walk/formulas.ts';
import { watched } from './walk/watch.ts';

/** What a sheet asks, drawn here. */
async function sheet(text: string): Promise<readonly SheetProblem[]> {
  const files = await everyLessonFile('problems.ts');
  const families = files.flatMap(({ slug, exports }) =>
    (exports['families'] as readonly ProblemFamily[]).map((family) => ({ lesson: slug, family })),
  );
  const reading = readSheetText(text);
  if (reading.kind !== 'value') throw new Error(reading.message);
  return drawnFrom(reading.plan, families);
}

const field = (page: Page, place: number) => page.locator(`#problem-${place}-answer`);
const verdict = (page: Page, place: number) => page.locator(`#problem-${place}-verdict`);
const plain = (text: string) => text.replaceAll(/[\u2009\u202f\u00a0]/g, ' ');
/** Without the spaces that a page of paper breaks lines at. */
const squeezed = (text: string) => text.replaceAll(/\s/g, '');

test('a sheet is made, marked with its slips, kept, printed in two sizes, and its address brings it back', async ({
  page,
  baseURL,
}) => {
  const faults = watched(page, baseURL!);
  await page.goto('practice/');
  await expect(page.getByRole('button', { name: 'Make the sheet' })).toBeDisabled();
  await page.getByLabel('What does each extension ring give?').check();
  await page.getByText('4 of 4 kinds').click();
  await page.getByLabel('Light paid').uncheck();
  await page.getByLabel('Problems', { exact: true }).fill('25');
  await expect(page.getByText('A sheet has 1 to 24 problems.')).toBeVisible();
  await page.getByLabel('Problems', { exact: true }).fill('6');
  await page.getByLabel('Seed', { exact: true }).fill('77');
  await page.getByRole('button', { name: 'Make the sheet' }).click();
  await expect(page).toHaveURL(/practice\/\?sheet=a-4abc-6-A-77$/);

  const problems = await sheet('a-4abc-6-A-77');
  const questions = page.locator('.questions .question');
  await expect(questions).toHaveCount(6);
  expect((await questions.allTextContents()).map(plain)).toEqual(
    problems.map(({ problem }) => plain(problem.question)),
  );
  const [first, second] = problems.map(({ problem }) => problem) as [SheetProblem['problem'], SheetProblem['problem']];
  if (first.kind !== 'number' || second.kind !== 'number') throw new Error('kinds of this lesson ask for numbers');
  await field(page, 1).fill(printQuantity(first.family.asks, first.answer));
  await field(page, 2).fill(String(second.mistakes[0]!.value));
  await field(page, 3).fill('a banana');
  await page.getByRole('button', { name: 'Check all answers' }).click();
  await expect(page.getByText('1 of 6 right, 3 still blank.')).toBeVisible();
  await expect(verdict(page, 1)).toContainText('Right: ');
  await expect(verdict(page, 2)).toContainText(second.mistakes[0]!.because);
  await expect(verdict(page, 3)).toContainText('Not checked yet.');
  await expect(verdict(page, 4)).toBeEmpty();
  await page.getByRole('button', { name: 'Show the working' }).nth(1).click();
  await expect(page.locator('.questions .formula-lines .katex-html').first()).toBeVisible();

  // This computer's own address leads no other screen here; the one said on the workshop page does.
  await page.getByText('Open it on another screen').click();
  await expect(page.getByText('Other screens cannot open this copy.')).toBeVisible();
  await expect(page.locator('.code svg')).toHaveCount(0);
  expect(await page.locator('.printed-sheets').textContent()).not.toContain('localhost');
  await page.evaluate(() => localStorage.setItem('ring-and-ruler.hall', '"http://192.168.7.20:4321/"'));
  await page.reload();
  await expect(field(page, 3)).toHaveValue('a banana');
  // Paper: the problems by themselves, answers and working on pages of their own, in both sizes.
  await page.addInitScript(() => (window.print = () => undefined));
  for (const [size, width] of [
    ['A4', 210],
    ['Letter', 215.9],
  ] as const) {
    await page.reload();
    await page.getByText('Print it').click();
    await page.getByLabel(size, { exact: true }).check();
    await page.getByLabel('All four versions').check();
    await expect(page.locator('.printed-sheets .problems')).toHaveCount(4);
    await page.getByRole('button', { name: 'Print', exact: true }).click();
    await expect(page.locator('.printed-sheets .formula-lines:empty')).toHaveCount(0);
    const printed = await readPdf(await page.pdf({ preferCSSPageSize: true }));
    expect(Math.abs(printed[0]!.width - width)).toBeLessThan(0.5);
    expect(printed.slice(0, 4).every(({ text }) => text.startsWith('Problems'))).toBe(true);
    expect(printed[4]!.text).toMatch(/^Answers/);
    const [paper, key] = [printed[0]!.text, printed[4]!.text].map(squeezed) as [string, string];
    for (const { problem } of problems) expect(paper).toContain(squeezed(problem.question));
    expect(paper).toMatch(/192\.168\.7\.20:4321\/(?:\S*\/)?practice\/\?sheet=a-4abc-6-A-77/);
    expect(paper).not.toContain(squeezed(printQuantity(first.family.asks, first.answer)) + '±');
    expect(key).toContain(squeezed(printQuantity(first.family.asks, first.answer)));
  }

  await page.getByRole('button', { name: 'B', exact: true }).click();
  await expect(page).toHaveURL(/sheet=a-4abc-6-B-77$/);
  await expect(field(page, 3)).toHaveValue('');
  await page.getByText('Open it on another screen').click();
  await expect(page.getByRole('img', { name: 'QR code of this sheet' })).toBeVisible();
  // Whatever reads the code goes where the address bar says, on the hall's network.
  const code = await page.getByRole('img', { name: 'QR code of this sheet' }).locator('path').getAttribute('d');
  expect(code).toBe(qrCode(page.url().replace(new URL(page.url()).host, '192.168.7.20:4321'))!.path);
  await expectNarrow(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await reported(page, 'main')).toEqual([]);
  expect(faults).toEqual([]);
});

test('a link to a sheet that is not there says why', async ({ page }) => {
  await page.goto('practice/?sheet=a-4-8-E-77');
  await expect(page.locator('main .notice')).toContainText('its version is A, B, C or D');
  await expect(page.getByRole('heading', { name: 'Ten questions in ten minutes' })).toBeVisible();
});

test('a session of ten is the same in two tabs, ends with what was slipped on, and the record is kept, saved, erased and brought back', async ({
  context,
  baseURL,
}) => {
  const [page, other] = [await context.newPage(), await context.newPage()];
  const faults = watched(page, baseURL!);
  await page.goto('practice/');
  await page.evaluate(() => {
    const score = { seed: 1, tries: 2, closed: true, worked: 1, atOnce: 0, later: 1 };
    localStorage.setItem('ring-and-ruler.progress.extension', JSON.stringify({ 'room-left': score }));
    localStorage.setItem('ring-and-ruler.progress.reversed', '{"x":3');
    localStorage.setItem('ring-and-ruler.review', 'garbage');
  });
  await page.reload();
  await expect(page.getByText('The record of one lesson could not be read')).toBeVisible();
  await expect(page.getByText('A review that this page cannot read lies in this browser')).toBeVisible();
  await other.goto('practice/');
  await page.bringToFront();
  await page.getByRole('button', { name: 'Begin ten questions' }).click();
  await expect(page.getByRole('heading', { name: 'Question 1 of 10' })).toBeFocused();
  // What was garbage is put aside.
  expect(await page.evaluate(() => localStorage.getItem('ring-and-ruler.review.put-aside'))).toBe('garbage');
  // What was slipped on in the lesson comes first, with other numbers, in both tabs.
  const question = page.locator('#review-question');
  await expect(question).toContainText('front principal plane H');
  await expect(other.locator('#review-question')).toHaveText((await question.textContent())!);
  await page.getByLabel('Your answer').fill('a banana');
  await page.getByRole('button', { name: 'Check my answer' }).click();
  await expect(page.getByRole('button', { name: 'Next question' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Show the working' }).click();
  await page.getByRole('button', { name: 'Next question' }).click();
  await expect(other.getByRole('heading', { name: 'Question 2 of 10' })).toBeVisible();
  for (let place = 2; place <= 10; place++) {
    await expect(page.getByRole('heading', { name: `Question ${place} of 10` })).toBeVisible();
    // With four kinds in the one lesson begun, what was slipped on comes back after three others.
    if (place === 5) await expect(question).toContainText('front principal plane H');
    await page.getByRole('button', { name: 'Show the working' }).click();
    await page.getByRole('button', { name: place < 10 ? 'Next question' : 'See how it went' }).click();
  }
  await expect(page.getByRole('heading', { name: '0 of 10 right at the first answer' })).toBeFocused();
  const links = page.locator('section[aria-labelledby="review"] .slips li');
  await expect(links).toHaveCount(4);
  await expect(links.first()).toContainText(/times\. (Hint: |That )/);
  await expect(page.locator('section[aria-labelledby="standing"] .slips li')).toHaveCount(4);
  const row = page.getByRole('row', { name: /Room left/ });
  await expect(row).toContainText('2 questions');

  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file', exact: true }).last().click();
  const path = await (await saving).path();
  await page.getByRole('button', { name: 'Erase my record' }).click();
  await expect(page.getByText('Your record is erased.')).toBeVisible();
  await expect(other.getByText('Nothing is kept yet.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(row).toBeVisible();
  await page.getByRole('button', { name: 'Erase my record' }).click();
  await page.locator('input[type="file"]').setInputFiles({
    name: 'x.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"kit":1}'),
  });
  await expect(page.getByText('This file is no record of practice')).toBeVisible();
  await page.locator('input[type="file"]').setInputFiles(path);
  await expect(row).toBeVisible();

  await expectNarrow(page);
  expect(await reported(page, 'main')).toEqual([]);
  // The link leads to a part that is there.
  await page.reload();
  const link = page.locator('section[aria-labelledby="standing"] .slips a').first();
  const id = new URL((await link.getAttribute('href'))!, page.url()).hash;
  await link.click();
  await expect(page.locator(id)).toBeAttached();
  expect(faults).toEqual([]);
});
