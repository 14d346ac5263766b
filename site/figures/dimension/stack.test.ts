import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dimensionLabelBox, levelPitch, stackDimensions, type Span } from './stack.ts';

const span = (name: string, from: number, to: number): Span => ({
  name,
  letter: 's',
  value: '12 mm',
  from,
  to,
  fromY: 0,
});

describe('dimensions', () => {
  it('that do not meet share the innermost level', () => {
    expect(stackDimensions([span('a', 0, 150), span('b', 250, 400)], 14, 800).map(({ level }) => level)).toEqual([
      0, 0,
    ]);
  });

  it('that overlap step outwards, the shorter inside', () => {
    const placed = stackDimensions([span('long', 0, 400), span('short', 50, 250)], 14, 800);
    expect(placed.map(({ name, level }) => [name, level])).toEqual([
      ['short', 0],
      ['long', 1],
    ]);
  });

  it('too short for their value carry it outside, on the side where there is room', () => {
    const [inMiddle] = stackDimensions([span('a', 100, 110)], 14, 800);
    const [atEdge] = stackDimensions([span('a', 780, 790)], 14, 800);
    expect(inMiddle!.fitsInside).toBe(false);
    expect(inMiddle!.labelX).toBeGreaterThan(110);
    expect(atEdge!.labelX).toBeLessThan(780);
  });

  it('too short for their value carry it on the left where that is asked for and there is room', () => {
    const onLeft = (from: number) =>
      stackDimensions([{ ...span('a', from, from + 10), beside: 'left' }], 14, 800)[0]!.labelX;
    expect(onLeft(300)).toBeLessThan(300);
    expect(onLeft(20)).toBeGreaterThan(30);
  });

  it('with no room beside them carry their value over the line, inside the sheet', () => {
    const [placed] = stackDimensions([{ ...span('a', 45, 55), value: '12.3 mm behind' }], 14, 150);
    expect(placed!.isOver).toBe(true);
    expect(placed!.labelX - placed!.labelWidth / 2).toBeGreaterThanOrEqual(0);
    expect(placed!.labelX + placed!.labelWidth / 2).toBeLessThanOrEqual(150);
  });

  it('have boxes that the next level clears', () => {
    const [placed] = stackDimensions([span('a', 100, 110)], 14, 800);
    const [wide] = stackDimensions([span('b', 100, 400)], 14, 800);
    const beside = dimensionLabelBox(placed!, 100, 14);
    const over = dimensionLabelBox(wide!, 100 + levelPitch * 14, 14);
    expect(beside.bottom).toBeLessThanOrEqual(over.top);
  });

  it('never have labels on top of each other', () => {
    const spans = fc.array(fc.tuple(fc.integer({ min: 0, max: 600 }), fc.integer({ min: 0, max: 600 })), {
      maxLength: 6,
    });
    fc.assert(
      fc.property(spans, (ends) => {
        const placed = stackDimensions(
          ends.map(([from, to], index) => span(String(index), from, to)),
          14,
          600,
        );
        for (const one of placed) {
          for (const other of placed) {
            if (one === other || one.level !== other.level) continue;
            expect(Math.abs(one.labelX - other.labelX)).toBeGreaterThanOrEqual(
              (one.labelWidth + other.labelWidth) / 2 - 1e-9,
            );
          }
        }
      }),
    );
  });
});
