import { besselJ0 } from '#core/wave/bessel.ts';
import { transferAt } from '#core/wave/optical-transfer.ts';
import { intensitiesUpTo } from '#core/wave/point-spread.ts';
import type { Pupil } from '#core/wave/pupil.ts';
import { percentile } from './percentile.ts';

/** How long the image of a point and the transfer of one pupil take, ms on one core, beside the same integrals by plain fine sums. */
export interface WaveSpeed extends Pupil {
  readonly spread: number;
  readonly transfer: number;
  readonly plainSpread: number;
  readonly plainTransfer: number;
  /** The largest difference between the two ways, of the middle of a perfect image and of the transfer at 0. */
  readonly apart: number;
}

export const radii = 512;
export const frequencies = 256;
/** v of the outermost radius: some ten dark rings, or a blur disc of four waves. */
const reach = 32;

const turn = 2 * Math.PI;

/** |2 ∫ exp(2πi W(ρ)) J0(vρ) ρ dρ|² by the middle rule. */
function plainSpread({ defocusAberration, sphericalAberration }: Pupil, points: number): Float64Array {
  return Float64Array.from({ length: radii }, (_, index) => {
    const v = (reach * index) / (radii - 1);
    let [re, im] = [0, 0];
    for (let k = 0; k < points; k++) {
      const t = ((k + 0.5) / points) ** 2;
      const phase = turn * t * (defocusAberration + sphericalAberration * t);
      const weight = (2 * besselJ0(v * Math.sqrt(t)) * Math.sqrt(t)) / points;
      re += weight * Math.cos(phase);
      im += weight * Math.sin(phase);
    }
    return re * re + im * im;
  });
}

/** The autocorrelation of the pupil by the middle rule over a quarter of the overlap. */
function plainTransfer({ defocusAberration, sphericalAberration }: Pupil, points: number, rows: number): Float64Array {
  return Float64Array.from({ length: frequencies }, (_, index) => {
    const s = index / frequencies;
    const step = (1 - s) / points;
    let sum = 0;
    for (let across = 0; across < points; across++) {
      const x = (across + 0.5) * step;
      const height = Math.sqrt(1 - (x + s) ** 2);
      for (let up = 0; up < rows; up++) {
        const y = ((up + 0.5) * height) / rows;
        const ahead = 4 * x * s * (defocusAberration + 2 * sphericalAberration * (x * x + y * y + s * s));
        sum += Math.cos(turn * ahead) * height;
      }
    }
    return (4 * sum * step) / (rows * Math.PI);
  });
}

const pupils: readonly Pupil[] = [
  { defocusAberration: 0.25, sphericalAberration: 0 },
  { defocusAberration: 1, sphericalAberration: 0.5 },
  { defocusAberration: -4, sphericalAberration: 2 },
];

/** The core's two, for one pupil. */
export function ours(pupil: Pupil) {
  return {
    spread: () => intensitiesUpTo(pupil, reach, radii),
    transfer: () => Float64Array.from({ length: frequencies }, (_, index) => transferAt(pupil, index / frequencies)),
  };
}

/** The same two by plain sums, fine enough to agree to about 1e-6. */
export function plain(pupil: Pupil, points = { spread: 6000, across: 2400, up: 600 }) {
  return {
    spread: () => plainSpread(pupil, points.spread),
    transfer: () => plainTransfer(pupil, points.across, points.up),
  };
}

export function largestDifference(one: Float64Array, other: Float64Array): number {
  return one.reduce((most, value, index) => Math.max(most, Math.abs(value - other[index]!)), 0);
}

function medianTime(act: () => Float64Array, runs: number): number {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    act();
    return performance.now() - start;
  });
  return percentile(times, 0.5);
}

/** Measures three pupils, from nearly perfect to far from it. */
export function waveSpeed(): readonly WaveSpeed[] {
  return pupils.map((pupil) => {
    const [fast, slow] = [ours(pupil), plain(pupil)];
    return {
      ...pupil,
      spread: medianTime(fast.spread, 101),
      transfer: medianTime(fast.transfer, 101),
      plainSpread: medianTime(slow.spread, 1),
      plainTransfer: medianTime(slow.transfer, 1),
      apart: Math.max(
        largestDifference(fast.spread(), slow.spread()),
        largestDifference(fast.transfer(), slow.transfer()),
      ),
    };
  });
}
