import { circleOfConfusionByWidth } from '#core/depth/circle-of-confusion-by-width.formula.ts';
import { depthOfFieldCloseUp } from '#core/depth/depth-of-field-close-up.formula.ts';
import { depthOfFieldOfCone } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { limitsOfCone } from '#core/depth/limits-of-cone.ts';
import { waveDepth } from '#core/depth/wave-depth.formula.ts';
import { keeperFrames } from '#core/exposure/keeper-frames.formula.ts';
import { keeperShare } from '#core/exposure/keeper-share.formula.ts';
import { slowestExposureTime } from '#core/exposure/slowest-exposure-time.formula.ts';
import { angleOfView } from '#core/gaussian/angle-of-view.formula.ts';
import { cropFactor } from '#core/gaussian/crop-factor.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { finderLoss } from '#core/gaussian/finder-loss.formula.ts';
import { numericalAperture } from '#core/gaussian/numerical-aperture.formula.ts';
import { pixelsPerMillimetre } from '#core/gaussian/pixels-per-millimetre.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import type { Lens } from '#core/rig/lens.ts';
import type { RigPositions } from '#core/rig/positions.ts';
import type { SharpRig } from '#core/rig/solved-rig.ts';
import { frameCount } from '#core/stack/frame-count.formula.ts';
import { frameStep } from '#core/stack/frame-step.formula.ts';
import { airyDiameter } from '#core/wave/airy-diameter.formula.ts';
import { cutoffFrequency } from '#core/wave/cutoff-frequency.formula.ts';
import { nyquistFrequency } from '#core/wave/nyquist-frequency.formula.ts';
import type { Chain } from '#site/chain/chain.ts';
import type { Thing } from '#site/chain/thing.ts';
import { numberIn } from '#site/kit/part.ts';
import type { Conditions } from './conditions.ts';
import { placedChain, unlessImpossible, type ImpossibleLinks, type PlacedChain } from './placed.ts';

/** Answers in their groups, in the order in which a page lists them. */
export const groups = {
  size: ['magnification', 'field-width', 'field-height', 'pixels-per-millimetre', 'angle-of-view', 'crop-factor'],
  distance: [
    'working-distance',
    'focus-distance',
    'subject-distance',
    'image-distance',
    'focal-length',
    'principal-separation',
    'entrance-pupil-distance',
  ],
  light: [
    'effective-f-number',
    'f-number',
    'light-loss',
    'finder-loss',
    'entrance-pupil',
    'exit-pupil',
    'numerical-aperture',
  ],
  depth: [
    'depth-of-field',
    'near-limit',
    'far-limit',
    'depth-of-field-close-up',
    'wave-depth',
    'frame-step',
    'frame-count',
  ],
  // The best f-number is found beside the page, and comes later: see `best.ts`.
  diffraction: ['best-f-number', 'airy-diameter', 'cutoff-frequency', 'nyquist-frequency'],
  movement: ['exposure-time', 'keeper-share', 'keeper-frames'],
} as const satisfies Readonly<Record<string, readonly QuantityName[]>>;

export type Group = keyof typeof groups;
export type AnsweredName = (typeof groups)[Group][number];
export type Answers = Readonly<Partial<Record<AnsweredName, number>>>;

/** A chain that was put together, and every answer that it has. */
export interface BuiltChain extends PlacedChain {
  readonly answers: Answers;
  /** *c* that the answers are for. */
  readonly circle: number;
  /** Width of a pixel, mm, where the camera says how many it has. */
  readonly pixelPitch?: number;
}

/** Puts a chain together and asks the core for everything about it. Throws for nothing that a reader can put together. */
export function builtChain(
  chain: Chain,
  conditions: Conditions,
  lensOf?: (thing: Thing) => Lens,
): BuiltChain | ImpossibleLinks {
  const placed = placedChain(chain, lensOf);
  return placed.kind === 'built' ? answeredChain(chain, placed, conditions) : placed;
}

/** Asks the core for everything about a chain that was put together. */
export function answeredChain(chain: Chain, placed: PlacedChain, conditions: Conditions): BuiltChain | ImpossibleLinks {
  const { positions, linkOf } = placed;
  const { part } = chain[0]!.thing;
  const sensorWidth = numberIn(part, 'sensor-width')!;
  const circle = conditions['circle-of-confusion'] ?? circleOfConfusionByWidth({ sensorWidth });
  const pixels = numberIn(part, 'pixels-across');
  const camera = { circle, ...(pixels !== undefined && { pixelPitch: sensorWidth / pixels }) };
  return unlessImpossible(chain, linkOf, () => ({
    ...placed,
    answers: answersOf(chain, positions, linkOf, { ...camera, conditions }),
    ...camera,
  }));
}

/** Within this two ways to the same number agree: rounding. */
const alike = 1e-6;

interface Around {
  readonly circle: number;
  readonly pixelPitch?: number;
  readonly conditions: Conditions;
}

