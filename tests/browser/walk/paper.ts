import { expect, type Page } from '@playwright/test';

const offPaper = ['.controls', '.tabs', '.bench-actions', '.theme', '.practice .actions', '.grip', '.grip + .arrows'];

/** On paper: black on white without controls, only addresses that can be typed, no line that leads up to a formula without it. */
export async function expectPrinted(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const printed = await page.evaluate((hidden) => {
    const style = getComputedStyle(document.documentElement);
    const shown = (element: Element) => element.checkVisibility({ visibilityProperty: true });
    return {
      shown: hidden.filter((selector) => [...document.querySelectorAll(selector)].some(shown)),
      figure: shown(document.querySelector('.sheet svg')!),
      ink: style.color,
      paper: style.backgroundColor,
      links: [...document.querySelectorAll('main a[href]:not([href^=http])')].map(
        (link) => getComputedStyle(link, '::after').content,
      ),
      lines: [...document.querySelectorAll('.formula')].flatMap(({ previousElementSibling: line }) =>
        line?.tagName === 'P' ? [getComputedStyle(line).breakAfter] : [],
      ),
    };
  }, offPaper);
  expect(printed.shown).toEqual([]);
  expect(printed.figure).toBe(true);
  expect(printed.ink).toMatch(/rgb\(0, 0, 0\)/);
  expect(printed.paper).toMatch(/rgb\(255, 255, 255\)|rgba\(0, 0, 0, 0\)/);
  expect(new Set(printed.links)).toEqual(new Set(['none']));
  expect(new Set(printed.lines)).toEqual(new Set(['avoid']));
  // As it was: what is printed after this is printed, and not the screen put on paper.
  await page.emulateMedia({ media: null, colorScheme: 'light' });
}
