import { describe, expect, it } from 'vitest';
import { closeTo } from './close-to.ts';

const because = 'test';

describe('closeTo', () => {
  it('accepts what lies within the margin and refuses what lies beyond', () => {
    expect(100.9).toEqual(closeTo(100, { relative: 0.01, because }));
    expect(101.1).not.toEqual(closeTo(100, { relative: 0.01, because }));
    expect(-0.4).toEqual(closeTo(0, { absolute: 0.5, because }));
    expect(-0.6).not.toEqual(closeTo(0, { absolute: 0.5, because }));
  });

  it('accepts nothing but infinity for infinity', () => {
    expect(Infinity).toEqual(closeTo(Infinity, { relative: 0.01, because }));
    expect(1e300).not.toEqual(closeTo(Infinity, { relative: 0.01, because }));
    expect(-Infinity).not.toEqual(closeTo(Infinity, { relative: 0.01, because }));
  });

  it('refuses what is no number', () => {
    expect(NaN).not.toEqual(closeTo(0, { absolute: 1, because }));
    expect('0').not.toEqual(closeTo(0, { absolute: 1, because }));
  });
});
