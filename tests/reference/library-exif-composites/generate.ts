/**
 * Writes `cases.json` anew from the ExifTool that is installed: `npx node tests/reference/library-exif-composites/generate.ts`.
 * To be run when its version in package.json changes; the test says so.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { compositesOf, exiftoolVersion, type Composites, type Shot } from './exiftool.ts';

/** Focal length, f-number, distance in m, equivalent focal length, exposure time in s, ISO: from phones to long lenses. */
const grid: readonly (readonly [number, number, number, number, number, number])[] = [
  [100, 8, 0.5, 100, 0.008, 100],
  [60, 2.8, 0.219, 60, 0.004, 200],
  [28, 5.6, 0.3, 28, 0.002, 400],
  [28, 2.8, 3, 28, 0.02, 100],
  [16, 11, 1, 24, 0.1, 100],
  [16, 4, 0.25, 24, 0.01, 800],
  [24, 16, 5, 24, 0.04, 100],
  [35, 8, 2, 52, 0.0005, 400],
  [50, 1.8, 0.45, 50, 0.004, 100],
  [50, 8, 4, 50, 0.008, 100],
  [50, 8, 20, 75, 0.002, 200],
  [50, 16, 0.2, 80, 0.5, 100],
  [90, 2.8, 0.29, 90, 0.005, 320],
  [90, 11, 0.36, 135, 0.008, 100],
  [90, 22, 1, 90, 2, 50],
  [105, 32, 0.25, 105, 1, 100],
  [200, 4, 0.5, 200, 0.001, 1600],
  [200, 5.6, 10, 320, 0.001, 400],
  [400, 5.6, 6, 400, 0.0005, 800],
  [8.8, 2.8, 0.1, 24, 0.02, 125],
  [4.3, 2.2, 0.08, 26, 0.02, 50],
  [4.3, 2.2, 2, 26, 0.01, 50],
];

const shots = grid.map(([focalLength, fNumber, subjectDistance, equivalentFocalLength, exposureTime, iso]): Shot => ({
  focalLength,
  fNumber,
  subjectDistance,
  equivalentFocalLength,
  exposureTime,
  iso,
}));

function caseOf(shot: Shot, composites: Composites, index: number) {
  return {
    id: `exif-${index + 1}`,
    title: `${shot.focalLength} mm, equivalent to ${shot.equivalentFocalLength} mm, at f/${shot.fNumber} focused at ${shot.subjectDistance} m`,
    kind: 'library',
    sourceText: 'read',
    source: `ExifTool ${exiftoolVersion()}, composite tags, run here; definitions in Image/ExifTool/Exif.pm`,
    inputs: {
      focalLength: `${shot.focalLength} mm`,
      equivalentFocalLength: `${shot.equivalentFocalLength} mm`,
      fNumber: shot.fNumber,
      subjectDistance: `${shot.subjectDistance} m`,
      exposureTime: `${shot.exposureTime} s`,
      iso: shot.iso,
    },
    expected: {
      scaleFactor: composites.scaleFactor,
      circleOfConfusion: `${composites.circleOfConfusion} mm`,
      hyperfocal: `${composites.hyperfocal} m`,
      near: `${composites.near} m`,
      far: composites.far === Infinity ? 'Infinity' : `${composites.far} m`,
      fieldAngle: `${composites.fieldAngle} °`,
      lightValue: composites.lightValue,
    },
    tolerance: {
      scaleFactor: { relative: 1e-12 },
      circleOfConfusion: { relative: 1e-12 },
      hyperfocal: { relative: 1e-12 },
      near: { relative: 1e-12 },
      far: { relative: 1e-12 },
      fieldAngle: { relative: 1e-6 },
      lightValue: 1e-12,
    },
    because: 'the same formulas after translation, so rounding only; its degrees come from 3.14159',
  };
}

const cases = compositesOf(shots).map((composites, index) => caseOf(shots[index] as Shot, composites, index));
writeFileSync(join(import.meta.dirname, 'cases.json'), `${JSON.stringify(cases, null, 2)}\n`);
