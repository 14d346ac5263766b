import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { multiply, type Filter } from './filter.ts';
import { lanesFor, scratchFor } from './scratch.ts';
import { sinc } from './sinc.ts';

const single = { absolute: 1e-6, because: 'single precision' };

/** Not twice the same factor in the quarter of frequencies that are not negative. */
function filterOf(columns: number, rows: number, box?: Filter['box']): Filter {
  const half = (columns >> 1) + 1;
  const quarter = Float32Array.from({ length: half * ((rows >> 1) + 1) }, (_, at) => 1 + at / 100);
  return { columns, rows, quarter, ...(box && { box }) };
}

/** The factor at a column and a row of the spectrum, as its frequency without a sign says. */
function factorAt({ columns, rows, quarter, box }: Filter, column: number, row: number): number {
  const [across, down] = [Math.min(column, columns - column), Math.min(row, rows - row)];
  const blur = box ? sinc(box.acrossColumns[column]! + box.acrossRows[row]!) : 1;
  return blur * quarter[down * ((columns >> 1) + 1) + across]!;
}

/** What a spectrum of 2 + 3 i everywhere becomes in batches of columns, compared place by place. */
function expectProducts(filter: Filter, batch: number): void {
  const { columns, rows } = filter;
  for (let first = 0; first < columns; first += batch) {
    const count = Math.min(batch, columns - first);
    const lanes = lanesFor(count);
    const scratch = scratchFor(rows, lanes);
    scratch.re.fill(2);
    scratch.im.fill(3);
    multiply(filter, scratch, first, count);
    for (let row = 0; row < rows; row++) {
      for (let k = 0; k < lanes; k++) {
        const factor = k < count ? factorAt(filter, first + k, row) : 1;
        expect(scratch.re[row * lanes + k]).toEqual(closeTo(2 * factor, single));
        expect(scratch.im[row * lanes + k]).toEqual(closeTo(3 * factor, single));
      }
    }
  }
}

describe.each([
  [8, 6],
  [9, 5],
  [12, 9],
  [1, 1],
])('a filter of %d × %d', (columns, rows) => {
  it.each([3, 4, 32])(
    'multiplies both parts of each frequency by its factor, and nothing else, %d columns at a time',
    (batch) => {
      expectProducts(filterOf(columns, rows), batch);
    },
  );

  it.each([5, 32])('multiplies by a box across any direction too, %d columns at a time', (batch) => {
    const acrossColumns = Float64Array.from({ length: columns }, (_, k) => (2 * k > columns ? k - columns : k) * 0.4);
    const acrossRows = Float64Array.from({ length: rows }, (_, k) => (2 * k > rows ? k - rows : k) * 0.7);
    expectProducts(filterOf(columns, rows, { acrossColumns, acrossRows }), batch);
  });
});
