import { expect, type Page } from '@playwright/test';

/** What stands in the page as it was built, before any script: figure, readings, numbers in prose, example, workings. */
export async function expectBuiltWhole(page: Page): Promise<void> {
  const built = await page.evaluate(async () => {
    const html = await (await fetch(location.pathname)).text();
    const parsed = new DOMParser().parseFromString(html, 'text/html');
    const all = (selector: string) => [...parsed.querySelectorAll(selector)];
    const sheet = parsed.querySelector('.sheet svg')!;
    return {
      elements: sheet.querySelectorAll('*').length,
      broken: /NaN|undefined|\[object/.exec(sheet.outerHTML + parsed.querySelector('main')!.textContent)?.[0],
      outputs: all('output[name]').length,
      blank: all('output[name], [data-number]').filter(({ textContent }) => /^[—\s]*$/.test(textContent)).length,
      example: all('#example .katex').length,
      workings: all('[data-working] .katex').length,
      empty: all('[data-working]').filter((working) => !working.querySelector('[data-note], .katex')).length,
    };
  });
  expect(built.elements).toBeGreaterThan(20);
  expect(built.broken).toBeUndefined();
  expect(built.outputs).toBeGreaterThan(2);
  expect(built.blank, 'readings and numbers that are blank').toBe(0);
  expect(built.example, 'formulas of the worked example').toBeGreaterThan(0);
  expect(built.workings, 'formulas in workings').toBeGreaterThan(0);
  expect(built.empty, 'workings with nothing in them').toBe(0);
}
