import { OutOfRange } from '#core/quantity/errors.ts';
import { closestMagnification, stateAt } from '../lens-in-use.ts';
import type { Lens } from '../lens.ts';
import { closeSettings, type CloseSetting } from './close-settings.ts';
import {
  endsOf,
  isMeasured,
  type AssumedOfLens,
  type KnownNumber,
  type KnownLens,
  type PossibleLenses,
} from './known-lens.ts';
import {
  usualBarrelLength,
  usualPrincipalSeparation,
  usualPupilMagnification,
  type Assumption,
} from './usual-lenses.ts';

/** Which value of each thing that may be open a lens has. */
type Values = (of: Assumption) => number;

/**
 * The lens that an owner's knowledge describes, and the lenses between which it lies where that leaves something open.
 *
 * h = R + length − f − HH'; m₀ and L follow from each other where one is known
 *
 * @param known what is printed, measured with a ruler, or fitted
 * @returns the usual lens; every lens in which each thing that is assumed, or measured with an error (then two standard errors to both sides), is at one
 *   of its ends, and which come close in each of the extreme ways. Which quantities were assumed, and which measured.
 * @throws OutOfRange for what no lens can have, by name: a rim behind its own flange, a subject nearer than a lens of that focal length can show it
 *
 * Assumes Gaussian optics; what is taken where nothing is known is our own assumption. Source: derived in [README](README.md#what-is-assumed).
 */
export function possibleLenses(known: KnownLens): PossibleLenses {
  const { registerDistance, barrelLength, apertureControl, rearProtrusion } = known;
  const focalLength = endsOf(known.focalLength);
  const otherwise = (value: KnownNumber | undefined, usual: (focalLength: number) => Assumption) =>
    value === undefined ? usual(focalLength.usual) : endsOf(value);
  const pupil = otherwise(known.pupilMagnification, usualPupilMagnification);
  const separation = otherwise(known.principalSeparation, usualPrincipalSeparation);
  const length = otherwise(barrelLength, usualBarrelLength);
  const depth = known.frontPrincipalDepth === undefined ? undefined : endsOf(known.frontPrincipalDepth);
  const grows = known.closestBarrelLength === undefined ? 0 : known.closestBarrelLength - length.usual;
  const close = closeSettings(known);

  const lensAt = (at: Values, closeAs: CloseSetting): Lens => {
    const f = at(focalLength);
    const beyondFlange = f - registerDistance;
    const given = depth && at(depth);
    const principalSeparation =
      given === undefined || known.principalSeparation !== undefined
        ? at(separation)
        : barrelLength !== undefined
          ? barrelLength - beyondFlange - given
          : // Planes so near each other that the rim would be behind the flange are not assumed.
            Math.max(at(separation), -beyondFlange - given);
    const frontPrincipalDepth = given ?? at(length) - beyondFlange - principalSeparation;
    const points = { focalLength: f, principalSeparation, frontPrincipalDepth, pupilMagnification: at(pupil) };
    return {
      ...points,
      registerDistance,
      apertureControl,
      ...(rearProtrusion !== undefined && { rearProtrusion }),
      focusing: closeAs({ ...points, closestRim: f + principalSeparation + frontPrincipalDepth + grows }),
    };
  };

  const usual = checked(lensAt(({ usual }) => usual, close.usual));
  const ofFar = openIn(known);
  const assumed = [...ofFar.assumed, ...close.assumed];
  const measured = [...ofFar.measured, ...close.measured];
  if (assumed.length + measured.length === 0) return { usual, extremes: [usual], assumed, measured };
  const open = [focalLength, pupil, separation, depth ?? length].filter(({ least, most }) => least !== most);
  const extremes = corners(open).flatMap((at) =>
    close.extremes.map((closeAs) => possible(() => checked(lensAt(at, closeAs)))),
  );
  return { usual, extremes: [usual, ...extremes.filter((lens) => lens !== undefined)], assumed, measured };
}

/** What is not known of a lens set to infinity, and what is known with an error. */
function openIn(known: KnownLens): Record<'assumed' | 'measured', readonly AssumedOfLens[]> {
  const { focalLength, pupilMagnification, principalSeparation, frontPrincipalDepth, barrelLength } = known;
  const noLength = barrelLength === undefined;
  const noDepth = frontPrincipalDepth === undefined;
  const isOpen: Partial<Record<AssumedOfLens, boolean>> = {
    'pupil-magnification': pupilMagnification === undefined,
    'front-principal-depth': noDepth && (noLength || principalSeparation === undefined),
    'principal-separation': principalSeparation === undefined && (noDepth || noLength),
    'barrel-length': noLength && noDepth,
  };
  const withError: Partial<Record<AssumedOfLens, boolean>> = {
    'focal-length': isMeasured(focalLength),
    'pupil-magnification': isMeasured(pupilMagnification),
    'front-principal-depth': isMeasured(frontPrincipalDepth),
    'principal-separation': isMeasured(principalSeparation),
  };
  const those = (of: object) =>
    (Object.entries(of) as [AssumedOfLens, boolean][]).filter(([, is]) => is).map(([name]) => name);
  return { assumed: those(isOpen), measured: those(withError) };
}

/** Every way in which what is open may be at its ends; one way, the usual, where nothing is. */
function corners(open: readonly Assumption[]): readonly Values[] {
  return Array.from({ length: 2 ** open.length }, (_, corner): Values => (of) => {
    const place = open.indexOf(of);
    return place < 0 ? of.usual : corner & (1 << place) ? of.most : of.least;
  });
}

/** Of all the way from far to close, where a lens is looked at whether it can be. */
const looks = 8;

/** Throws where no lens is so, or comes as close as it is said to, or can stand in between. */
function checked(lens: Lens): Lens {
  const closest = closestMagnification(lens);
  for (let look = looks; look > 0; look--) stateAt(lens, (closest * look) / looks);
  return lens;
}

/** The lens at a corner; none where what is assumed there contradicts what is known. */
function possible(made: () => Lens): Lens | undefined {
  try {
    return made();
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}
