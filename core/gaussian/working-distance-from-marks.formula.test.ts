import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusDistance } from './focus-distance.formula.ts';
import { imageDistance } from './image-distance.formula.ts';
import { subjectDistance } from './subject-distance.formula.ts';
import { workingDistanceFromMarks } from './working-distance-from-marks.formula.ts';
import { workingDistance } from './working-distance.formula.ts';

describe('workingDistanceFromMarks', () => {
  it('is 364 mm for a barrel of 32 mm at 0.44 m, 44 mm of register taken off', () => {
    expect(workingDistanceFromMarks({ focusDistance: 440, registerDistance: 44, barrelLength: 32 })).toBe(364);
  });

  it('is the same room as by focal length and magnification', () => {
    const lens = { focalLength: 50, magnification: 0.15, principalSeparation: -4, frontPrincipalDepth: 22 };
    const marks = {
      focusDistance: focusDistance(lens),
      registerDistance: 44,
      barrelLength: imageDistance(lens) + lens.principalSeparation + lens.frontPrincipalDepth - 44,
    };
    const room = workingDistance({ ...lens, subjectDistance: subjectDistance(lens) });
    expect(workingDistanceFromMarks(marks)).toEqual(closeTo(room, { relative: 1e-14, because: 'a few differences' }));
  });

  it('is nothing where the distance ends at the rim', () => {
    expect(workingDistanceFromMarks({ focusDistance: 100, registerDistance: 44, barrelLength: 56 })).toBe(0);
  });

  it('refuses a barrel of no length by name', () => {
    const refused = () => workingDistanceFromMarks({ focusDistance: 440, registerDistance: 44, barrelLength: 0 });
    expect(refused).toThrow(OutOfRange);
    expect(refused).toThrow(/barrel-length is 0/);
  });
});
