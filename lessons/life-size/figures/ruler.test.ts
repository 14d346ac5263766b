import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { inkShare, markWidth, rulerMarks, rulers } from './ruler.ts';

const labels = (...given: Parameters<typeof rulerMarks>) => rulerMarks(...given).numbers.map(({ label }) => label);

describe('the marks of a ruler', () => {
  it('stand where their millimetres lie, whatever the enlargement', () => {
    for (const pixels of [0.05, 1, 7.5, 300]) {
      for (const { x, label } of rulerMarks(rulers.mm, pixels, 500, 12).numbers) {
        expect(x).toEqual(
          closeTo(parseFloat(label) * pixels, { relative: 1e-12, because: 'rounding of the arithmetic only' }),
        );
      }
    }
  });

  it('begin with the unit and never let numbers run together', () => {
    for (const ruler of [rulers.mm, rulers.in]) {
      for (let pixels = 0.06; pixels < 400; pixels *= 1.1) {
        const { numbers } = rulerMarks(ruler, pixels, 600, 12);
        expect(numbers[0]!.label).toBe(`0 ${ruler.unit}`);
        for (const [index, { x }] of numbers.slice(1).entries()) expect(x - numbers[index]!.x).toBeGreaterThan(40);
      }
    }
  });

  it('are thinned out rather than drawn closer than three pixels', () => {
    for (let pixels = 0.06; pixels < 400; pixels *= 1.1) {
      const count = rulerMarks(rulers.mm, pixels, 600, 12).path.split('M').length - 1;
      expect(count).toBeLessThanOrEqual(201);
      expect(count).toBeGreaterThan(0);
    }
  });

  it('read in inches in whole numbers and quarters', () => {
    expect(labels(rulers.in, 8, 300, 12)).toEqual(['0 in', '1/4', '1/2', '3/4', '1', '1 1/4']);
    expect(labels(rulers.in, 2, 300, 12)).toEqual(['0 in', '1', '2', '3', '4', '5']);
  });
});

describe('the share of ink that a pixel sees', () => {
  it('is all on a mark, nothing between two, and half where the edge halves the pixel', () => {
    expect(inkShare(rulers.mm, 0.02, 0.08)).toBe(1);
    expect(inkShare(rulers.mm, 0.4, 0.6)).toBe(0);
    const half = inkShare(rulers.mm, -0.01, 0.01);
    expect(half).toEqual(closeTo(0.5, { relative: 1e-9, because: 'rounding of the arithmetic only' }));
  });

  it('is the marks’ share of the ruler for a pixel many millimetres wide', () => {
    const share = inkShare(rulers.mm, 0.3, 1000.3);
    expect(share).toEqual(closeTo(markWidth, { relative: 1e-9, because: 'a whole number of marks lies under it' }));
  });

  it('adds up: two halves of a stretch see what the whole sees', () => {
    for (let from = -3; from < 3; from += 0.07) {
      const whole = inkShare(rulers.in, from, from + 0.5);
      const halves = (inkShare(rulers.in, from, from + 0.25) + inkShare(rulers.in, from + 0.25, from + 0.5)) / 2;
      expect(whole).toEqual(closeTo(halves, { absolute: 1e-12, because: 'rounding of the arithmetic only' }));
    }
  });
});
