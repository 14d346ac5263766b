import { lensOfPrescription } from '#core/rig/lens-of-prescription.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { Prescription, Surface } from '#core/rig/prescription.ts';
import { crateRegister, marks } from './lens-marks.ts';

/**
 * The three lenses of the crate whose glass is known, surface by surface: published designs under names of the crate.
 *
 * Pages that draw no glass do without it. Sources: `tests/reference/lens-prescriptions`.
 */
type Row = readonly [radius: number, thickness: number, index: number];

// prettier-ignore
const retrofocus: readonly Row[] = [
  [1.69111096, 0.0825968, 1.622778076],
  [0.94414496, 0.8, 1],
  [4.32100401, 0.080256, 1.622987958],
  [1.78117621, 0.5, 1],
  [2.64050282, 0.2763816, 1.66445657],
  [-3.86177348, 0.1, 1],
  [1.05627661, 0.2, 1.46449858],
  [-4.06933311, 0.2001384, 1],
  [Infinity, 0.06688, 1],
  [-2.61246583, 0.064372, 1.698945548],
  [0.99117409, 0.3, 1],
  [9.0304596, 0.1874312, 1.677897634],
  [-1.35680743, 2.35130547, 1],
];

// prettier-ignore
const fourElements: readonly Row[] = [
  [32.064785231, 4.627804137, 1.60717],
  [Infinity, 5.417429465, 1],
  [-71.096242201, 3.728230979, 1.57596],
  [28.836321492, 4.417903733, 1],
  [Infinity, 2.288913925, 1],
  [Infinity, 1.499288597, 1.52648],
  [28.486482694, 7.996205852, 1.62377],
  [-47.197597793, 85.24396513, 1],
];

// prettier-ignore
const macro60: readonly Row[] = [
  [70.8774, 2.8, 1.76684],
  [-205.2345, 0.1, 1],
  [17.8517, 3.5, 1.717],
  [35.801, 1.0, 1],
  [93.5847, 1.2, 1.62588],
  [15.502, 3.024815, 1],
  [Infinity, 3.024815, 1],
  [-23.4716, 1.2, 1.69895],
  [120.028, 9.0, 1.713],
  [-28.6509, 0.2, 1],
  [312.7704, 2.8, 1.76684],
  [-60.9477, 1.23344, 1],
  [280.3072, 4.2, 1.64831],
  [-38.6396, 1.5, 1],
  [-36.7728, 1.5, 1.79631],
  [192.9172, 39.38439, 1],
];

/** Gaps of the 60 mm lens on both sides of its stop and before its last group, by magnification. */
const settings60 = [
  { focusMagnification: 0, thickness: { 5: 3.024815, 6: 3.024815, 11: 1.23344 } },
  { focusMagnification: 0.5, thickness: { 5: 5.489665, 6: 5.489665, 11: 21.7738 } },
  { focusMagnification: 1, thickness: { 5: 7.95895, 6: 7.95895, 11: 44.1392 } },
] as const;

/** Slugs of the lenses whose glass is known. */
export type GlassSlug = 'lens-28' | 'lens-60' | 'lens-100';

/** The lenses with their glass, for the rig engine: traced, and drawn by their surfaces. */
export const glassLenses: Readonly<Record<GlassSlug, Lens>> = {
  'lens-28': mounted('lens-28', behindRim(5.4, scaled(retrofocus, 13.9634), 8)),
  'lens-60': mounted('lens-60', { surfaces: scaled(macro60, 1), stop: 6, settings: settings60 }),
  'lens-100': mounted('lens-100', behindRim(4.03, scaled(fourElements, 1), 4)),
};

function mounted(slug: GlassSlug, prescription: Prescription): Lens {
  return lensOfPrescription(prescription, {
    registerDistance: crateRegister,
    apertureControl: marks[slug].iris,
    closestMagnification: marks[slug].closest['focus-magnification'],
  });
}

function scaled(rows: readonly Row[], by: number): readonly Surface[] {
  return rows.map(([radius, thickness, index]) => ({ radius: radius * by, thickness: thickness * by, index }));
}

/** The rim stands *depth* mm before the first vertex: a plane with air on both sides of it. */
function behindRim(depth: number, surfaces: readonly Surface[], stop: number): Prescription {
  return { surfaces: [{ radius: Infinity, thickness: depth, index: 1 }, ...surfaces], stop: stop + 1 };
}
