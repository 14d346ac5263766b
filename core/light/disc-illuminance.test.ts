import { describe, expect, it } from 'vitest';
import { illuminanceFromDisc } from '#core/exposure/illuminance-from-disc.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { discIlluminance } from './disc-illuminance.ts';
import type { DiscSource } from './flat-source.ts';

const disc: DiscSource = { shape: 'disc', sourceSize: 60, centre: [0, 0, 40], facing: [0, 0, -1], luminance: 1 };
const facingIt = { point: [0, 0, 0], normal: [0, 0, 1] } as const;
const rounding = { relative: 1e-14, because: 'a few roundings' };

describe('discIlluminance', () => {
  it('is π a²/(a² + d²) on the axis', () => {
    expect(discIlluminance(disc, facingIt)).toEqual(closeTo((Math.PI * 900) / 2500, rounding));
  });

  it('is on the axis, facing the disc, what the formula of the broad light says', () => {
    const formula = illuminanceFromDisc({ luminance: 1, sourceSize: disc.sourceSize, flashDistance: 40 });
    expect(discIlluminance(disc, facingIt)).toEqual(closeTo(formula, rounding));
  });

  it('falls with the cosine of the tilt as long as the whole disc is above the horizon', () => {
    const tilted = { ...facingIt, normal: [0, 0.6, 0.8] } as const;
    expect(discIlluminance(disc, tilted)).toEqual(closeTo((0.8 * Math.PI * 900) / 2500, rounding));
  });

  it('passes on without a step as the horizon comes to cut the disc', () => {
    const tiltedBy = (angle: number) =>
      discIlluminance(disc, { ...facingIt, normal: [0, Math.sin(angle), Math.cos(angle)] });
    const touching = Math.atan(40 / 30);
    const [before, after] = [tiltedBy(touching - 1e-9), tiltedBy(touching + 1e-9)];
    expect(after).toEqual(closeTo(before, { relative: 1e-8, because: 'two tilts a billionth apart' }));
  });

  it('is half of what a disc seen edge-on from its axis would give a square surface, by symmetry', () => {
    const edgeways = discIlluminance(disc, { ...facingIt, normal: [1, 0, 0] });
    const opposite = discIlluminance(disc, { ...facingIt, normal: [-1, 0, 0] });
    expect(edgeways).toBeGreaterThan(0.1);
    expect(opposite).toEqual(closeTo(edgeways, rounding));
  });

  it('is nothing for a surface turned away', () => {
    expect(discIlluminance(disc, { ...facingIt, normal: [0, 0, -1] })).toBe(0);
  });

  it('is refused on the rim, where there is no one answer, and is a number all about it', () => {
    const beside = (out: number, ahead: number, normal: readonly [number, number, number]) => () =>
      discIlluminance(disc, { point: [30 + out, 0, 40 - ahead], normal });
    for (const out of [0, 1e-9, -1e-9, 1e-300]) {
      expect(beside(out, 1e-12, [0, 0, 1])).toThrow(OutOfRange);
      expect(beside(out, 1e-12, [0, 0, 1])).toThrow(/flash-distance is .* from the rim/);
    }
    for (const [out, ahead] of [
      [0, 1e-4],
      [1e-4, 1e-200],
      [-1e-4, 1e-12],
      [-1e-4, 1e-4],
    ] as const) {
      for (const normal of [
        [0, 0, 1],
        [1, 0, 0],
        [-0.6, 0, 0.8],
        [0, 1, 0],
      ] as const) {
        const shining = beside(out, ahead, normal)();
        expect(shining >= 0 && shining <= Math.PI * (1 + 1e-9), `${out} ${ahead} ${normal}: ${shining}`).toBe(true);
      }
    }
  });

  it('goes with one over the distance squared far away', () => {
    const far = discIlluminance({ ...disc, centre: [0, 0, 1e6] }, facingIt);
    expect(far).toEqual(closeTo((Math.PI * 900) / 1e12, { relative: 1e-8, because: 'the next term is (a/d)²' }));
  });
});
