import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { hoverflyHead } from './hoverfly-head.ts';
import type { Lamp } from './lamp.ts';
import { shadeBy } from './lamps.ts';
import type { Direction } from './lamp.ts';

const at = (degrees: number): Direction => {
  const angle = (Math.PI / 180) * degrees;
  return [Math.sin(angle), 0, Math.cos(angle)];
};
const small = (degrees: number): Lamp => ({ direction: at(degrees), angularSize: 0.2 });
const ring: Lamp = { direction: [0, 0, 1], angularSize: 1.8, hole: 1.1 };

describe('shading by round lights', () => {
  it('goes with the cosine where all of a light stands above the horizon', () => {
    const shade = shadeBy([small(0)]);
    const rest = 0.02;
    expect((shade(at(60)) - rest) / (shade(at(0)) - rest)).toEqual(
      closeTo(0.5, { relative: 1e-9, because: 'the cosine of 60°' }),
    );
  });

  it('leaves a side dark that a small light does not reach, and lights it where the light is wide', () => {
    const [hard, soft] = [shadeBy([small(-45)]), shadeBy([{ direction: at(-45), angularSize: 1.9 }])];
    expect(hard(at(60))).toBe(0.02);
    expect(soft(at(60))).toBeGreaterThan(0.05);
  });

  it('is alike on both sides of a ring, and of two lights', () => {
    for (const lamps of [[ring], [small(-50), small(50)]]) {
      const shade = shadeBy(lamps);
      expect(shade(at(-40))).toEqual(closeTo(shade(at(40)), { relative: 1e-12, because: 'a few roundings' }));
    }
  });

  it('is never more than one, nor nothing', () => {
    const shade = shadeBy([small(-80), small(80)]);
    for (let turn = -90; turn <= 90; turn++) {
      expect(shade(at(turn))).toBeGreaterThan(0);
      expect(shade(at(turn))).toBeLessThanOrEqual(1);
    }
  });
});

describe('the eyes of a hoverfly', () => {
  /** Stretches of glint along the row through the middle of the right eye, from left to right. */
  function glints(lamps: readonly Lamp[]): number {
    const [columns, rows] = [400, 3];
    const scene = hoverflyHead.scene({ columns, rows, pitch: 0.004, seed: 1, lamps, centre: { x: 0.74, y: -0.12 } });
    const blue = scene.surfaces[1]!.albedo.subarray(2 * columns * rows + columns, 2 * columns * rows + 2 * columns);
    let count = 0;
    blue.forEach((value, column) => {
      if (value > 0.8 && !(blue[column - 1]! > 0.8)) count++;
    });
    return count;
  }

  it('mirror one light once, two twice, and both sides of a ring', () => {
    expect([[small(-30)], [small(-30), small(30)], [ring]].map(glints)).toEqual([1, 2, 2]);
  });
});
