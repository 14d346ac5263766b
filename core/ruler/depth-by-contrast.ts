import { coneOfLens, type Cone } from '#core/depth/cone.ts';
import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { magnificationOffPlaneOfCone } from '#core/depth/blur-of-cone.ts';
import { blurDiscTransfer } from '#core/wave/blur-disc-transfer.ts';
import { requirePositive } from '#core/quantity/errors.ts';
import type { Estimate } from '#core/rig/fit/lens-fit.ts';
import type { LocalContrast } from './contrast-along.ts';
import { solveSymmetric } from './solve-symmetric.ts';

/** Marks along a ruler that leans, and the lens that photographed it. */
export interface SlantedMarks {
  readonly contrasts: readonly LocalContrast[];
  /** *k* of the ruler where the axis passes it, marks from the middle of the line. */
  readonly axisMark: number;
  /** *d*, mm. */
  readonly spacing: number;
  /** *τ*, rad. */
  readonly tilt: number;
  /** *m* where the axis passes the ruler. */
  readonly magnification: number;
  /** Of one pixel of the photograph on the sensor, mm. */
  readonly pitch: number;
  readonly focalLength: number;
  readonly pupilMagnification?: number;
  /** *N*, as marked. */
  readonly fNumber: number;
  /** *c*, mm on the sensor. */
  readonly circleOfConfusion: number;
}

/** The depth of field that came out, beside the one that was to be expected. */
export interface DepthByContrast {
  readonly outcome: 'depth';
  /** *N_w* of the cone whose blur takes the marks' contrast as it was taken. */
  readonly effectiveFNumber: Estimate;
  /** *T* that follows from it, mm along the axis. */
  readonly depthOfField: Estimate;
  /** *N_w* and *T* by the marked f-number. */
  readonly expected: { readonly effectiveFNumber: number; readonly depthOfField: number };
  /** The sharp plane, mm behind the place where the axis passes the ruler. */
  readonly focus: Estimate;
  /** Contrast by depth, mm behind that place: measured, and by the cone found. */
  readonly curve: readonly { readonly depth: number; readonly measured: number; readonly modelled: number }[];
}

export interface NoDepth {
  readonly outcome: 'no depth';
  readonly because: keyof typeof whyNone;
}

const whyNone = {
  flat: 'The ruler leans too little: its marks are as sharp at one end as at the other. Lean it by 30 to 50 degrees.',
  'too few': 'Too few marks are seen along the line to follow how they get softer.',
  'no top':
    'The marks are nowhere sharper than at one end of the line. Let the line go through the sharpest place and beyond.',
  even: 'The marks stay about as sharp all along the line. Open the lens wider, or lean the ruler more.',
} as const;

export const noDepthWords = ({ because }: NoDepth): string => whyNone[because];

const leastTilt = 0.12;

/**
 * The depth of field that came out along a slanted ruler: from how the marks' contrast falls on both sides of the sharp plane.
 *
 * contrast = C₀ |2 J₁(πbν)/(πbν)|, b the blur of a cone of N_w focused δ₀ behind the axis' place; C₀, δ₀ and N_w by least squares, T by N_w and c
 *
 * @returns or why the contrast does not tell, in words by `noDepthWords`
 * @throws OutOfRange for numbers of a lens that are none
 *
 * Assumes an evenly bright disc of blur, so f-numbers at which waves count little (a marked N from 2.8 to 8 or so), even light, and the marked f-number as focal length over entrance pupil.
 * Source: derived in [README](README.md#depth).
 */
export function depthByContrast(given: SlantedMarks): DepthByContrast | NoDepth {
  const { contrasts, tilt, circleOfConfusion: c, spacing, axisMark } = given;
  requirePositive('circle-of-confusion', c);
  if (!(Math.abs(tilt) >= leastTilt)) return { outcome: 'no depth', because: 'flat' };
  if (contrasts.length < 8) return { outcome: 'no depth', because: 'too few' };
  const lens = coneOfLens({ ...given, pupilMagnification: given.pupilMagnification ?? 1 });
  const points = contrasts.map(({ mark, contrast, density }) => ({
    depth: (mark - axisMark) * spacing * Math.sin(tilt),
    contrast,
    density: density / given.pitch,
  }));
  const [near, far] = [Math.min(...points.map(({ depth }) => depth)), Math.max(...points.map(({ depth }) => depth))];
  const model = modelOf(points, lens);
  const best = nearestCone(model, lens.effectiveFNumber, near, far);
  if (best.focus <= near + 0.04 * (far - near) || best.focus >= far - 0.04 * (far - near))
    return { outcome: 'no depth', because: 'no top' };
  const least = Math.min(...best.shares);
  if (least > 0.8) return { outcome: 'no depth', because: 'even' };
  const errors = errorsOf(model, best);
  const depthOf = (effectiveFNumber: number) =>
    depthOfFieldOfCone({ ...model.coneAt(best.focus, effectiveFNumber), circleOfConfusion: c });
  const depthOfField = depthOf(best.fNumber);
  return {
    outcome: 'depth',
    effectiveFNumber: { value: best.fNumber, standardError: errors.fNumber },
    depthOfField: { value: depthOfField, standardError: (depthOfField * errors.fNumber) / best.fNumber },
    expected: { effectiveFNumber: lens.effectiveFNumber, depthOfField: depthOf(lens.effectiveFNumber) },
    focus: { value: best.focus, standardError: errors.focus },
    curve: points.map(({ depth, contrast }, at) => ({
      depth,
      measured: contrast,
      modelled: best.top * best.shares[at]!,
    })),
  };
}

