import { fitDistances, type LensByDistances } from '#core/rig/fit/fit-distances.ts';
import { fitSettings, type SetPhotograph } from '#core/rig/fit/fit-settings.ts';
import { lensFitWords, type Estimate } from '#core/rig/fit/lens-fit.ts';
import { FaultyPhotograph } from '#core/rig/fit/photograph.ts';
import { magnificationErrors } from '#core/rig/fit/reading-errors.ts';
import type { KeptPhotograph } from './photograph.ts';
import { resultOf, type Result } from './results.ts';

/** Photographs as the core takes them; those that are not measured are left out. */
export function forFit(photographs: readonly KeptPhotograph[]): readonly (SetPhotograph & { readonly id: number })[] {
  return photographs.flatMap((one) => {
    const result = resultOf(one);
    if (!result) return [];
    const { id, setting, extension, workingDistance, sensorWidth } = one;
    return {
      id,
      setting,
      extension,
      sensorWidth: sensorWidth!,
      fieldWidth: result.fieldWidth.value,
      ...errorOf(result),
      ...(workingDistance !== undefined && { workingDistance }),
    };
  });
}

/** That of the reading, and, where P is assumed and counts, that of a number anywhere between its least and most. */
function errorOf({ fieldWidth, overAssumed }: Result): Pick<SetPhotograph, 'fieldWidthError'> {
  const { value, standardError } = fieldWidth;
  if (standardError === null) return {};
  const open = overAssumed ? (overAssumed.most - overAssumed.least) / (overAssumed.most + overAssumed.least) : 0;
  return { fieldWidthError: Math.hypot(standardError, (open / Math.sqrt(3)) * value) };
}

/** What photographs tell of a lens, whichever way they do. */
export interface MeasuredLens {
  readonly focalLength: Estimate;
  readonly settings: readonly { readonly setting: string; readonly focusMagnification: Estimate }[];
  readonly frontPrincipalDepth: Estimate | null;
}

/** One photograph beside the fit. */
export interface FitRow {
  readonly id: number;
  /** Rings, mm, or the magnification: what the photographs differ by. */
  readonly over: number;
  readonly measured: number;
  readonly fitted: number;
  /** Of what was measured, by itself; null where it is not known. */
  readonly standardError: number | null;
  readonly studentised: number | null;
  readonly focalLengthWithout: number | null;
}

export interface ShownFit {
  /** By rings what is fitted are magnifications, by distances working distances. */
  readonly by: 'rings' | 'distances';
  readonly lens: MeasuredLens;
  readonly rows: readonly FitRow[];
  readonly spoiler: FitRow | undefined;
  /** How much farther the photographs scatter than their own errors explain; null where nothing is left over to tell it by. */
  readonly misfit: number | null;
}

export interface LensFits {
  /** By rings where these tell, else by distances; undefined where neither does. */
  readonly fit: ShownFit | undefined;
  /** Beside a fit by rings. */
  readonly byDistances: LensByDistances | undefined;
  readonly words: readonly string[];
}

/**
 * The lens that took the photographs.
 *
 * @param isWhole it moves out as a whole when it focuses: only then do distances tell of it
 */
export function fitsOf(photographs: ReturnType<typeof forFit>, isWhole: boolean): LensFits {
  try {
    const rings = fitSettings(photographs);
    const distances = (isWhole && fitDistances(photographs)) || undefined;
    if (rings.outcome === 'fitted') {
      const rows = rings.photographs.map((one, at) => {
        const { id, extension } = photographs[at]!;
        const { magnification: measured, fitted, standardError, studentised, focalLengthWithout } = one;
        return { id, over: extension, measured, fitted, standardError, studentised, focalLengthWithout };
      });
      const spoiler = rings.spoiler === null ? undefined : rows[rings.spoiler];
      const { misfit } = rings;
      return {
        fit: { by: 'rings', lens: rings, rows, spoiler, misfit },
        byDistances: distances,
        words: [...lensFitWords(rings), ...misfitWords(misfit, rows)],
      };
    }
    if (rings.outcome === 'contradictory' || !distances)
      return { fit: undefined, byDistances: undefined, words: lensFitWords(rings) };
    const fit = shownByDistances(photographs, distances);
    return {
      fit,
      byDistances: undefined,
      words: [
        'The rings do not tell the focal length; how far the rim was from the ruler does.',
        ...misfitWords(fit.misfit, fit.rows),
      ],
    };
  } catch (error) {
    if (!(error instanceof FaultyPhotograph)) throw error;
    const words = ['One of these photographs has numbers that no photograph has: look at its field width.'];
    return { fit: undefined, byDistances: undefined, words };
  }
}

/** From that on the scatter is worth a sentence. */
const worthSaying = 1.05;

/** Where the errors beside the lens come from. */
function misfitWords(misfit: number | null, rows: readonly FitRow[]): readonly string[] {
  if (rows.some(({ standardError }) => standardError === null)) return [];
  if (misfit === null)
    return ['There are just as many as it takes: the errors are those of the readings, and one more would check them.'];
  if (misfit < worthSaying) return [];
  return [
    `The photographs scatter ${misfit.toPrecision(2)} times as far as their own errors explain, so all errors here are that much wider.`,
  ];
}

function shownByDistances(photographs: ReturnType<typeof forFit>, found: LensByDistances): ShownFit {
  const { focalLength, frontPrincipalDepth } = found;
  const rows = found.photographs.map(({ place, workingDistance, ...one }) => {
    const { id, sensorWidth, fieldWidth } = photographs[place]!;
    const { fitted, standardError, studentised, focalLengthWithout } = one;
    const over = sensorWidth / fieldWidth;
    return { id, over, measured: workingDistance, fitted, standardError, studentised, focalLengthWithout };
  });
  const names = [...new Set(photographs.map(({ setting }) => setting))];
  const settings = names.map((setting) => {
    const those = photographs.filter((one) => one.setting === setting);
    const mean = (of: (one: (typeof those)[number]) => number) =>
      those.reduce((sum, one) => sum + of(one), 0) / those.length;
    const { value, standardError } = focalLength;
    const rings = mean(({ extension }) => extension);
    const ofMean = Math.hypot(...(magnificationErrors(those) ?? [])) / those.length;
    return {
      setting,
      focusMagnification: {
        // What is left of m without the rings' e/f; the error is that of f and of m.
        value: mean(({ sensorWidth, fieldWidth }) => sensorWidth / fieldWidth) - rings / value,
        standardError: standardError === null ? null : Math.hypot(ofMean, (rings * standardError) / value ** 2),
      },
    };
  });
  const spoiler = found.spoiler === null ? undefined : rows[found.spoiler];
  return { by: 'distances', lens: { focalLength, settings, frontPrincipalDepth }, rows, spoiler, misfit: found.misfit };
}
