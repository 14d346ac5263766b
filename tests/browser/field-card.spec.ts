import { expect, test, type Page } from '@playwright/test';
import { blocksOf, isBlock, type LineName } from '#site/field-card/card.ts';
import { placeOn, smallestType, type Paper, type Size } from '#site/field-card/size.ts';
import { readState } from '#site/field-card/state.ts';
import { cellText } from '#site/field-card/words.ts';
import { readPdf, uprightStrokes } from '../support/pdf.ts';
import { reported } from './walk/axe.ts';
import { expectNarrow } from './walk/formulas.ts';
import { watched } from './walk/watch.ts';

/** What every cell of the page says, block by block, line by line. */
const cellsOf = (page: Page) =>
  page.locator('.numbers table').evaluateAll((tables) =>
    tables.map((table) =>
      [...table.querySelectorAll<HTMLElement>('tr[data-line]')].map((row) => ({
        line: row.dataset['line']!,
        cells: [...row.querySelectorAll('td')].map(({ textContent, dataset }) => ({
          text: textContent.trim(),
          value: dataset['value'],
          state: dataset['state'],
        })),
      })),
    ),
  );

/** Every cell against what is worked out here, from the page's own address. */
async function expectCells(page: Page): Promise<number> {
  const { state } = readState(new URL(page.url()).search);
  const blocks = blocksOf(state).filter(isBlock);
  const shown = await cellsOf(page);
  expect(shown).toHaveLength(blocks.length);
  let count = 0;
  for (const [at, block] of blocks.entries()) {
    expect(shown[at]!.map(({ line }) => line)).toEqual(state.lines);
    for (const { line, cells } of shown[at]!) {
      expect(cells).toHaveLength(block.columns.length);
      for (const [place, { text, value, state: marked }] of cells.entries()) {
        const { values, isSpoiled } = block.columns[place]!;
        const expected = values[line as LineName];
        expect(text).toBe(cellText(line as LineName, expected, state.unit));
        if (expected !== undefined) expect(Number(value)).toBe(expected);
        expect(marked).toBe(place === block.best ? 'best' : isSpoiled ? 'spoiled' : undefined);
        count++;
      }
    }
  }
  return count;
}

test('a card for each set of rings says in every cell what the core gives, and its address brings it back', async ({
  page,
  baseURL,
}) => {
  const faults = watched(page, baseURL!);
  await page.goto('field-card/?chain=body-36,lens-90&paper=banana');
  await expect(page.getByText('sets “paper” to “banana”')).toBeVisible();
  await page.getByRole('button', { name: 'A block for each set of rings' }).click();
  await expect(page.getByText('7 chains now, one for each length of rings.')).toBeVisible();
  await expect(page).toHaveURL(/chain=body-36,ring-12,lens-90/);
  expect(await expectCells(page)).toBe(7 * 7 * 7);

  await page.getByLabel('f-numbers', { exact: true }).fill('f/4 banana');
  await page.getByLabel('f-numbers', { exact: true }).press('Enter');
  await expect(page.getByText('“banana” cannot be used')).toBeVisible();
  await page.getByLabel('f-numbers', { exact: true }).fill('4 8 16 32');
  await page.getByLabel('f-numbers', { exact: true }).press('Enter');
  await page.getByRole('checkbox', { name: /point, px/ }).uncheck();
  await page.getByLabel('Lengths in').selectOption('in');
  await page.getByLabel('Held', { exact: true }).selectOption('hand');
  await expect(page).toHaveURL(/shake-rate=/);
  expect(await expectCells(page)).toBe(7 * 6 * 4);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.numbers table')).toHaveCount(1);

  // Focused to magnifications, some of them out of reach.
  await page.getByLabel('Magnifications').fill('1:2 1 3');
  await page.getByLabel('Magnifications').press('Enter');
  await expect(page.locator('.numbers table')).toHaveCount(2);
  await expect(page.getByText(/It goes up to .*, so not to 3×\./)).toBeVisible();
  await expect(page).toHaveURL(/at=0\.5,1,3/);
  await page.reload();
  await expect(page.locator('.numbers table')).toHaveCount(2);
  await expectCells(page);

  await expectNarrow(page);
  await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
  await expectNarrow(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await reported(page, 'main')).toEqual([]);
  expect(faults).toEqual([]);
});