function answersOf(chain: Chain, positions: RigPositions, linkOf: readonly number[], around: Around): Answers {
  const { solved, entrancePupil, exitPupil, sensor } = positions;
  if (solved.sharpPlane === 'nowhere') return {};
  const { effectiveFNumber, fNumber, lightLoss } = solved;
  const { wavelength } = around.conditions;
  const stop = chain[linkOf[solved.limitedBy]!]!.thing;
  const { pixelPitch } = around;
  const light: Tried = {
    'effective-f-number': () => effectiveFNumber,
    'f-number': () => fNumber ?? undefined,
    'light-loss': () => lightLoss ?? undefined,
    'finder-loss': () => {
      const maxAperture = stop.kind === 'lens' ? numberIn(stop.part, 'max-aperture') : undefined;
      return maxAperture === undefined ? undefined : finderLoss({ effectiveFNumber, maxAperture });
    },
    'entrance-pupil': () => entrancePupil?.diameter,
    'exit-pupil': () => exitPupil?.diameter,
    'airy-diameter': () => airyDiameter({ wavelength, effectiveFNumber }),
    'cutoff-frequency': () => cutoffFrequency({ wavelength, effectiveFNumber }),
    'nyquist-frequency': () => (pixelPitch === undefined ? undefined : nyquistFrequency({ pixelPitch })),
    'crop-factor': () => cropFactor({ sensorWidth: sensor.width, sensorHeight: sensor.height }),
  };
  if (solved.sharpPlane === 'at infinity') {
    const focalLength = positions.whole?.focalLength ?? NaN;
    const far = { sensorWidth: sensor.width, focalLength, magnification: 0, pupilMagnification: 1 };
    return found({ ...light, ...wholeLens(positions), 'angle-of-view': () => angleOfView(far) });
  }
  return found({ ...light, ...wholeLens(positions), ...ofSharpPlane(positions, solved, around) });
}

/** Of the chain as one lens. */
function wholeLens({ whole }: RigPositions): Tried {
  if (!whole) return {};
  return {
    'focal-length': () => whole.focalLength,
    'image-distance': () => whole.rearPrincipal,
    'principal-separation': () => whole.frontPrincipal - whole.rearPrincipal,
  };
}

function ofSharpPlane(positions: RigPositions, solved: SharpRig, { circle, pixelPitch, conditions }: Around): Tried {
  const { whole, sensor, sharpPlane, entrancePupil, exitPupil } = positions;
  const { magnification, effectiveFNumber } = solved;
  const lit = { magnification, effectiveFNumber };
  const cone = { ...solved, circleOfConfusion: circle };
  const depthOfField = depthOfFieldOfCone(cone);
  const { nearLimit, farLimit } = limitsOfCone(solved, circle);
  const { overlap, sway, wavelength } = conditions;
  const stack = { depthOfField, overlap };
  const keepers = () => keeperShare({ nearLimit, farLimit, sway, focusOffset: 0 });
  const focalLength = whole?.focalLength ?? NaN;
  return {
    magnification: () => magnification,
    'field-width': () => solved.fieldWidth,
    'field-height': () => solved.fieldHeight,
    'pixels-per-millimetre': () =>
      pixelPitch === undefined ? undefined : pixelsPerMillimetre({ magnification, pixelPitch }),
    'angle-of-view': () => {
      if (!entrancePupil || !exitPupil || !solved.pupil) return undefined;
      const pupilMagnification = exitPupil.diameter / entrancePupil.diameter;
      const lens = { focalLength, magnification, pupilMagnification };
      // Where a pupil is imaged upside down on its way the chain is no such lens.
      const off = entrancePupilDistance(lens) / solved.pupil.entrancePupilDistance - 1;
      return Math.abs(off) < alike ? angleOfView({ sensorWidth: sensor.width, ...lens }) : undefined;
    },
    'working-distance': () => solved.workingDistance,
    'focus-distance': () => solved.focusDistance,
    'subject-distance': () => (whole ? sharpPlane! - whole.frontPrincipal : undefined),
    'entrance-pupil-distance': () => solved.pupil?.entrancePupilDistance,
    'numerical-aperture': () => numericalAperture(lit),
    'depth-of-field': () => depthOfField,
    'near-limit': () => nearLimit,
    'far-limit': () => farLimit,
    'depth-of-field-close-up': () => depthOfFieldCloseUp({ ...lit, circleOfConfusion: circle }),
    'wave-depth': () => waveDepth({ wavelength, numericalAperture: numericalAperture(lit) }),
    'frame-step': () => frameStep(stack),
    'frame-count': () => frameCount({ ...stack, subjectDepth: conditions['subject-depth'] }),
    'exposure-time': () =>
      slowestExposureTime({
        circleOfConfusion: circle,
        focalLength,
        magnification,
        principalSeparation: whole ? whole.frontPrincipal - whole.rearPrincipal : NaN,
        shakeRate: conditions['shake-rate'],
        stabilisation: conditions.stabilisation,
        sidewaysSpeed: conditions['sideways-speed'],
        subjectSpeed: conditions['subject-speed'],
      }),
    'keeper-share': keepers,
    'keeper-frames': () => keeperFrames({ keeperShare: keepers() }),
  };
}

type Tried = Partial<Record<AnsweredName, () => number | undefined>>;

/** Those that there are: what the core refuses, and what is none, is left out. */
function found(tried: Tried): Answers {
  const answers: Partial<Record<AnsweredName, number>> = {};
  for (const [name, ask] of Object.entries(tried) as [AnsweredName, () => number | undefined][]) {
    try {
      const value = ask();
      if (value !== undefined && !Number.isNaN(value)) answers[name] = value;
    } catch (error) {
      if (!(error instanceof OutOfRange)) throw error;
    }
  }
  return answers;
}
