import { closeFocusFocalLength } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { magnificationAtFocusDistance } from '#core/gaussian/magnification-at-focus-distance.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import type { Focusing, FocusState } from '../lens.ts';
import { endsOf, isMeasured, type AssumedOfLens, type KnownLens } from './known-lens.ts';

/** A lens at infinity, and its rim in front of the sensor at its closest, mm. */
export interface FarSetting extends Omit<FocusState, 'focusMagnification' | 'fNumberDrift'> {
  readonly closestRim: number;
}

/** One of the ways in which a lens may come close. */
export type CloseSetting = (far: FarSetting) => Focusing;

export interface CloseSettings {
  readonly usual: CloseSetting;
  readonly extremes: readonly CloseSetting[];
  readonly assumed: readonly AssumedOfLens[];
  readonly measured: readonly AssumedOfLens[];
}

/** At which *m₀* and *L* it is closest; *L* is Infinity where nothing asks for it. */
type Closest = (far: FarSetting) => readonly [magnification: number, focusDistance: number];

/**
 * How a lens may come close where *m₀*, *L* or both are known.
 *
 * moved as a whole L = f (2 + m₀ + 1/m₀) + HH'; focused inside f/(1 + m₀) ≤ f_close ≤ f, and N ≤ N_w ≤ N (1 + m₀/P)
 *
 * @throws OutOfRange where neither is known
 *
 * Source: derived in [README](README.md#what-is-assumed).
 */
export function closeSettings(known: KnownLens): CloseSettings {
  const { closestMagnification: magnification, closestFocusDistance: distance } = known;
  if (magnification === undefined && distance === undefined) {
    throw new OutOfRange('focus-magnification', NaN, 'the greatest magnification, or else the nearest focus distance');
  }
  const inside = known.focusing === 'inside';
  const [first, ...others]: readonly Closest[] =
    magnification === undefined
      ? distancesAlone(distance!, inside)
      : withMagnifications(endsOf(magnification), distance, inside);
  const ways = inside ? insideWays : [];
  const setting =
    (closest: Closest, way?: InsideWay): CloseSetting =>
    (far) => {
      const [closestMagnification, focusDistance] = closest(far);
      if (!inside || closestMagnification === 0) return { by: 'unit', closestMagnification };
      return insideFocusing(far, closestMagnification, focusDistance, way);
    };
  return {
    usual: setting(first!),
    extremes: [first!, ...others].flatMap((closest) =>
      inside ? ways.map((way) => setting(closest, way)) : [setting(closest)],
    ),
    assumed: [
      ...(magnification === undefined ? (['focus-magnification'] as const) : []),
      ...(inside && distance === undefined ? (['focus-distance'] as const) : []),
      ...(inside ? (['focal-length'] as const) : []),
    ],
    measured: isMeasured(magnification) ? ['focus-magnification'] : [],
  };
}

/** By the nearest distance alone: as if it moved as a whole, or as if its focal length fell as far as it can. */
function distancesAlone(distance: number, inside: boolean): readonly Closest[] {
  const whole: Closest = ({ focalLength, principalSeparation }) => [
    magnificationAtFocusDistance({ focalLength, focusDistance: distance, principalSeparation }),
    distance,
  ];
  const still: Closest = ({ focalLength, principalSeparation }) => [
    focalLength / (distance - principalSeparation - focalLength),
    distance,
  ];
  return inside ? [whole, still] : [whole];
}

function withMagnifications(
  { least, usual, most }: ReturnType<typeof endsOf>,
  distance: number | undefined,
  inside: boolean,
): readonly Closest[] {
  const values = least === most ? [usual] : [usual, Math.max(0, least), most];
  if (!inside || distance !== undefined) return values.map((m): Closest => () => [m, distance ?? Infinity]);
  const still =
    (m: number): Closest =>
    ({ focalLength: f, principalSeparation }) => [m, (f * (1 + m)) / m + principalSeparation];
  const whole =
    (m: number): Closest =>
    ({ focalLength: f, principalSeparation }) => [m, (f * (1 + m) ** 2) / m + principalSeparation];
  const between: Closest = (far) => [usual, (still(usual)(far)[1] + whole(usual)(far)[1]) / 2];
  return [between, ...values.flatMap((m) => [still(m), whole(m)])];
}

/** Which ends are met by a lens that focuses inside: of its focal length close up, of how far its exit pupil moves, and of its cone. */
interface InsideWay {
  readonly focalLength: 'least' | 'most';
  readonly pupil: 'stays' | 'moves';
  readonly cone: 'stays' | 'narrows';
}

const insideWays: readonly InsideWay[] = (['least', 'most'] as const).flatMap((focalLength) =>
  (['stays', 'moves'] as const).flatMap((pupil) =>
    (['stays', 'narrows'] as const).map((cone) => ({ focalLength, pupil, cone })),
  ),
);

/** Known at infinity and at its closest: with planes and pupils as far apart as ever where no *way* says otherwise. */
function insideFocusing(far: FarSetting, m: number, focusDistance: number, way?: InsideWay): Focusing {
  const { focalLength: infinity, pupilMagnification: pupil } = far;
  const focalLength = way
    ? infinity / (way.focalLength === 'least' ? 1 + m : 1)
    : closeFocusFocalLength({ focusDistance, magnification: m, principalSeparation: far.principalSeparation });
  // L is f (2 + m + 1/m) + HH'.
  const principalSeparation = focusDistance - focalLength * (2 + m + 1 / m);
  // The exit pupil is f (m + P) before the sensor.
  const pupilMagnification = way ? (infinity * (pupil + (way.pupil === 'moves' ? m : 0))) / focalLength - m : pupil;
  const cone = way?.cone === 'stays' ? 1 : 1 + m / pupil;
  const fNumberDrift = way ? cone / (1 + m / pupilMagnification) : 1;
  const close: FocusState = {
    focusMagnification: m,
    focalLength,
    principalSeparation,
    frontPrincipalDepth: far.closestRim - focalLength * (1 + m) - principalSeparation,
    pupilMagnification,
    fNumberDrift,
  };
  const { closestRim: _, ...first } = far;
  return { by: 'states', states: [{ ...first, focusMagnification: 0, fNumberDrift: 1 }, close] };
}
