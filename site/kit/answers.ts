import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { fieldWidth } from '#core/gaussian/field-width.formula.ts';
import { magnificationFromExtension } from '#core/gaussian/magnification-from-extension.formula.ts';
import { subjectDistance } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistance } from '#core/gaussian/working-distance.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import type { PossibleLenses } from '#core/rig/assumed/known-lens.ts';
import { possibleLenses } from '#core/rig/assumed/possible-lenses.ts';
import { spanOver, type AnswerSpan } from '#core/rig/assumed/span-over.ts';
import { closestMagnification, stateAt } from '#core/rig/lens-in-use.ts';
import type { Lens } from '#core/rig/lens.ts';
import { refusalInWords } from '#site/state/answer.ts';
import { knownLens, registerOf } from './known-lens.ts';
import { numberIn, wordsIn, type Kit, type KitPart } from './part.ts';

/** What a lens gives at its closest focus, in the order in which it is asked for. */
export const answered = ['magnification', 'field-width', 'working-distance', 'effective-f-number'] as const;

type Answered = (typeof answered)[number];
type Answers = Readonly<Record<Answered, number>>;

/** A lens on a camera: its answers, or why there are none. */
export type LensOnCamera =
  | {
      readonly kind: 'answers';
      readonly lenses: PossibleLenses;
      readonly spans: Readonly<Record<Answered, AnswerSpan | undefined>>;
    }
  | { readonly kind: 'none'; readonly why: string };

/**
 * What a lens of the kit gives on one of its cameras with so much of rings between, focused as close as it goes by itself and wide open.
 *
 * Every answer is asked of the lens as it is taken to be and of those between which it lies.
 */
export function lensOnCamera(lens: KitPart, camera: KitPart, extension: number, kit: Kit): LensOnCamera {
  const register = registerOf(lens, kit);
  if (register === undefined) {
    return {
      kind: 'none',
      why: 'Its register is not known: no camera of your kit has its mount. Enter that camera, or the lens’s own register.',
    };
  }
  if (wordsIn(lens, 'mount') !== wordsIn(camera, 'mount')) {
    return { kind: 'none', why: 'It has another mount than this camera.' };
  }
  try {
    const lenses = possibleLenses(knownLens(lens, register));
    // A camera of another depth than the lens is made for is so much of a ring, or takes it away.
    const added = extension + numberIn(camera, 'register-distance')! - register;
    const given = new Map(lenses.extremes.map((one) => [one, answersOf(one, lens, camera, added)]));
    const spans = answered.map((name) => [name, spanOver(lenses, (one) => given.get(one)?.[name])]);
    return { kind: 'answers', lenses, spans: Object.fromEntries(spans) as Record<Answered, AnswerSpan | undefined> };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    return { kind: 'none', why: refusalInWords(error) };
  }
}

/** Undefined for a lens that shows nothing sharp so: set to infinity without a ring, or too near the sensor. */
function answersOf(lens: Lens, part: KitPart, camera: KitPart, extension: number): Answers | undefined {
  const state = stateAt(lens, closestMagnification(lens));
  const { focalLength } = state;
  if (state.focusMagnification + extension / focalLength <= 0) return undefined;
  const magnification = magnificationFromExtension({ ...state, extension });
  return {
    magnification,
    'field-width': fieldWidth({ sensorWidth: numberIn(camera, 'sensor-width')!, magnification }),
    'working-distance': workingDistance({ ...state, subjectDistance: subjectDistance({ focalLength, magnification }) }),
    'effective-f-number': effectiveFNumber({
      ...state,
      // As it counts at this setting.
      fNumber: numberIn(part, 'max-aperture')! * state.fNumberDrift,
      magnification,
    }),
  };
}
