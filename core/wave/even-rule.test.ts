import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { evenRule } from './even-rule.ts';

const integral = (count: number, of: (x: number) => number) => {
  const { nodes, weights } = evenRule(count);
  return nodes.reduce((sum, x, k) => sum + (weights[k] as number) * of(x), 0);
};

describe('evenRule', () => {
  it('is exact for even powers up to 4 × points − 2, and not beyond', () => {
    const rounding = { absolute: 1e-14, because: 'rounding of the weights' };
    for (let power = 0; power <= 14; power += 2) {
      expect(integral(4, (x) => x ** power)).toEqual(closeTo(1 / (power + 1), rounding));
    }
    expect(Math.abs(integral(4, (x) => x ** 16) - 1 / 17)).toBeGreaterThan(1e-9);
  });

  it('follows 100 radians of a square with 40 points', () => {
    // ∫ cos(100 x²) dx from 0 to 1, by 20000 panels of Simpson's rule.
    const panels = 20000;
    const simpson = Array.from({ length: panels + 1 }, (_, k) => k).reduce((sum, k) => {
      const weight = k === 0 || k === panels ? 1 : k % 2 ? 4 : 2;
      return sum + (weight * Math.cos(100 * (k / panels) ** 2)) / (3 * panels);
    }, 0);
    expect(integral(40, (x) => Math.cos(100 * x * x))).toEqual(
      closeTo(simpson, { absolute: 1e-8, because: 'the rule’s own error, Simpson’s being smaller' }),
    );
  });

  it('keeps its weights adding up to one with a thousand points', () => {
    expect(integral(1000, () => 1)).toEqual(
      closeTo(1, { absolute: 1e-11, because: 'rounding in recurrences of 2000 terms' }),
    );
  });

  it('gives neighbouring needs one and the same rule', () => {
    expect(evenRule(5)).toBe(evenRule(8));
    expect(evenRule(5).nodes).toHaveLength(8);
  });
});
