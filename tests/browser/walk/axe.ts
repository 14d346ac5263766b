import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, type Page } from '@playwright/test';

/** The library as short as it comes: a browser reads it anew for every page. */
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/**
 * Takes out of the page, or puts back, how formulas look and are built: every letter is an element there, of which axe reports nothing and takes
 * most of its time to find that out. What a formula says stays.
 */
function showFormulas(page: Page, shown: boolean): Promise<void> {
  return page.evaluate((isShown) => {
    const kept = ((window as unknown as { formulas?: [Element, Node[]][] }).formulas ??= []);
    if (isShown) for (const [place, nodes] of kept.splice(0)) place.replaceChildren(...nodes);
    else
      for (const place of document.querySelectorAll('.katex-html[aria-hidden=true], .katex-mathml math')) {
        kept.push([place, [...place.childNodes]]);
        place.replaceChildren(place.localName === 'math' ? place.textContent : '');
      }
  }, shown);
}

/**
 * What axe has to report *within* an element, or on the whole page. Most of its time goes by until it is read: it is read and asked in one. It goes
 * through all of a page whatever it is asked of: where that is one element, what it would leave aside is taken away first, for good.
 */
export async function reported(page: Page, within?: string): Promise<string[]> {
  if (within !== undefined)
    await page.evaluate((place) => {
      for (let one = document.querySelector(place); one && one !== document.body; one = one.parentElement)
        for (const other of [...one.parentElement!.children]) if (other !== one) other.remove();
    }, within);
  return page.evaluate(`(async () => {
    ${axe}
    const { violations } = await axe.run(${JSON.stringify(within) ?? 'document'}, { resultTypes: ['violations'] });
    return violations.map(({ id, nodes }) => id + ': ' + nodes.map(({ html }) => html).join('; '));
  })()`);
}

/**
 * What axe has to report on a page in the one colours or the other; every second page takes the dark ones. The styles ask for a colour by its
 * name, and that each holds on each in both is tried where the palette is.
 */
export async function expectAccessible(page: Page, colorScheme: 'light' | 'dark'): Promise<void> {
  await showFormulas(page, false);
  await page.emulateMedia({ colorScheme });
  expect(await reported(page), `axe, in ${colorScheme} colours`).toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
  await showFormulas(page, true);
}

/** The colours in which the page at this place of a list is looked at. */
export const coloursAt = (index: number) => (index % 2 === 0 ? 'light' : 'dark');

/**
 * Takes away what a page has more than six of in a row of its kind: hundreds of rows, cards and entries come of one template each, and
 * axe looks at every cell. Their ids, which no template keeps apart, are compared first.
 */
export async function thinOut(page: Page): Promise<void> {
  const repeated = await page.evaluate(() => {
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    for (const parent of document.querySelectorAll('main, main *:not(.katex *)')) {
      const seen = new Map<string, number>();
      for (const child of [...parent.children]) {
        const kind = `${child.tagName} ${child.className}`;
        seen.set(kind, (seen.get(kind) ?? 0) + 1);
        if (seen.get(kind)! > 6) child.remove();
      }
    }
    return ids.filter((id, at) => ids.indexOf(id) !== at);
  });
  expect(repeated, 'ids given twice').toEqual([]);
}
