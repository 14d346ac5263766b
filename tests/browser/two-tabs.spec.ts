import { expect, test, type Page } from '@playwright/test';
import { lessons } from './pages.ts';
import { comeToProblems } from './walk/problems.ts';

/** Shows the working of the problem of this kind, which counts as worked. */
async function work(page: Page, kind: string) {
  // A page behind another draws twice a second.
  await page.bringToFront();
  await page.getByRole('group', { name: 'Kinds of problem' }).getByRole('button', { name: kind }).click();
  await page
    .getByRole('button', { name: /working/i })
    .first()
    .click();
}

/** The kinds of problem that a tab knows as worked. */
const keptIn = (page: Page) =>
  page.evaluate(() =>
    Object.entries(localStorage)
      .filter(([name]) => name.startsWith('ring-and-ruler.progress.'))
      .flatMap(([, text]) => Object.keys(JSON.parse(text as string) as object)),
  );

test('what is worked in one tab is not lost to what is worked in another', async ({ context }) => {
  const [first, second] = [await context.newPage(), await context.newPage()];
  for (const page of [first, second]) {
    await page.goto(`${lessons[0]}#check`);
    await comeToProblems(page);
  }
  await work(first, '1');
  // Browsers tell other tabs of what is stored a moment later.
  await expect.poll(() => keptIn(second)).toHaveLength(1);
  await work(second, '2');
  await expect.poll(() => keptIn(first)).toHaveLength(2);
});
