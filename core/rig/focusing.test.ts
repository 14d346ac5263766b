import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, lens28, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { assembleRig } from './assemble.ts';
import { extensionFor, focusMagnificationFor, focusRange } from './focusing.ts';
import { ImpossibleChain } from './impossible-chain.ts';
import type { Part } from './part.ts';
import { solveRig } from './solve.ts';

const bellows: Part = { part: 'bellows', extension: 60, shortest: 40, longest: 150 };
const exact = { relative: 1e-11, because: 'halved down to 1e-13, and rounding' };

describe('focusRange', () => {
  it('reaches from infinity to the lens’s own closest without a ring', () => {
    const { farthest, closest } = focusRange([camera, on(lens50)]);
    expect(farthest.sharpPlane).toBe('at infinity');
    expect(closest).toMatchObject({ magnification: expect.closeTo(0.15, 12) });
  });

  it('loses infinity to a ring: from e/f to m₀ + e/f', () => {
    const { farthest, closest } = focusRange([camera, ring(25), on(lens50, { at: 0.07 })]);
    expect(farthest).toMatchObject({ magnification: expect.closeTo(0.5, 12) });
    expect(closest).toMatchObject({ magnification: expect.closeTo(0.65, 12) });
  });

  it('draws bellows out with the lens', () => {
    const { farthest, closest } = focusRange([camera, bellows, on(lens50)]);
    expect(farthest).toMatchObject({ magnification: expect.closeTo(0.8, 12) });
    expect(closest).toMatchObject({ magnification: expect.closeTo(3.15, 12) });
  });

  it('focuses the lens nearest the camera and leaves a reversed one on it alone', () => {
    const { farthest, closest } = focusRange([camera, on(lens50), ring(3), on(lens28, { reversed: true })]);
    expect(farthest).toMatchObject({ magnification: expect.closeTo(50 / 28, 12) });
    expect(closest).not.toEqual(farthest);
  });
});

describe('focusMagnificationFor', () => {
  it('is what is missing after ring and converter', () => {
    const converter: Part = { part: 'converter', converterFactor: 2, converterLength: 40, registerDistance: 44 };
    expect(focusMagnificationFor([camera, converter, ring(25), on(lens50)], 3, 1.2)).toEqual(closeTo(0.1, exact));
  });

  it('gives the wanted magnification of any chain back', () => {
    const parts = [camera, ring(12), on(lens50), { part: 'close-up lens', closeUpPower: 4 } as Part];
    const setting = focusMagnificationFor(parts, 2, 0.55);
    const solved = solveRig(assembleRig([camera, ring(12), on(lens50, { at: setting! }), parts[3]!]));
    expect(solved).toMatchObject({ magnification: expect.closeTo(0.55, 11) });
  });

  it('finds the ends of the range as well', () => {
    expect(focusMagnificationFor([camera, ring(25), on(lens50)], 2, 0.5)).toBe(0);
    expect(focusMagnificationFor([camera, ring(25), on(lens50)], 2, 0.65)).toBe(0.15);
  });

  it('is null where the lens does not reach it', () => {
    expect(focusMagnificationFor([camera, ring(25), on(lens50)], 2, 0.4)).toBeNull();
    expect(focusMagnificationFor([camera, ring(25), on(lens50)], 2, 0.7)).toBeNull();
  });

  it('refuses to focus a ring, and a magnification of zero, by name', () => {
    expect(() => focusMagnificationFor([camera, ring(25), on(lens50)], 1, 0.6)).toThrow(ImpossibleChain);
    expect(() => focusMagnificationFor([camera, ring(25), on(lens50)], 2, 0)).toThrow(/magnification is 0/);
  });
});

describe('extensionFor', () => {
  it('is f (m − m₀) on a lens alone, and f (1 + m) − R − h on one turned round', () => {
    expect(extensionFor([camera, ring(0), on(lens50, { at: 0.1 })], 1, 1)).toEqual(closeTo(45, exact));
    const turned = on(lens28, { reversed: true });
    expect(extensionFor([camera, ring(7), turned], 1, 2.5)).toEqual(closeTo(28 * 3.5 - 44 - 34, exact));
  });

  it('stays within the bellows’ draw, ends included', () => {
    const parts = [camera, bellows, on(lens50)];
    expect(extensionFor(parts, 1, 2)).toEqual(closeTo(100, exact));
    expect(extensionFor(parts, 1, 3)).toEqual(closeTo(150, exact));
    expect(extensionFor(parts, 1, 3.1)).toBeNull();
    expect(extensionFor(parts, 1, 0.7)).toBeNull();
  });

  it('is what bellows without a draw have, if that is what is wanted', () => {
    const stiff: Part = { part: 'bellows', extension: 50, shortest: 50, longest: 50 };
    expect(extensionFor([camera, stiff, on(lens50)], 1, 1)).toBe(50);
    expect(extensionFor([camera, stiff, on(lens50)], 1, 1.1)).toBeNull();
  });

  it('is null where it would be negative, or where length changes nothing', () => {
    expect(extensionFor([camera, ring(10), on(lens50, { at: 0.1 })], 1, 0.05)).toBeNull();
    expect(extensionFor([camera, on(lens50), ring(3), on(lens28, { reversed: true })], 2, 1)).toBeNull();
  });

  it('refuses to stretch a lens, and a magnification that is no number, by name', () => {
    expect(() => extensionFor([camera, ring(10), on(lens50)], 2, 1)).toThrow(ImpossibleChain);
    expect(() => extensionFor([camera, ring(10), on(lens50)], 1, NaN)).toThrow(/magnification is NaN/);
  });
});
