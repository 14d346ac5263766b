import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualConditions } from '#site/bench/conditions.ts';
import { writeChain } from '#site/chain/chain-text.ts';
import { crateThings } from '#site/chain/crate-things.ts';
import { lineNames } from './card.ts';
import {
  em,
  layoutOf,
  padding,
  papers,
  placeOn,
  sheetsOf,
  sizes,
  smallestType,
  type Paper,
  type Size,
} from './size.ts';
import { firstState, readList, readState, writeState, type CardState } from './state.ts';
import { cellText, conditionsInWords, labelOf, lines, shutterText } from './words.ts';

const lenses = [...crateThings.values()].filter(({ kind }) => kind === 'lens');
const anyState = fc.record<CardState>({
  chains: fc.array(
    fc.constantFrom(...lenses).map((thing) => [{ thing: crateThings.get('body-36')! }, { thing }]),
    { minLength: 1, maxLength: 4 },
  ),
  magnifications: fc.uniqueArray(fc.constantFrom(0.1, 0.25, 1, 2), { maxLength: 3 }).map((list) => list.sort()),
  fNumbers: fc.uniqueArray(fc.constantFrom(2.8, 4, 8, 9), { minLength: 1 }).map((list) => list.sort((a, b) => a - b)),
  lines: fc.subarray([...lineNames], { minLength: 1 }),
  unit: fc.constantFrom('mm', 'in'),
  size: fc.constantFrom(...(Object.keys(sizes) as Size[])),
  paper: fc.constantFrom(...(Object.keys(papers) as Paper[])),
  apart: fc.boolean(),
  conditions: fc.record({
    ...Object.fromEntries(Object.entries(usualConditions).map(([name, value]) => [name, fc.constant(value)])),
    stabilisation: fc.constantFrom(0, 2),
  }) as fc.Arbitrary<CardState['conditions']>,
});

describe('the address of a card', () => {
  it('says all of it', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const { state: back, notices } = readState(writeState(state));
        expect(notices).toEqual([]);
        expect({ ...back, chains: back.chains.map(writeChain) }).toEqual({
          ...state,
          chains: state.chains.map(writeChain),
        });
      }),
      { seed: 1 },
    );
  });

  it.each([
    ['?at=0.5,banana', '“0.5,banana” as magnifications'],
    ['?f=8,-1', '“8,-1” as f-numbers'],
    ['?lines=depth-of-field,price', 'a line “price”'],
    ['?size=a9', '“size” to “a9”'],
    ['?chain=body-36,sofa', '“sofa”'],
    ['?wavelength=5', 'wavelength'],
  ])('says of %s what is wrong, and keeps the rest', (search, words) => {
    const { state, notices } = readState(`${search}&unit=in`);
    expect(notices.join(' ')).toContain(words);
    expect(state.unit).toBe('in');
    expect(state.lines.length).toBeGreaterThan(0);
  });

  it('never fails, whatever it is', () => {
    const names = ['chain', 'at', 'f', 'lines', 'unit', 'size', 'paper', 'wavelength'];
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.string({ unit: 'binary' }), (name, text) => {
        const { state } = readState(`?${name}=${encodeURIComponent(text.toWellFormed())}`);
        expect(state.chains.length).toBeGreaterThan(0);
        expect(state.fNumbers.length).toBeGreaterThan(0);
      }),
      { seed: 1 },
    );
  });
});

describe('a list as somebody types it', () => {
  it('is read with spaces, semicolons, ratios and decimal commas', () => {
    expect(readList('magnification', '1:2 0,25; 2×', 12)).toEqual([0.25, 0.5, 2]);
    expect(readList('f-number', 'f/8, f/11 5,6', 12)).toEqual([5.6, 8, 11]);
    expect(readList('magnification', '  ', 12)).toEqual([]);
  });

  it('is refused in words', () => {
    expect(readList('f-number', '8 banana', 12)).toContain('banana');
    expect(readList('f-number', '8 11 16', 2)).toContain('2 of them at most');
  });
});

