import { expect, test, type Page } from '@playwright/test';
import { lessons } from './pages.ts';
import { comeToProblems } from './walk/problems.ts';

/** Shows the working of the problem of this kind, which counts as worked. */
async function work(page: Page, kind: string) {
  await page.getByRole('group', { name: 'Kinds of problem' }).getByRole('button', { name: kind }).click();
  await page
    .getByRole('button', { name: /working/i })
    .first()
    .click();
}

test('what is worked in one tab is not lost to what is worked in another', async ({ context }) => {
  const [first, second] = [await context.newPage(), await context.newPage()];
  for (const page of [first, second]) {
    await page.goto(`${lessons[0]}#check`);
    await comeToProblems(page);
  }
  await work(first, '1');
  await work(second, '2');
  const kept = await first.evaluate(() =>
    Object.entries(localStorage)
      .filter(([name]) => name.startsWith('ring-and-ruler.progress.'))
      .flatMap(([, text]) => Object.keys(JSON.parse(text as string) as object)),
  );
  expect(kept).toHaveLength(2);
});
