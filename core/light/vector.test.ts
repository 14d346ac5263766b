import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { across, cross, direction, dot, length, scaled, sum } from './vector.ts';

const rounding = { absolute: 1e-15, because: 'a few roundings' };

describe('vectors', () => {
  it('add, with a factor if one is given, and scale', () => {
    expect(sum([1, 2, 3], [10, 20, 30])).toEqual([11, 22, 33]);
    expect(sum([1, 2, 3], [10, 20, 30], -1)).toEqual([-9, -18, -27]);
    expect(scaled([1, -2, 3], 2)).toEqual([2, -4, 6]);
  });

  it('multiply by the right-hand rule: x × y is z', () => {
    expect(cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
    expect(cross([0, 1, 0], [0, 0, 1])).toEqual([1, 0, 0]);
    expect(cross([0, 0, 1], [1, 0, 0])).toEqual([0, 1, 0]);
    expect(dot([1, 2, 3], [4, 5, 6])).toBe(32);
    expect(length([2, 3, 6])).toBe(7);
  });
});

describe('direction', () => {
  it('has length one', () => {
    expect(direction([0, 3, 4])).toEqual([0, closeTo(0.6, rounding), closeTo(0.8, rounding)]);
  });

  it.each([[[0, 0, 0]], [[Infinity, 0, 0]], [[NaN, 0, 0]]] as const)('refuses %s', (vector) => {
    expect(() => direction(vector)).toThrow(OutOfRange);
  });
});

describe('across', () => {
  it('keeps what is square to the axis', () => {
    expect(across([0, 0, 1], [3, 4, 5])).toEqual([closeTo(0.6, rounding), closeTo(0.8, rounding), 0]);
  });

  it.each([[[1, 0, 0]], [[0, 1, 0]], [[0, 0, 1]], [[0.6, 0, 0.8]]] as const)(
    'finds a direction square to %s even for a vector along it',
    (axis) => {
      const square = across(axis, scaled(axis, 7));
      expect(dot(square, axis)).toEqual(closeTo(0, rounding));
      expect(length(square)).toEqual(closeTo(1, rounding));
    },
  );

  it('stays square to the axis for a vector almost along it', () => {
    const axis = direction([1e-11, -1, 1e-12]);
    expect(dot(across(axis, [0, 1, 0]), axis)).toEqual(closeTo(0, rounding));
  });
});
