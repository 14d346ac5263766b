import { describe, expect, it } from 'vitest';
import { compare, inputsInBaseUnits, readCases, type ReferenceCase } from './reference-case.ts';

const row = {
  id: 'X1',
  title: 'camera lens',
  kind: 'published',
  sourceText: 'read',
  source: 'a book, p. 1',
  inputs: { focalLength: '5 cm', fNumber: 8 },
  expected: { imageDistance: '5.08 cm' },
  tolerance: 0.005,
  because: 'printed to two decimals',
} as const satisfies ReferenceCase;

describe('readCases', () => {
  it('refuses an empty list', () => {
    expect(() => readCases([])).toThrow(/at least one case/);
  });

  it.each([
    ['no source', { source: '' }, /'source'/],
    ['no reason for the tolerance', { because: ' ' }, /'because'/],
    ['an unknown kind', { kind: 'rumour' }, /'kind' is rumour; accepted: published/],
    ['nothing expected', { expected: {} }, /at least one value/],
    ['an expected value that is no number', { expected: { imageDistance: '5.08 furlongs' } }, /texts like "5.08 cm"/],
    ['an expected value without tolerance', { tolerance: { focalLength: 1 } }, /says nothing about 'imageDistance'/],
  ])('names the row with %s', (_, change, message) => {
    expect(() => readCases([{ ...row, ...change }], 'some/cases.json')).toThrow(message);
    expect(() => readCases([{ ...row, ...change }], 'some/cases.json')).toThrow(/some\/cases.json, row 1 \(X1\)/);
  });
});

describe('inputsInBaseUnits', () => {
  it('reads lengths into mm, in lists too, and leaves other texts alone', () => {
    const inputs = { subjectDistance: ['3 m', '2 in'], fNumber: 8, time: '1/125' };
    expect(inputsInBaseUnits(inputs)).toEqual({ subjectDistance: [3000, 50.8], fNumber: 8, time: '1/125' });
  });
});

describe('compare', () => {
  it('brings ours back into the unit that the source prints', () => {
    const [compared] = compare(row, () => ({ imageDistance: 50.847 }));
    expect(compared).toEqual({ label: 'imageDistance', unit: 'cm', expected: 5.08, ours: 5.0847, allowed: 0.005 });
  });

  it('numbers the members of a list', () => {
    const list = { ...row, expected: { fNumbers: [1, 1.4] }, tolerance: { relative: 0.5 } };
    expect(compare(list, () => ({ fNumbers: [1, 1.5] })).map(({ label, allowed }) => [label, allowed])).toEqual([
      ['fNumbers[0]', 0.5],
      ['fNumbers[1]', 0.7],
    ]);
  });

  it('allows no margin around infinity', () => {
    const infinite = { ...row, expected: { farLimit: 'Infinity' }, tolerance: { relative: 0.1 } };
    expect(compare(infinite, () => ({ farLimit: 5 }))[0]).toMatchObject({ expected: Infinity, ours: 5, allowed: 0 });
  });

  it('refuses missing and extra keys and lists of another length', () => {
    expect(() => compare(row, () => ({}))).toThrow(/expects {imageDistance} but ours gives {}/);
    expect(() => compare(row, () => ({ imageDistance: 1, magnification: 1 }))).toThrow(
      /gives {imageDistance, magnification}/,
    );
    expect(() => compare(row, () => ({ imageDistance: [1, 2] }))).toThrow(/1 expected, 2 ours/);
  });
});
