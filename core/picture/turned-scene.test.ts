import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import type { Scene, Surface } from './scene.ts';
import { hoverflyHead } from './subjects/hoverfly-head.ts';
import { mostTurned, turnedDepth, turnedScene } from './turned-scene.ts';

const single = { relative: 1e-6, because: 'heights are kept to seven figures' };

function flat(columns: number, height: number): Surface {
  return {
    albedo: new Float32Array(3 * columns).fill(0.5),
    height: new Float32Array(columns).fill(height),
    coverage: new Float32Array(columns).fill(1),
  };
}

/** Eleven samples a tenth of a millimetre apart in one row: a flat thing 1 mm up, before a ground. */
const scene: Scene = { columns: 11, rows: 1, pitch: 0.1, depth: 1, surfaces: [flat(11, 1), flat(11, 0)] };

describe('turnedScene', () => {
  it('lifts a flat thing by the tangent, right towards the camera, about its middle', () => {
    const [front] = turnedScene(scene, 0.3).surfaces;
    expect(front!.height[5]).toBe(1);
    expect(front!.height[10]).toEqual(closeTo(1 + 0.5 * Math.tan(0.3), single));
    expect(front!.height[0]).toEqual(closeTo(1 - 0.5 * Math.tan(0.3), single));
  });

  it('leaves what is behind, what is covered and how it looks as they were', () => {
    const turned = turnedScene(scene, 0.3);
    expect(turned.surfaces[1]).toBe(scene.surfaces[1]);
    expect(turned.surfaces[0]!.albedo).toBe(scene.surfaces[0]!.albedo);
    expect(turned.surfaces[0]!.coverage).toBe(scene.surfaces[0]!.coverage);
    expect(scene.surfaces[0]!.height[0]).toBe(1);
  });

  it('is as deep as its highest place, and no deeper than is said of its subject', () => {
    expect(turnedScene(scene, 0.3).depth).toEqual(closeTo(1 + 0.5 * Math.tan(0.3), single));
    const head = hoverflyHead.scene({ columns: 90, rows: 70, pitch: 0.04, seed: 1 });
    expect(turnedScene(head, mostTurned).depth).toBeLessThanOrEqual(turnedDepth(hoverflyHead, mostTurned));
  });

  it('is the scene itself without a turn', () => {
    expect(turnedScene(scene, 0)).toBe(scene);
  });

  it('refuses a turn that would hide what it shows', () => {
    expect(() => turnedScene(scene, 0.5)).toThrow(OutOfRange);
    expect(() => turnedScene(scene, 0.5)).toThrow(/subject-tilt is 0.5/);
    expect(() => turnedScene(scene, NaN)).toThrow(OutOfRange);
  });
});
