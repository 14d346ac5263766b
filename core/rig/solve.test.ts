import { describe, expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { camera, lens28, lens50, on, ring } from '#tests/support/rig-parts.ts';
import { assembleRig } from './assemble.ts';
import type { Part } from './part.ts';
import { solveRig } from './solve.ts';
import { sharpPlaneWords, type SharpRig } from './solved-rig.ts';

const solve = (...parts: Part[]) => solveRig(assembleRig([camera, ...parts]));
const sharp = (...parts: Part[]): SharpRig => {
  const solved = solve(...parts);
  if (solved.sharpPlane !== 'in front' && solved.sharpPlane !== 'inside') throw new Error(solved.sharpPlane);
  return solved;
};
const rounding = { relative: 1e-13, because: 'rounding' };

describe('solveRig', () => {
  it('answers everything for a 36 mm ring on 50 mm focused to 0.1', () => {
    const solved = sharp(ring(36), on(lens50, { at: 0.1 }));
    const m = 0.82;
    expect(solved).toMatchObject({ sharpPlane: 'in front', upright: false, limitedBy: 2, fNumber: 8 });
    expect(solved.magnification).toEqual(closeTo(m, rounding));
    expect(solved.workingDistance).toEqual(closeTo(50 * (1 + 1 / m) - 22, rounding));
    expect(solved.focusDistance).toEqual(closeTo(50 * (2 + m + 1 / m) - 4, rounding));
    expect(solved.fieldWidth).toEqual(closeTo(36 / m, rounding));
    expect(solved.fieldHeight).toEqual(closeTo(24 / m, rounding));
    expect(solved.effectiveFNumber).toEqual(closeTo(8 * (1 + m / 1.2), rounding));
    expect(solved.lightLoss).toEqual(closeTo(2 * Math.log2(1 + m / 1.2), rounding));
    expect(solved.pupil?.entrancePupil).toEqual(closeTo(50 / 8, rounding));
    expect(solved.pupil?.entrancePupilDistance).toEqual(closeTo(50 * (1 / m + 1 / 1.2), rounding));
  });

  it('is at infinity with a lens at infinity and nothing added, at the marked f-number', () => {
    expect(solve(on(lens50))).toMatchObject({ sharpPlane: 'at infinity', lightLoss: 0 });
  });

  it('has no sharp plane with a lens nearer to the sensor than its focal length', () => {
    const solved = solve(on({ ...lens50, registerDistance: 46.5 }));
    expect(solved).toEqual({ sharpPlane: 'nowhere' });
    expect(sharpPlaneWords(solved)).toMatch(/past infinity/);
  });

  it('says in words that the sharp plane of a wide-angle lens on a long ring lies inside the glass', () => {
    const solved = sharp(ring(50), on({ ...lens28, frontPrincipalDepth: 60, registerDistance: 44 }));
    expect(solved.sharpPlane).toBe('inside');
    expect(solved.workingDistance).toEqual(closeTo(28 * (1 + 28 / 50) - 60, rounding));
    expect(sharpPlaneWords(solved)).toMatch(/inside the glass/);
  });

  it('counts the working distance from whatever stands foremost: a hood takes its length away', () => {
    const bare = sharp(ring(36), on(lens50));
    const hooded = sharp(ring(36), on(lens50), ring(30));
    expect(hooded.workingDistance).toEqual(closeTo(bare.workingDistance - 30, rounding));
    expect(hooded.focusDistance).toEqual(closeTo(bare.focusDistance, rounding));
  });

  it('counts what stands out behind the flange of a lens turned round', () => {
    const flush = sharp(on(lens28, { reversed: true }));
    const deep = sharp(on({ ...lens28, rearProtrusion: 6 }, { reversed: true }));
    expect(deep.workingDistance).toEqual(closeTo(flush.workingDistance - 6, rounding));
  });

  it('counts the seats of close-up lenses as rings of their length before each', () => {
    const [plus2, plus4]: Part[] = [
      { part: 'close-up lens', closeUpPower: 2 },
      { part: 'close-up lens', closeUpPower: 4, clearAperture: 12 },
    ];
    const seated = sharp(on(lens50), { ...plus2, seat: 5 } as Part, { ...plus4, seat: 3 } as Part);
    const ringed = sharp(on(lens50), ring(5), plus2!, ring(3), plus4!);
    for (const name of ['magnification', 'workingDistance', 'effectiveFNumber', 'focusDistance'] as const)
      expect(seated[name]).toEqual(closeTo(ringed[name], rounding));
  });

  it('sees a subject upright where an image stands inside the rig and is imaged again', () => {
    const relay: Part = { part: 'close-up lens', closeUpPower: 20 };
    const solved = sharp(ring(50), on(lens50), ring(300), relay);
    expect(solved.upright).toBe(true);
    expect(solved.workingDistance).toBeGreaterThan(0);
  });

  it('has no entrance pupil to point at where the stop stands in the focal plane of what is before it', () => {
    const objective: Part = {
      part: 'objective',
      objectiveMagnification: 10,
      numericalAperture: 0.25,
      workingDistance: 10,
      design: { tubeFocalLength: 200 },
      parfocalDistance: 45,
    };
    const solved = sharp(ring(156), { part: 'tube lens', focalLength: 200 }, ring(80), objective);
    expect(solved.pupil).toBeNull();
    expect(solved).toMatchObject({ fNumber: null, lightLoss: null, apertureControl: 'fixed', limitedBy: 4 });
    expect(solved.magnification).toEqual(closeTo(10, rounding));
    expect(solved.effectiveFNumber).toEqual(closeTo(20, rounding));
    expect(solved.workingDistance).toEqual(closeTo(10, { relative: 1e-11, because: 'long distances cancel' }));
  });

  it('gives a finite objective what is engraved on it at its own length of tube, and more on a longer one', () => {
    const objective: Part = {
      part: 'objective',
      objectiveMagnification: 4,
      numericalAperture: 0.1,
      workingDistance: 18,
      design: { imageDistance: 150 },
      parfocalDistance: 45,
    };
    const solved = sharp(ring(106), objective);
    expect(solved.magnification).toEqual(closeTo(4, rounding));
    expect(solved.workingDistance).toEqual(closeTo(18, rounding));
    expect(solved.effectiveFNumber).toEqual(closeTo(20, rounding));
    const focalLength = 195 / (2 + 4 + 1 / 4);
    expect(sharp(ring(106 + focalLength), objective).magnification).toEqual(closeTo(5, rounding));
  });

  it('tells where the aperture is controlled: on the lens, from the camera while contacts reach, or nowhere', () => {
    const control = (...parts: Part[]) => sharp(...parts).apertureControl;
    expect(control(ring(36), on(lens28))).toBe('lens');
    expect(control(ring(36), on(lens28, { reversed: true }))).toBe('lens');
    expect(control(ring(36), on(lens50))).toBe('camera');
    expect(control({ part: 'ring', extension: 36, coupled: false }, on(lens50))).toBe('nowhere');
    expect(control(ring(36), on(lens50, { reversed: true }))).toBe('nowhere');
  });

  it('refuses a chain whose only stop stands in the picture itself, by name', () => {
    const relay: Part = { part: 'tube lens', focalLength: 22 };
    const field: Part = { part: 'close-up lens', closeUpPower: 1, clearAperture: 10 };
    expect(() => solve(relay, ring(44), field)).toThrow(/the only stop stands in the picture/);
  });
});
