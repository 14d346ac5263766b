import { degree } from '#core/quantity/units.ts';
import type { RulerLine } from '#core/ruler/photograph.ts';

/** A photograph that the page renders by itself, for readers without a camera at hand, and what is known of how it was taken. */
export interface Sample {
  readonly name: string;
  readonly says: string;
  /** How the ruler lies: degrees that its right end leans back, and degrees that it is turned. */
  readonly tilt: number;
  readonly turn: number;
  /** Of the club's 50 mm lens, in mm. */
  readonly focusMagnification: number;
  readonly extension: number;
  readonly fNumber: number;
  /** What its photographer wrote down of the focus ring. */
  readonly setting: string;
  /** A working distance measured by hand, this much off, mm. */
  readonly distanceOff: number;
  /** Which noise. */
  readonly seed: number;
  /** Its ruler's zero is so far behind the sharp plane, mm. */
  readonly focus: number;
}

/** The club's 50 mm lens, as the crate has it. */
export const sampleLens = {
  focalLength: 50,
  pupilMagnification: 1.1,
  frontPrincipalDepth: 22,
} as const;

/** A sensor 36 mm wide of few pixels: a sample is there in a second. */
export const sampleCamera = { columns: 1200, rows: 800, sensorWidth: 36 } as const;

const plain = {
  tilt: 0,
  turn: 1.2,
  fNumber: 8,
  focus: 0,
  distanceOff: 0,
  setting: 'nearest',
  focusMagnification: 0.15,
};

/** Samples by their names in what is kept. */
export const samples: Readonly<Record<string, Sample>> = {
  flat: { ...plain, name: 'A ruler, laid flat', says: 'Square to the lens, on a 12 mm ring.', extension: 12, seed: 1 },
  leaning: {
    ...plain,
    name: 'A ruler that leans a little',
    says: 'One end is farther away than the other.',
    extension: 12,
    tilt: 5,
    seed: 2,
  },
  slanted: {
    ...plain,
    name: 'A ruler at a slant',
    says: 'It runs through the sharp depth, for depth of field at f/4.',
    extension: 24,
    tilt: 42,
    turn: 0.5,
    fNumber: 4,
    seed: 3,
  },
  'ring-0': { ...plain, name: 'Without a ring', says: '', extension: 0, seed: 4, distanceOff: 0.6 },
  'ring-12': { ...plain, name: 'On 12 mm of rings', says: '', extension: 12, seed: 5, distanceOff: -0.4 },
  'ring-24': { ...plain, name: 'On 24 mm of rings', says: '', extension: 24, seed: 6, distanceOff: 0.3 },
  'ring-36': { ...plain, name: 'On 36 mm of rings', says: '', extension: 36, seed: 7, distanceOff: -0.5 },
};

/** Those that together tell of the lens. */
export const series = ['ring-0', 'ring-12', 'ring-24', 'ring-36'] as const;

/** Magnification and distances of a sample on the axis, in closed form: what a measurement is to find. */
export function truthOf({ focusMagnification, extension, distanceOff }: Sample) {
  const { focalLength: f, pupilMagnification: P, frontPrincipalDepth: h } = sampleLens;
  const magnification = focusMagnification + extension / f;
  return {
    magnification,
    entrancePupilDistance: f * (1 / magnification + 1 / P),
    /** As its photographer measured it. */
    workingDistance: Math.round(10 * (f * (1 + 1 / magnification) - h + distanceOff)) / 10,
  };
}

/** Where the line is drawn that a sample comes with: along its marks. */
export function lineOf({ turn }: Sample): RulerLine {
  const { columns, rows } = sampleCamera;
  const reach = 0.44 * columns;
  const [x, y] = [columns / 2, rows / 2];
  const [dx, dy] = [reach * Math.cos(turn * degree), reach * Math.sin(turn * degree)];
  return { from: { x: x - dx, y: y - dy }, to: { x: x + dx, y: y + dy } };
}
