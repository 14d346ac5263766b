import { expect, type Page } from '@playwright/test';
import { readPdf } from '../../support/pdf.ts';
import { scalesOn } from '../../support/scales-on-paper.ts';

/** What belongs to the learner's sheet, and what does not, by the headings and labels that stand on the page. */
const onSheet = ['How it works', 'The formula', 'A worked example', 'The figure is set to'];
const offSheet = ['For the instructor', 'Hands on', 'Check my answer', 'Copy the address', 'nothing is sent anywhere'];

/** How many of the drawings that a print would hold have a rule. */
function rulesOnPaper(page: Page): Promise<number> {
  return page.evaluate(() => {
    window.dispatchEvent(new Event('beforeprint'));
    const rules = document.querySelectorAll('.paper-sheets .rule').length;
    window.dispatchEvent(new Event('afterprint'));
    return rules;
  });
}

/**
 * The browser's own command prints one sheet of two pages wherever the reader is, and a ruler laid on it finds the ratios that it states.
 *
 * @param format of the paper
 */
export async function expectLearnersSheet(page: Page, format: 'A4' | 'Letter'): Promise<void> {
  const ruled = await rulesOnPaper(page);
  const pages = await readPdf(await page.pdf({ format }));
  expect(pages).toHaveLength(2);
  const text = pages.map((one) => one.text).join(' ');
  expect(onSheet.filter((words) => !text.includes(words))).toEqual([]);
  expect(offSheet.filter((words) => text.includes(words))).toEqual([]);
  const scales = pages.flatMap(scalesOn);
  // A drawing with a rule is to scale; curves, and cones drawn higher than they are, have none.
  if (ruled > 0) expect(scales.length).toBeGreaterThan(0);
  else expect(scales).toEqual([]);
  for (const { stated, measured } of scales) {
    // A number stands over its tick to a tenth of a pixel, in 20 mm and more: a few thousandths.
    expect(Math.abs(measured / stated - 1), `1 mm is ${measured} mm on paper, stated as ${stated}`).toBeLessThan(0.005);
  }
}
