import { fastLength } from '#core/fourier/fast-length.ts';
import { fftOf } from '#core/fourier/fft-plan.ts';
import { transform } from '#core/fourier/fft.ts';
import { scratchFor } from '#core/fourier/scratch.ts';
import { envelope, trustAt } from './envelope.ts';
import { withoutSlowPart } from './slow-part.ts';
import { mostDrift, densityAt, marksAt, sampleAt, type CombShape } from './comb.ts';

/** Fewer marks along a line have no pattern that could be told from chance. */
export const fewestMarks = 8;
/** Samples between marks below which a pattern is as fine as the pixels, and may be a false one. */
export const finestPeriod = 2.5;

const windows = 9;
/** A harmonic counts the less the higher it is: so a pattern beats the one of twice its period, which has all its harmonics. */
const harmonics = [1, 2, 3, 4];

/**
 * Combs that may be what a profile shows, the likeliest first: where to begin a fit.
 *
 * The line is cut into overlapping windows; each one's amplitude spectrum is read where a comb would have its harmonics, and summed over windows and
 * harmonics for densities and drifts all over their range. Then the fundamental is followed through the whole line at once.
 *
 * @param profile evenly spaced samples of light
 * @returns up to three; none where the line is too short for any
 */
export function combStarts(profile: Float64Array): readonly CombShape[] {
  const count = profile.length;
  const most = (count - 1) / finestPeriod;
  if (!(most > fewestMarks)) return [];
  const spectra = windowSpectra(profile);
  const found: { score: number; shape: CombShape }[] = [];
  for (let cycles = fewestMarks * 0.8; cycles < most; cycles += Math.max(1, 0.002 * cycles)) {
    let best = { score: -1, shape: { cycles, drift: 0 } };
    const step = Math.min(0.02, Math.max(0.008, 1.3 / cycles));
    for (let drift = -mostDrift; drift <= mostDrift; drift += step) {
      const shape = { cycles, drift };
      const score = scoreOf(spectra, shape, count);
      if (score > best.score) best = { score, shape };
    }
    found.push(best);
  }
  found.sort((one, other) => other.score - one.score);
  const distinct: CombShape[] = [];
  for (const { shape } of found) {
    if (distinct.every(({ cycles }) => Math.abs(shape.cycles / cycles - 1) > 0.08 + 4 / cycles)) distinct.push(shape);
    if (distinct.length === 3) break;
  }
  return distinct.map((shape) => followed(profile, shape));
}

interface WindowSpectrum {
  /** Of its middle. */
  readonly place: number;
  /** By cycles a sample, times `length`. */
  readonly amplitudes: Float64Array;
  readonly length: number;
}

function windowSpectra(profile: Float64Array): readonly WindowSpectrum[] {
  const count = profile.length;
  const width = Math.min(count, Math.max(16, Math.round((2 * count) / (windows + 1))));
  const length = fastLength(Math.max(256, 4 * width));
  const plan = fftOf(length);
  return Array.from({ length: windows }, (_, index) => {
    const start = Math.round((index * (count - width)) / (windows - 1));
    const scratch = scratchFor(length, 1);
    const part = straightened(profile.subarray(start, start + width));
    for (let at = 0; at < width; at++) scratch.re[at] = part[at]! * Math.sin((Math.PI * (at + 0.5)) / width) ** 2;
    transform(plan, scratch, 1);
    const amplitudes = Float64Array.from({ length: length >> 1 }, (_, bin) =>
      Math.hypot(scratch.re[bin]!, scratch.im[bin]!),
    );
    return { place: sampleAt(start + (width - 1) / 2, count), amplitudes, length };
  });
}

/** Without its mean and its slope. */
function straightened(part: Float64Array): Float64Array {
  const middle = (part.length - 1) / 2;
  let [mean, slope, spread] = [0, 0, 0];
  part.forEach((value, at) => {
    mean += value / part.length;
    slope += value * (at - middle);
    spread += (at - middle) ** 2;
  });
  return part.map((value, at) => value - mean - (slope / spread) * (at - middle));
}

function scoreOf(spectra: readonly WindowSpectrum[], shape: CombShape, count: number): number {
  let score = 0;
  for (const { place, amplitudes, length } of spectra) {
    const bin = (densityAt(shape, place) / (count - 1)) * length;
    for (const harmonic of harmonics) {
      const at = Math.round(bin * harmonic);
      if (at < amplitudes.length) score += amplitudes[at]! / harmonic;
    }
  }
  return score;
}

/** In so many pieces the fundamental is looked at against a comb near it: it turns little within one. */
const pieces = 400;

/** The comb near *start* whose fundamental the whole line follows best. */
function followed(profile: Float64Array, start: CombShape): CombShape {
  const against = piecesAgainst(profile, start);
  let best = { power: -1, shape: start };
  const driftStep = 0.8 / start.cycles;
  const driftReach = Math.max(0.02, 2 * driftStep);
  const reach = Math.max(3, 0.004 * start.cycles);
  for (let drift = start.drift - driftReach; drift <= start.drift + driftReach; drift += driftStep) {
    for (let cycles = start.cycles - reach; cycles <= start.cycles + reach; cycles += 0.4) {
      const power = powerOf(against, start, { cycles, drift });
      if (power > best.power) best = { power, shape: { cycles, drift } };
    }
  }
  return best.shape;
}

/** The fundamental of *start* in each piece of the line, as a complex number; soft places count less. */
function piecesAgainst(
  profile: Float64Array,
  start: CombShape,
): { readonly re: Float64Array; readonly im: Float64Array } {
  const level = withoutSlowPart(profile, start);
  const trust = trustAt(envelope(level, start, 1));
  const count = profile.length;
  const [re, im] = [new Float64Array(pieces), new Float64Array(pieces)];
  for (let at = 0; at < count; at++) {
    const angle = 2 * Math.PI * marksAt(start, sampleAt(at, count));
    const piece = Math.min(pieces - 1, Math.floor((at * pieces) / count));
    re[piece]! += level[at]! * trust[at]! * Math.cos(angle);
    im[piece]! -= level[at]! * trust[at]! * Math.sin(angle);
  }
  return { re, im };
}

function powerOf({ re, im }: { re: Float64Array; im: Float64Array }, start: CombShape, shape: CombShape): number {
  let [sumRe, sumIm] = [0, 0];
  for (let piece = 0; piece < pieces; piece++) {
    const s = (piece + 0.5) / pieces - 0.5;
    const angle = 2 * Math.PI * (marksAt(shape, s) - marksAt(start, s));
    const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
    sumRe += re[piece]! * cosine + im[piece]! * sine;
    sumIm += im[piece]! * cosine - re[piece]! * sine;
  }
  return sumRe * sumRe + sumIm * sumIm;
}
