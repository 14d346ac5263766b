import type { Lens } from '#core/rig/lens.ts';
import type { KitRow, KitSubject } from '#core/rig/kit/kit.ts';
import { searchKit } from '#core/rig/kit/search-kit.ts';

/** How many of each a kit holds, beside a reversing ring, a coupling ring and perhaps a converter. */
export interface KitSize {
  readonly cameras: number;
  readonly lenses: number;
  readonly rings: number;
  readonly closeUpLenses: number;
  readonly converters: number;
}

export interface KitSpeed extends KitSize {
  readonly chains: number;
  readonly suited: number;
  /** Best and median of the runs, ms on one core. */
  readonly best: number;
  readonly median: number;
}

/** The kit that has to be searched in under 100 ms. */
export const statedSize: KitSize = { cameras: 3, lenses: 6, rings: 5, closeUpLenses: 3, converters: 1 };

/** Grown in one direction after the other. */
const sizes: readonly KitSize[] = [
  { ...statedSize, converters: 0 },
  ...[1, 2, 3, 4].map((rings) => ({ ...statedSize, rings })),
  statedSize,
  { ...statedSize, rings: 6 },
  { ...statedSize, closeUpLenses: 4 },
  { ...statedSize, lenses: 12 },
  { ...statedSize, cameras: 6 },
];

const sensors = [36, 23.5, 17.3, 22.3, 13.2, 35.9];
const focalLengths = [50, 28, 18, 55, 90, 105, 35, 24, 40, 60, 135, 85];
const lengths = [12, 20.5, 36.25, 9.125, 25.0625, 48.03125];
const powers = [2, 4.5, 10.25, 1.125];

/** Every second lens focuses internally; ring lengths have no two sums alike, so that nothing falls together by luck. */
export function kitOf(size: KitSize): KitRow[] {
  const mount = 'club';
  const common = { price: 10, mount };
  const lens = (focalLength: number, index: number): Lens => ({
    focalLength,
    principalSeparation: index % 3,
    frontPrincipalDepth: 30 + Math.max(0, 44 - focalLength),
    pupilMagnification: 0.7 + 0.1 * (index % 6),
    registerDistance: 44,
    focusing:
      index % 2 === 0
        ? { by: 'unit', closestMagnification: 0.15 }
        : { by: 'internal', closestMagnification: 0.3, closestFocusDistance: 5.4 * focalLength, keeps: 'f-number' },
    apertureControl: index % 3 === 0 ? 'lens' : 'camera',
  });
  return [
    ...sensors.slice(0, size.cameras).map((width, index): KitRow => ({
      part: 'camera',
      id: `camera ${index}`,
      ...common,
      registerDistance: 44,
      sensorWidth: width,
      sensorHeight: (2 * width) / 3,
      circleOfConfusion: width / 1500,
    })),
    ...focalLengths.slice(0, size.lenses).map((focalLength, index): KitRow => ({
      part: 'lens',
      id: `lens ${index}`,
      ...common,
      lens: lens(focalLength, index),
      maxAperture: 2,
      smallestAperture: 22,
    })),
    ...lengths
      .slice(0, size.rings)
      .map((extension): KitRow => ({ part: 'ring', id: `ring ${extension}`, ...common, extension })),
    ...powers.slice(0, size.closeUpLenses).map((closeUpPower): KitRow => ({
      part: 'close-up lens',
      id: `close-up lens ${closeUpPower}`,
      price: 10,
      closeUpPower,
      clearAperture: 49,
    })),
    ...[1.4, 2].slice(0, size.converters).map((converterFactor): KitRow => ({
      part: 'converter',
      id: `converter ${converterFactor}`,
      ...common,
      converterFactor,
      converterLength: 20,
    })),
    { part: 'reversing ring', id: 'reversing ring', ...common, extension: 4 },
    { part: 'coupling ring', id: 'coupling ring', price: 10, extension: 3 },
  ];
}

export const smallSubject: KitSubject = {
  subjectWidth: 24,
  subjectDepth: 0.45,
  subjectSpeed: 2,
  nearestDistance: 40,
  leastFill: 0.5,
  longestExposure: 0.5,
  luminance: 2000,
  iso: 400,
  wavelength: 0.00055,
};

/** Searches kits of growing size, each several times. */
export function kitSpeed(runs = 15): readonly KitSpeed[] {
  return sizes.map((size) => {
    const kit = kitOf(size);
    const times: number[] = [];
    let search = searchKit(kit, smallSubject, 200);
    for (let run = 0; run < runs; run++) {
      const start = performance.now();
      search = searchKit(kit, smallSubject, 200);
      times.push(performance.now() - start);
    }
    times.sort((one, other) => one - other);
    const [best = NaN, median = NaN] = [times[0], times[times.length >> 1]];
    return { ...size, chains: search.count, suited: search.suited.length, best, median };
  });
}

/** The speeds as a table to print. */
export function kitSpeedTable(speeds: readonly KitSpeed[]): string {
  const head = [
    'cameras',
    'lenses',
    'rings',
    'close-up lenses',
    'converters',
    'chains',
    'suited',
    'best, ms',
    'median, ms',
    'ns a chain',
  ];
  const rows = speeds.map(({ cameras, lenses, rings, closeUpLenses, converters, chains, suited, best, median }) =>
    [
      cameras,
      lenses,
      rings,
      closeUpLenses,
      converters,
      chains,
      suited,
      best.toFixed(1),
      median.toFixed(1),
      ((1e6 * best) / chains).toFixed(0),
    ].map(String),
  );
  return [head, head.map(() => '--:'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}