test('cards are printed in every size, with marks to cut by, in type of seven points or more', async ({ page }) => {
  const chains = ['lens-50', 'ring-12,lens-50', 'ring-36,lens-50', 'ring-12,ring-24,ring-36,lens-50'];
  await page.goto(`field-card/?${chains.map((chain) => `chain=body-36,${chain}`).join('&')}`);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect(page.locator('.paper-cards .card').first()).toBeAttached();
  const lying = { a4: [297, 210], letter: [279.4, 215.9] } as const;
  const printed = async (size: Size, paper: Paper, [width, height]: readonly [number, number]) => {
    await page.getByLabel('Card', { exact: true }).selectOption(size);
    if (size === 'a6' || size === 'a5') await page.getByLabel('Cut out of').selectOption(paper);
    const file = await page.pdf({ preferCSSPageSize: true });
    const pages = await readPdf(file);
    const cards = await page.locator('.paper-cards .card').count();
    const { card, columns, rows, isFull, isCut } = placeOn(size, paper);
    const perSheet = columns * rows;
    expect(pages, `${size} on ${paper}`).toHaveLength(Math.ceil(cards / perSheet));
    if (isFull) expect(cards % perSheet).toBe(0);
    for (const one of pages) {
      expect(Math.abs(one.width - width) + Math.abs(one.height - height)).toBeLessThan(0.6);
      expect(one.smallest).toBeGreaterThanOrEqual(smallestType - 0.01);
    }
    // All words stand on the card, for a card cut out loses what is beside it.
    const [edge, gap] = isCut && !isFull ? [20, 16] : [0, 0];
    const isOn = (at: number, length: number, count: number) =>
      Array.from({ length: count }, (_, index) => edge + index * (length + gap)).some(
        (from) => at > from && at < from + length,
      );
    for (const { x, y, text } of pages[0]!.words) {
      expect(isOn(x, card.width, columns), `${text} at ${x} mm of ${size} on ${paper}`).toBe(true);
      expect(isOn(height - y, card.height, rows), `${text} at ${height - y} mm of ${size} on ${paper}`).toBe(true);
    }
    const all = pages.map(({ text }) => text).join(' ');
    for (const words of ['frame Z', 'Sharp is b²', 'room ']) expect(all).toContain(words);
    // Four at each card's corners; of a full sheet, where the cut begins at both edges, and in its middle.
    const long = isFull ? 9 : 4;
    const marks = (await uprightStrokes(file)).filter((length) => Math.abs(length - long) < 0.02).length;
    expect(marks >= (isFull ? 3 : 4)).toBe(isCut);
  };
  await printed('a6', 'a4', lying.a4);
  await printed('a6', 'letter', lying.letter);
  await printed('a6', 'same', [105, 148]);
  await printed('a6', 'a4-full', [210, 297]);
  await printed('a6', 'letter-full', [215.9, 279.4]);
  await printed('a5', 'a4', [210, 297]);
  await printed('a5', 'letter', [215.9, 279.4]);
  await printed('a4', 'same', [210, 297]);
  await printed('letter', 'same', [215.9, 279.4]);

  await page.getByLabel('Card', { exact: true }).selectOption('a6');
  await page.getByLabel('f-numbers', { exact: true }).fill('1.8 2 2.2 2.5 2.8 3.2 4 5.6 8 11 16');
  await page.getByLabel('f-numbers', { exact: true }).press('Enter');
  await expect(page.locator('[data-fits]')).toContainText('A6 has room for 8 f-numbers in type of 7 pt');
  await expect(page.getByRole('button', { name: 'Print the card' })).toBeDisabled();
});
