import { expect, test } from '@playwright/test';
import { lessons, sharing } from './pages.ts';
import { coloursAt, expectAccessible } from './walk/axe.ts';
import { expectBuiltWhole } from './walk/built.ts';
import { dragFirstHandle, moveFirstInput, openFolds } from './walk/figure.ts';
import { expectFormulasInReach, expectNarrow } from './walk/formulas.ts';
import { expectPrinted } from './walk/paper.ts';
import { expectLearnersSheet } from './walk/paper-sheet.ts';
import { expectShort } from './walk/short.ts';
import { expectPolicy } from './walk/policy.ts';
import { predict } from './walk/prediction.ts';
import { comeToProblems, familiesOf, openEveryKind, practise } from './walk/problems.ts';
import { projectAllSteps } from './walk/stage.ts';
import { expectReadingsAsHigh, expectStillUnderTheHand, expectStillWhenJumped } from './walk/still.ts';
import { watched } from './walk/watch.ts';

for (const [index, path] of lessons.entries()) {
  test(`/${path} is walked through`, async ({ page, baseURL }) => {
    const families = await familiesOf(path);
    const isShared = sharing.includes(path);
    const asksForNumber = families.find(({ kind }) => kind === 'number')!;
    const faults = watched(page, baseURL!);
    const step = (what: string, walk: () => Promise<unknown>) => test.step(what, walk);

    await page.goto(`${path}?practice=${asksForNumber.id}:7`);
    await expect(page.locator('.readings output').first()).toBeVisible();
    await step('stands whole as built', () => expectBuiltWhole(page));
    await step('stays in place under whoever jumps down it', () => expectStillWhenJumped(page));
    await step('is short in the hand', () => expectShort(page));
    await step('keeps to its policy and below its path', () => expectPolicy(page, baseURL!));
    await step('gives axe nothing to report', () => expectAccessible(page, coloursAt(index)));
    await step('lets the thing itself be moved, by hand and by key', () => dragFirstHandle(page));
    await openFolds(page);
    if (isShared) await step('takes numbers by slider and field, and no nonsense', () => moveFirstInput(page));
    await step('keeps still while values change', () => expectStillUnderTheHand(page));
    await step('answers a prediction', () => predict(page));
    await comeToProblems(page);
    if (isShared) await step('marks a problem', () => practise(page, asksForNumber, 7));
    await step('has every kind of problem and its working', () => openEveryKind(page, families));
    await step('plays its steps', () => projectAllSteps(page, isShared));
    await step('prints', () => expectPrinted(page));
    await step('fits one sheet of paper, to a true scale', () => expectLearnersSheet(page, 'Letter'));
    await step('has readings as high in words as in numbers', () => expectReadingsAsHigh(page));
    await step('fits a narrow phone', () => expectNarrow(page));
    await page.setViewportSize({ width: 1280, height: 720 });
    await step('has formulas in reach', () => expectFormulasInReach(page));
    expect(faults).toEqual([]);
  });
}
