import { describe, expect, it } from 'vitest';
import { assembleRig } from '#core/rig/assemble.ts';
import type { Camera, Part } from '#core/rig/part.ts';
import { rigPositions } from '#core/rig/positions.ts';
import { thinConverter } from '#core/rig/thin-converter.ts';
import { faultOfConverter } from './converter-fault.ts';
import type { NewPart } from './part.ts';
import { usualName } from './words-of-part.ts';

const converter = (factor: number, length: number, planes: Partial<Record<string, number>> = {}): NewPart => ({
  kind: 'converter',
  name: 'Any',
  'converter-factor': factor,
  'converter-length': length,
  contacts: 'yes',
  ...planes,
});

describe('the planes of a converter', () => {
  // The core's thin lens does what is engraved, by its own formula.
  it.each([
    [1.4, 20, 44],
    [1.7, 25, 44],
    [2, 40, 44],
    [2, 30, 18],
    [3, 60, 44],
  ])('of a thin lens that enlarges %s×, %s mm long, are taken up to a tenth off', (factor, length, register) => {
    const { focalLength, objectDistance } = thinConverter({ converterFactor: factor, converterLength: length });
    const planes = {
      'focal-length': -focalLength,
      'principal-separation': 0,
      'front-principal-depth': Math.max(-length, register - objectDistance),
    };
    expect(faultOfConverter(converter(factor, length, planes))).toBeUndefined();
    expect(faultOfConverter(converter(factor * 1.09, length, planes))).toBeUndefined();
    expect(faultOfConverter(converter(factor * 1.12, length, planes))?.key).toBe('focal-length');
    expect(faultOfConverter(converter(factor * 0.9, length, planes))?.key).toBe('focal-length');
  });

  it('give the factor by which the engine enlarges with them what a far lens sees', () => {
    // With these the picture is taken up 48.75 mm behind the front: a camera of that register.
    const planes = { 'focal-length': 80, 'principal-separation': -3, 'front-principal-depth': 8 };
    const factor = 1 + 43 / 160 + Math.sqrt(43 / 80 + (43 / 160) ** 2);
    const register = 8 + 80 * (1 - 1 / factor);
    const camera: Camera = { part: 'camera', registerDistance: register, sensorWidth: 36, sensorHeight: 24 };
    const lens: Part = {
      part: 'lens',
      lens: {
        focalLength: 100,
        principalSeparation: 0,
        frontPrincipalDepth: 20,
        pupilMagnification: 1,
        registerDistance: register,
        focusing: { by: 'unit', closestMagnification: 0.1 },
        apertureControl: 'lens',
      },
      focusMagnification: 0,
      fNumber: 4,
    };
    const points = { focalLength: -80, principalSeparation: -3, frontPrincipalDepth: 8, converterLength: 40 };
    const { whole } = rigPositions(assembleRig([camera, { part: 'converter by points', ...points }, lens]));
    expect(Math.abs(whole!.focalLength)).toBeCloseTo(100 * factor, 6);
    expect(faultOfConverter(converter(factor, 40, planes))).toBeUndefined();
    expect(faultOfConverter(converter(factor * 0.8, 40, planes))?.message).toContain('enlarges 2.05×');
  });

  it('tell converters of one factor apart by name', () => {
    const planes = { 'focal-length': 70, 'principal-separation': 5, 'front-principal-depth': 10 };
    const plain = (part: NewPart) => usualName(part).replaceAll('\u202f', ' ');
    expect(plain(converter(2, 40, planes))).toBe('2× converter, f −70 mm');
    expect(plain(converter(2, 40))).toBe('2× converter');
  });
});