describe('the layout', () => {
  const content = (blocks: number, columns: number, rows = 8) => ({
    headings: Array.from({ length: blocks }, () => [30, 40]),
    rows,
    columns,
    notes: [40, 200, 80, 150],
  });

  it('keeps type at 7 points or above, every block once and in order, and each card within its size', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(sizes) as Size[])),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 2, max: 8 }),
        (size, blocks, columns, rows) => {
          const layout = layoutOf(sizes[size], content(blocks, columns, rows));
          if (layout.kind !== 'cards') throw new Error('eight columns find room');
          expect(layout.type).toBeGreaterThanOrEqual(smallestType);
          expect(layout.cards.flat()).toEqual(Array.from({ length: blocks }, (_, at) => at));
          const millimetres = (layout.type * 25.4) / 72;
          const { width, height } = sizes[size];
          expect((em.label + columns * em.column) * millimetres).toBeLessThanOrEqual(width - 2 * padding);
          const tallest = Math.max(...layout.cards.map((card) => card.length));
          expect(tallest * (2 * em.line + rows * em.row) * millimetres).toBeLessThanOrEqual(height - 2 * padding);
        },
      ),
      { seed: 1 },
    );
  });

  it('gives what is to stand apart a card of its own, however little it is', () => {
    const layout = layoutOf(sizes.a4, { ...content(4, 7), apart: [0, 0, 1, 2] });
    expect(layout).toMatchObject({ kind: 'cards', cards: [[0, 1], [2], [3]] });
  });

  it('fills a sheet: four quarters, two halves, none larger than the sheet, and no two over each other', () => {
    for (const [paper, sheet] of [
      ['a4-full', sizes.a4],
      ['letter-full', sizes.letter],
    ] as const) {
      const four = placeOn('a6', paper);
      expect([four.columns * four.card.width <= sheet.width, four.rows * four.card.height <= sheet.height]).toEqual([
        true,
        true,
      ]);
      expect(four.columns * four.rows).toBe(4);
      const two = placeOn('a5', paper);
      expect([two.columns * two.card.width <= sheet.height, two.rows * two.card.height <= sheet.width]).toEqual([
        true,
        true,
      ]);
      expect(two.columns * two.rows).toBe(2);
    }
    expect(placeOn('a4', 'a4-full')).toMatchObject({ columns: 1, rows: 1, isFull: false, isCut: false });
  });

  it('puts the same cards once more where a full sheet has room left, and none where it is not to be full', () => {
    const four = placeOn('a6', 'a4-full');
    expect(sheetsOf(['a'], four)).toEqual([['a', 'a', 'a', 'a']]);
    expect(sheetsOf(['a', 'b', 'c'], four)).toEqual([['a', 'b', 'c', 'a']]);
    expect(sheetsOf(['a', 'b', 'c', 'd', 'e'], four)).toEqual([
      ['a', 'b', 'c', 'd'],
      ['e', 'e', 'e', 'e'],
    ]);
    expect(sheetsOf(['a'], placeOn('a6', 'a4'))).toEqual([['a']]);
    expect(sheetsOf([], four)).toEqual([]);
  });

  it('says how many columns there is room for', () => {
    expect(layoutOf(sizes.a6, content(1, 12))).toEqual({ kind: 'too wide', columns: 8 });
    expect(layoutOf(sizes.a4, content(1, 12)).kind).toBe('cards');
  });

  it('takes larger type where there is room', () => {
    const type = (size: Size) => (layoutOf(sizes[size], content(2, 7)) as { type: number }).type;
    expect(type('a5')).toBeGreaterThan(type('a6'));
  });
});

describe('what stands in a cell', () => {
  it.each([
    [1 / 137, '1/160'],
    [1 / 160, '1/160'],
    [1 / 9000, '<1/8000'],
    [0.5, '0.5'],
    [45, '30'],
    [1000, '>30'],
  ])('of %d s is the mark %s, never a longer time', (time, text) => {
    expect(shutterText(time)).toBe(text);
  });

  it('is three figures in the unit that is asked for, ∞ without end, a dash without a number', () => {
    expect(cellText('depth-of-field', 1.0567, 'mm')).toBe('1.06');
    expect(cellText('depth-of-field', 25.4, 'in')).toBe('1');
    expect(cellText('depth-of-field', Infinity, 'mm')).toBe('∞');
    expect(cellText('light-loss', undefined, 'mm')).toBe('–');
    expect(cellText('light-loss', -0.34, 'mm')).toBe('−0.3');
  });

  it('has a name that finds room before the columns', () => {
    for (const name of lineNames) expect(labelOf(name, 'mm').length * em.character).toBeLessThanOrEqual(em.label);
    expect(Object.keys(lines)).toEqual([...lineNames]);
  });

  it('leans on conditions that the card says', () => {
    expect(conditionsInWords(firstState().conditions, [0.02])).toBe(
      'c 20\u202fµm, λ 550\u202fnm, steps share 30\u202f%, held elbows on knees, subject at rest',
    );
  });
});
