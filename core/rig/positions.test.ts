import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildableRigs } from '#tests/support/chains.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, lens28, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { assembleRig } from './assemble.ts';
import type { Part } from './part.ts';
import { rigPositions, type RigPositions } from './positions.ts';
import { rigSpans } from './spans.ts';

const positions = (...parts: Part[]) => rigPositions(assembleRig([camera, ...parts]));
const rounding = { relative: 1e-12, because: 'rounding' };
const chains = { relative: 1e-7, because: 'long chains of which little is left take digits away' };

/** Runs over rigs whose sharp plane can be pointed at. */
function overSharp(holds: (found: RigPositions & { readonly sharpPlane: number }) => void) {
  let count = 0;
  fc.assert(
    fc.property(buildableRigs, (rig) => {
      const found = rigPositions(rig);
      if (found.sharpPlane === null || found.sharpPlane > 1e6) return;
      count++;
      holds({ ...found, sharpPlane: found.sharpPlane });
    }),
    { seed: 12, numRuns: 2000 },
  );
  expect(count).toBeGreaterThan(500);
}

describe('rigPositions', () => {
  it('says where everything stands for a 36 mm ring on 50 mm focused to 0.1', () => {
    const found = positions(ring(36), on(lens50, { at: 0.1 }));
    const m = 0.82;
    const rear = 50 * (1 + m);
    const [body, tube, lens] = found.parts;
    expect(body).toMatchObject({ from: 0, to: 44 });
    expect(tube).toMatchObject({ from: 44, to: 80 });
    expect(lens!.from).toBe(80);
    expect(lens!.to).toEqual(closeTo(rear - 4 + 22, rounding));
    expect(found.sharpPlane).toEqual(closeTo(50 * (2 + m + 1 / m) - 4, rounding));
    expect(found.whole!.rearPrincipal).toEqual(closeTo(rear, rounding));
    expect(found.whole!.frontPrincipal).toEqual(closeTo(rear - 4, rounding));
    expect(found.whole!.rearFocus).toEqual(closeTo(rear - 50, rounding));
    expect(found.whole!.frontFocus).toEqual(closeTo(rear - 4 + 50, rounding));
    expect(found.entrancePupil!.diameter).toEqual(closeTo(50 / 8, rounding));
    expect(found.exitPupil!.diameter).toEqual(closeTo((1.2 * 50) / 8, rounding));
    expect(found.exitPupil!.at).toEqual(closeTo(rear - 50 * (1 - 1.2), rounding));
    expect(found.field!.width).toEqual(closeTo(36 / m, rounding));
  });

  it('swaps the ends, the principal planes and the pupils of a lens turned round', () => {
    const { parts, elements } = positions(on({ ...lens28, rearProtrusion: 6 }, { reversed: true }));
    const [, lens] = parts;
    expect(lens).toMatchObject({ from: 44 });
    expect(lens!.foremost).toEqual(closeTo(lens!.to + 6, rounding));
    const { points, entrancePupil, exitPupil } = elements[0]!;
    expect(points!.rearPrincipal).toEqual(closeTo(44 + 34, rounding));
    expect(exitPupil!.diameter).toEqual(closeTo(28 / 8, rounding));
    expect(entrancePupil!.diameter).toEqual(closeTo((1.5 * 28) / 8, rounding));
  });

  it('racks the flange of a lens turned round nearer, and leaves its glass: nothing comes closer to the subject until the flange does', () => {
    const turned = (at: number, fixedProtrusion = 0) =>
      positions(on({ ...lens28, rearProtrusion: 2, fixedProtrusion }, { reversed: true, at }));
    const { foremost } = turned(0);
    expect(turned(0.05).foremost).toEqual(closeTo(foremost, rounding));
    expect(turned(0.1).foremost).toEqual(closeTo(foremost + 2.8 - 2, rounding));
    expect(turned(0.05, 1).foremost).toEqual(closeTo(foremost + 0.4, rounding));
  });

  it('has neither sharp plane nor field at infinity, but both pupils', () => {
    const found = positions(on(lens50));
    expect(found).toMatchObject({ sharpPlane: null, field: null, signedMagnification: 0 });
    expect(found.entrancePupil!.diameter).toEqual(closeTo(50 / 8, rounding));
    expect(rigSpans(found)).not.toHaveProperty('focus-distance');
  });

  it('still says where the parts stand where nothing is sharp', () => {
    const found = positions(on({ ...lens50, registerDistance: 46.5 }));
    expect(found).toMatchObject({ sharpPlane: null, signedMagnification: null });
    expect(found.parts).toHaveLength(2);
  });

  it('has no entrance pupil for an object-side telecentric rig', () => {
    const objective: Part = {
      part: 'objective',
      objectiveMagnification: 10,
      numericalAperture: 0.25,
      workingDistance: 10,
      design: { tubeFocalLength: 200 },
      parfocalDistance: 45,
    };
    const found = positions(ring(156), { part: 'tube lens', focalLength: 200 }, ring(80), objective);
    expect(found.entrancePupil).toBeNull();
    expect(found.elements[1]!.entrancePupil).toBeNull();
    expect(found.exitPupil).not.toBeNull();
  });

  it('takes the width that is stated, and refuses one that is none', () => {
    expect(positions({ ...on(lens50), rimDiameter: 53 }).parts[1]!.radius).toBe(26.5);
    expect(() => positions({ ...on(lens50), rimDiameter: -1 })).toThrow(/rim-diameter/);
  });

  it('agrees with what the rig is solved to, both ways round and in any chain', () => {
    overSharp(({ solved, foremost, sharpPlane, marginal, chief, sensor, field, entrancePupil }) => {
      if (solved.sharpPlane !== 'in front' && solved.sharpPlane !== 'inside') throw new Error(solved.sharpPlane);
      const near = (value: number) => ({
        absolute: 1e-9 * Math.max(Math.abs(sharpPlane), foremost) + 1e-7 * Math.abs(value),
        because: 'long chains of which little is left take digits away',
      });
      expect(sharpPlane - foremost).toEqual(closeTo(solved.workingDistance, near(sharpPlane)));
      const [start, next] = marginal.points as [
        RigPositions['marginal']['points'][0],
        RigPositions['marginal']['points'][0],
      ];
      expect(start).toEqual({ z: 0, y: 0 });
      expect((next.z - start.z) / (next.y - start.y) / 2).toEqual(closeTo(solved.effectiveFNumber, chains));
      expect(marginal.points.at(-1)!.z).toBe(sharpPlane);
      expect(Math.abs(marginal.points.at(-1)!.y)).toBeLessThan(1e-7 * Math.max(foremost, sharpPlane));
      expect(Math.abs(chief.points[0]!.y)).toBe(sensor.width / 2);
      const atSubject = chief.points.at(-1)!.y;
      expect(Math.abs(atSubject)).toEqual(closeTo(sensor.width / 2 / solved.magnification, near(field!.width)));
      expect(atSubject > 0).toBe(!solved.upright);
      expect(2 * Math.abs(atSubject)).toEqual(closeTo(field!.width, near(field!.width)));
      if (!entrancePupil || !solved.pupil) return;
      const { entrancePupil: diameter, entrancePupilDistance } = solved.pupil;
      expect(entrancePupil.diameter).toEqual(closeTo(diameter, near(diameter)));
      expect(sharpPlane - entrancePupil.at).toEqual(closeTo(entrancePupilDistance, near(entrancePupilDistance)));
    });
  });

  it('dimensions what the quantities say', () => {
    overSharp((found) => {
      const { solved, sharpPlane } = found;
      const spans = rigSpans(found);
      const length = (name: keyof typeof spans) => spans[name]![1] - spans[name]![0];
      if (!('workingDistance' in solved)) throw new Error(solved.sharpPlane);
      expect(length('focus-distance')).toBe(sharpPlane);
      expect(length('working-distance')).toEqual(
        closeTo(solved.workingDistance, { absolute: 1e-9 * Math.max(found.foremost, sharpPlane), because: 'rounding' }),
      );
      expect(length('register-distance')).toBe(44);
      if (!found.whole) return;
      const whole = length('image-distance') + length('principal-separation') + length('subject-distance');
      expect(whole).toEqual(
        closeTo(sharpPlane, {
          absolute: 1e-9 * (found.foremost + Math.abs(sharpPlane) + Math.abs(found.whole.focalLength)),
          because: 'rounding',
        }),
      );
    });
  });
});
