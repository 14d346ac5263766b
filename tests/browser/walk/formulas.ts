import { expect, type Page } from '@playwright/test';

/** Every letter can be pointed at, and no formula is wider than its column; ends with all parts and workings open. */
export async function expectFormulasInReach(page: Page): Promise<void> {
  // Later formulas are folded: here all lie open.
  await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
  const found = await page.evaluate(() => {
    for (const part of document.querySelectorAll<HTMLElement>('.part')) part.style.contentVisibility = 'visible';
    const letters = [...document.querySelectorAll<HTMLElement>('.katex-html [data-quantity]')].filter(
      (letter) => !letter.closest('[hidden]'),
    );
    const covered = letters.filter((letter) => {
      letter.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
      const { left, top, width, height } = letter.getBoundingClientRect();
      const hit = document.elementFromPoint(left + width / 2, top + height / 2);
      return hit?.closest('[data-quantity]') !== letter;
    });
    for (const hidden of document.querySelectorAll<HTMLElement>('.working[hidden]')) hidden.hidden = false;
    const formulas = [...document.querySelectorAll('.formula-lines')];
    const cut = formulas.filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth);
    return {
      letters: letters.length,
      covered: covered.map((letter) => letter.dataset['quantity']),
      formulas: formulas.length,
      cut: cut.map((formula) => formula.querySelector('math')!.textContent),
    };
  });
  expect(found.letters).toBeGreaterThan(0);
  expect(found.covered, 'letters that cannot be pointed at').toEqual([]);
  expect(found.formulas).toBeGreaterThan(0);
  expect(found.cut, 'formulas wider than their column').toEqual([]);
}

/** A narrow phone shows it all without sideways scrolling. */
export async function expectNarrow(page: Page): Promise<void> {
  await page.setViewportSize({ width: 360, height: 740 });
  const beyond = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(beyond, 'px beyond a narrow phone').toBeLessThanOrEqual(0);
}
