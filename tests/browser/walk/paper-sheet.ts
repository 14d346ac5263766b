import { expect, type Page } from '@playwright/test';
import { readPdf } from '../../support/pdf.ts';
import { scalesOn } from '../../support/scales-on-paper.ts';

/** What belongs to the learner's sheet, and what does not, by the headings and labels that stand on the page. */
const onSheet = ['How it works', 'The formula', 'A worked example', 'The figure is set to'];
const offSheet = ['For the instructor', 'Hands on', 'Check my answer', 'Copy the address', 'nothing is sent anywhere'];

/** What a hand does to a figure; paper has no such thing. */
const byHand = /(?<!with a figure to )\b[Dd]rag\b|\b[Pp]ull (?:at|the) |\b[Pp]ress one\b/;

/** Has the next print count how many of the drawings that it holds have a rule. */
function countRules(page: Page): Promise<void> {
  return page.evaluate(() => {
    const count = () => Object.assign(window, { rules: document.querySelectorAll('.paper-sheets .rule').length });
    // After the page's own listener, which has made ready by then what stands on paper alone.
    window.addEventListener('beforeprint', count, { once: true });
  });
}

/**
 * The browser's own command prints one sheet of two pages wherever the reader is, and a ruler laid on it finds the ratios that it states.
 *
 * @param format of the paper
 */
export async function expectLearnersSheet(page: Page, format: 'A4' | 'Letter'): Promise<void> {
  await countRules(page);
  const file = await page.pdf({ format });
  const ruled = await page.evaluate(() => (window as unknown as { rules: number }).rules);
  const pages = await readPdf(file);
  expect(pages).toHaveLength(2);
  const text = pages.map((one) => one.text).join(' ');
  expect(onSheet.filter((words) => !text.includes(words))).toEqual([]);
  expect(offSheet.filter((words) => text.includes(words))).toEqual([]);
  expect(byHand.exec(text)?.[0] ?? '').toBe('');
  const scales = pages.flatMap(scalesOn);
  // A drawing with a rule is to scale; curves, and cones drawn higher than they are, have none.
  expect(ruled, 'a count of the rules on paper').not.toBeUndefined();
  if (ruled > 0) expect(scales.length).toBeGreaterThan(0);
  else expect(scales).toEqual([]);
  for (const { stated, measured } of scales) {
    // A number stands over its tick to a tenth of a pixel, in 20 mm and more: a few thousandths.
    expect(Math.abs(measured / stated - 1), `1 mm is ${measured} mm on paper, stated as ${stated}`).toBeLessThan(0.005);
  }
}
