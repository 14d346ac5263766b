import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/**
 * Takes out of the page, or puts back, how formulas look: every letter is an element there, hidden from whoever listens, of which axe reports
 * nothing and takes most of its time to find that out. What a formula says stays.
 */
function showFormulas(page: Page, shown: boolean): Promise<void> {
  return page.evaluate((isShown) => {
    const kept = ((window as unknown as { looks?: [Element, Node[]][] }).looks ??= []);
    if (isShown) for (const [place, nodes] of kept.splice(0)) place.replaceChildren(...nodes);
    else
      for (const place of document.querySelectorAll('.katex-html[aria-hidden=true]')) {
        kept.push([place, [...place.childNodes]]);
        place.replaceChildren();
      }
  }, shown);
}

/** What axe has to report on a page in light colours, and of colours in dark ones. */
export async function expectAccessible(page: Page): Promise<void> {
  await showFormulas(page, false);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    // No page has frames, which alone would need a second page to put the findings together.
    const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
    // What is named and in which order does not change with the colours.
    if (colorScheme === 'dark') axe.withRules(['color-contrast', 'link-in-text-block']);
    const { violations } = await axe.analyze();
    const said = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join('; ')}`);
    expect(said, `axe, in ${colorScheme} colours`).toEqual([]);
  }
  await showFormulas(page, true);
  await page.emulateMedia({ colorScheme: 'light' });
}

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
