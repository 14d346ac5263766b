import { expect, test } from '@playwright/test';
import { lessons } from './pages.ts';

for (const path of lessons) {
  test(`every letter of the formulas of /${path} can be pointed at, above a fraction bar and below`, async ({
    page,
  }) => {
    await page.goto(path);
    await expect(page.locator('.readings output').first()).toBeVisible();
    const { covered, count } = await page.evaluate(async () => {
      const letters = [...document.querySelectorAll<HTMLElement>('.katex-html [data-quantity]')].filter(
        (letter) => !letter.closest('[hidden]'),
      );
      const covered: string[] = [];
      for (const letter of letters) {
        letter.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
        await new Promise(requestAnimationFrame);
        const { left, top, width, height } = letter.getBoundingClientRect();
        const hit = document.elementFromPoint(left + width / 2, top + height / 2);
        if (hit?.closest('[data-quantity]') !== letter) covered.push(letter.dataset['quantity']!);
      }
      return { covered, count: letters.length };
    });
    expect(count).toBeGreaterThan(0);
    expect(covered).toEqual([]);
  });

  test(`no formula of /${path} is wider than its column beside the figure, with numbers in it either`, async ({
    page,
  }) => {
    await page.goto(path);
    const { cut, count } = await page.evaluate(() => {
      for (const hidden of document.querySelectorAll<HTMLElement>('.working[hidden]')) hidden.hidden = false;
      for (const part of document.querySelectorAll<HTMLElement>('.part')) part.style.contentVisibility = 'visible';
      const formulas = [...document.querySelectorAll('.formula-lines')];
      const cut = formulas.filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth);
      return { cut: cut.map((formula) => formula.querySelector('math')!.textContent), count: formulas.length };
    });
    expect(count).toBeGreaterThan(0);
    expect(cut).toEqual([]);
  });
}