interface Model {
  readonly coneAt: (focus: number, effectiveFNumber: number) => Cone;
  readonly sharesAt: (focus: number, fNumber: number) => readonly number[];
  readonly contrasts: readonly number[];
}

interface Nearest {
  readonly focus: number;
  readonly fNumber: number;
  readonly top: number;
  readonly shares: readonly number[];
  readonly squares: number;
}

function modelOf(points: readonly { depth: number; contrast: number; density: number }[], lens: Cone): Model {
  const coneAt = (focus: number, effectiveFNumber: number): Cone => ({
    effectiveFNumber,
    magnification: magnificationOffPlaneOfCone({ ...lens, offset: focus }),
    inverseEntrancePupilDistance: 1 / (1 / lens.inverseEntrancePupilDistance + focus),
  });
  return {
    coneAt,
    contrasts: points.map(({ contrast }) => contrast),
    sharesAt(focus, fNumber) {
      const cone = coneAt(focus, fNumber);
      return points.map(({ depth, density }) => {
        const offset = depth - focus;
        const stretch = 1 + offset * cone.inverseEntrancePupilDistance;
        if (!(stretch > 0)) return 0;
        const defocusBlur = (cone.magnification ** 2 * Math.abs(offset)) / (fNumber * stretch);
        return Math.abs(blurDiscTransfer({ defocusBlur, spatialFrequency: density }));
      });
    },
  };
}

/** C₀ follows from the rest; the sharp plane and N_w are tried over all that comes into question, then closer and closer. */
function nearestCone(model: Model, expected: number, near: number, far: number): Nearest {
  let best = fitAt(model, (near + far) / 2, expected);
  let [reachFocus, reachRatio] = [(far - near) / 2, 4];
  for (let round = 0; round < 14; round++) {
    const { focus, fNumber } = best;
    for (let i = -8; i <= 8; i++) {
      for (let j = -8; j <= 8; j++) {
        const tried = fitAt(model, focus + (i / 8) * reachFocus, fNumber * reachRatio ** (j / 8));
        if (tried.squares < best.squares && tried.focus > near && tried.focus < far) best = tried;
      }
    }
    reachFocus /= 2;
    reachRatio = Math.sqrt(reachRatio);
  }
  return best;
}

function fitAt(model: Model, focus: number, fNumber: number): Nearest {
  const shares = model.sharesAt(focus, fNumber);
  let [product, square] = [0, 0];
  shares.forEach((share, at) => {
    product += share * model.contrasts[at]!;
    square += share * share;
  });
  const top = product / square;
  const squares = shares.reduce((sum, share, at) => sum + (model.contrasts[at]! - top * share) ** 2, 0);
  return { focus, fNumber, top, shares, squares };
}

/** From the residuals, to first order; C₀ is one of the unknowns. */
function errorsOf(model: Model, best: Nearest): { readonly focus: number; readonly fNumber: number } {
  const count = model.contrasts.length;
  const [stepFocus, stepNumber] = [1e-4 * (1 + Math.abs(best.focus)), 1e-4 * best.fNumber];
  const slope = (one: readonly number[], other: readonly number[], step: number) =>
    one.map((share, at) => (best.top * (share - other[at]!)) / (2 * step));
  const { focus, fNumber } = best;
  const columns = [
    best.shares,
    slope(model.sharesAt(focus + stepFocus, fNumber), model.sharesAt(focus - stepFocus, fNumber), stepFocus),
    slope(model.sharesAt(focus, fNumber + stepNumber), model.sharesAt(focus, fNumber - stepNumber), stepNumber),
  ];
  const normal = columns.map((one) =>
    columns.map((other) => one.reduce((sum, value, at) => sum + value * other[at]!, 0)),
  );
  const variance = best.squares / Math.max(1, count - 3);
  const errorOf = (which: number) => {
    const solved = solveSymmetric(
      normal,
      [0, 1, 2].map((index) => (index === which ? 1 : 0)),
    );
    return Math.sqrt(variance * Math.max(0, solved?.[which] ?? Infinity));
  };
  return { focus: errorOf(1), fNumber: errorOf(2) };
}
