import { expect, it } from 'vitest';
import { readdirSync } from 'node:fs';
import { referenceRows } from './all.ts';

const rows = referenceRows();

it('holds a number of every outside check', () => {
  const folders = readdirSync(import.meta.dirname, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect([...new Set(rows.map(({ check }) => check))].sort()).toEqual(folders.map(({ name }) => name).sort());
});

it('shows a deviation within tolerance beside every number, and never NaN', () => {
  for (const row of rows) {
    const where = `${row.check}, ${row.id}, ${row.label}`;
    expect(row.ours, where).not.toBeNaN();
    expect(row.deviationInTolerances, where).toBeLessThanOrEqual(1);
    if (row.relativeDeviation !== null) expect(Number.isFinite(row.relativeDeviation), where).toBe(true);
  }
});

it('has no relative deviation only where the expected number is zero or infinite', () => {
  for (const { expected, relativeDeviation } of rows) {
    expect(relativeDeviation === null).toBe(expected === 0 || expected === Infinity);
  }
});
