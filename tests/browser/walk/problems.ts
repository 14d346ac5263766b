import { expect, type Page } from '@playwright/test';
import type { ProblemFamily } from '#core/practice/family.ts';
import { drawProblem } from '#core/practice/problem.ts';
import { printQuantity } from '#core/quantity/print.ts';

/** The families of a lesson, given its path in the site. */
export async function familiesOf(path: string): Promise<readonly ProblemFamily[]> {
  const { families } = (await import(`../../../${path}problems.ts`)) as { families: readonly ProblemFamily[] };
  return families;
}

/** Comes to the problems of a page, which come to life when somebody does. */
export async function comeToProblems(page: Page): Promise<void> {
  await page.locator('[data-island=check]').evaluate((island) => island.firstElementChild!.scrollIntoView());
  await expect(page.locator('[data-island=check]:not([inert]) .practice form')).toBeVisible();
}

/** The address names a problem with a number for its answer: marked blank, garbled, slipped and right, then worked in full. */
export async function practise(page: Page, family: ProblemFamily, seed: number): Promise<void> {
  const problem = drawProblem(family, seed);
  if (problem.kind !== 'number') throw new Error(`${family.id} asks for no number`);
  const practice = page.locator('.practice');
  await expect(practice.locator('.question')).toHaveText(problem.question);
  const [answer, verdict] = [page.locator('#practice-answer'), practice.locator('.verdict')];
  await answer.press('Enter');
  await expect(verdict).toContainText('Type an answer first');
  const marked = async (text: string, words: string) => {
    await answer.fill(text);
    await answer.press('Enter');
    await expect(verdict).toContainText(words);
  };
  await marked('a lot', 'Not checked yet');
  const mistake = problem.mistakes.find(({ value }) => value > 0);
  if (mistake) await marked(printQuantity(problem.family.asks, mistake.value, { exact: true }), mistake.because);
  await answer.fill(printQuantity(problem.family.asks, problem.answer, { exact: true }));
  await answer.press('Enter');
  await expect(practice.locator('[data-verdict=right]')).toBeVisible();
  await expectWorking(page, family);
}

/** Every kind of problem asks what its family asks, and shows its own working: both come out of the built page. */
export async function openEveryKind(page: Page, families: readonly ProblemFamily[]): Promise<void> {
  await expect(page.locator('.practice .kinds button')).toHaveCount(families.length);
  // In one call: a browser takes longer to be asked than to answer.
  const found = await page.evaluate(async () => {
    const practice = document.querySelector('.practice')!;
    const drawn = () => new Promise((done) => requestAnimationFrame(done));
    const kinds = [...practice.querySelectorAll<HTMLButtonElement>('.kinds button')];
    const found = [];
    for (const kind of kinds) {
      kind.click();
      await drawn();
      const asked = new URLSearchParams(location.search).get('practice');
      const question = practice.querySelector('.question')!.textContent.trim();
      [...practice.querySelectorAll('button')].find(({ textContent }) => /Show the working/.test(textContent))!.click();
      const shown = () => [...document.querySelectorAll<HTMLElement>('[data-working]:not([hidden])')];
      // What works a problem is fetched for the first one: ten seconds of frames, no more.
      for (let frame = 0; frame < 600 && shown().length === 0; frame++) await drawn();
      const workings = shown();
      found.push({
        asked,
        question,
        workings: workings.map(({ dataset }) => dataset['working']),
        isSeen: workings.every((working) => working.checkVisibility() && working.getBoundingClientRect().height > 0),
        holds: workings.every((working) => working.querySelector('.katex, [data-note]') !== null),
        text: workings.map(({ innerText }) => innerText).join(' '),
      });
    }
    return found;
  });
  for (const [at, family] of families.entries()) {
    const { asked, question, workings, isSeen, holds, text } = found[at]!;
    const [id, seed] = asked!.split(':');
    expect(id).toBe(family.id);
    expect(question.replace(/\s+/g, ' ')).toBe(drawProblem(family, Number(seed)).question.replace(/\s+/g, ' '));
    expect({ workings, isSeen, holds }, family.id).toEqual({ workings: [family.id], isSeen: true, holds: true });
    expect(text).not.toMatch(/NaN|undefined/);
  }
}

async function expectWorking(page: Page, family: ProblemFamily): Promise<void> {
  await page.locator('.practice').getByRole('button', { name: 'Show the working' }).click();
  const working = page.locator(`[data-working="${family.id}"]`);
  await expect(working).toBeVisible();
  await expect(working.locator('.katex, [data-note]').first()).toBeVisible();
  await expect(page.locator('[data-working]:not([hidden])')).toHaveCount(1);
  expect(await working.innerText()).not.toMatch(/NaN|undefined/);
}
