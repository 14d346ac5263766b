import { fitDistances, type LensByDistances } from '#core/rig/fit/fit-distances.ts';
import { fitSettings, type SetPhotograph } from '#core/rig/fit/fit-settings.ts';
import { lensFitWords, type Estimate } from '#core/rig/fit/lens-fit.ts';
import { FaultyPhotograph } from '#core/rig/fit/photograph.ts';
import type { KeptPhotograph } from './photograph.ts';
import { resultOf } from './results.ts';

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
      ...(workingDistance !== undefined && { workingDistance }),
    };
  });
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
  readonly studentised: number | null;
  readonly focalLengthWithout: number | null;
}

export interface ShownFit {
  /** By rings what is fitted are magnifications, by distances working distances. */
  readonly by: 'rings' | 'distances';
  readonly lens: MeasuredLens;
  readonly rows: readonly FitRow[];
  readonly spoiler: FitRow | undefined;
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
    const words = lensFitWords(rings);
    if (rings.outcome === 'fitted') {
      const rows = rings.photographs.map((one, at) => {
        const { id, extension } = photographs[at]!;
        const { magnification, fitted, studentised, focalLengthWithout } = one;
        return { id, over: extension, measured: magnification, fitted, studentised, focalLengthWithout };
      });
      const spoiler = rings.spoiler === null ? undefined : rows[rings.spoiler];
      return { fit: { by: 'rings', lens: rings, rows, spoiler }, byDistances: distances, words };
    }
    if (rings.outcome === 'contradictory' || !distances) return { fit: undefined, byDistances: undefined, words };
    return {
      fit: shownByDistances(photographs, distances),
      byDistances: undefined,
      words: ['The rings do not tell the focal length; how far the rim was from the ruler does.'],
    };
  } catch (error) {
    if (!(error instanceof FaultyPhotograph)) throw error;
    const words = ['One of these photographs has numbers that no photograph has: look at its field width.'];
    return { fit: undefined, byDistances: undefined, words };
  }
}

function shownByDistances(photographs: ReturnType<typeof forFit>, found: LensByDistances): ShownFit {
  const { focalLength, frontPrincipalDepth } = found;
  const rows = found.photographs.map(({ place, workingDistance, fitted, studentised, focalLengthWithout }) => {
    const { id, sensorWidth, fieldWidth } = photographs[place]!;
    return { id, over: sensorWidth / fieldWidth, measured: workingDistance, fitted, studentised, focalLengthWithout };
  });
  const names = [...new Set(photographs.map(({ setting }) => setting))];
  const settings = names.map((setting) => {
    const those = photographs.filter((one) => one.setting === setting);
    const mean = (of: (one: (typeof those)[number]) => number) =>
      those.reduce((sum, one) => sum + of(one), 0) / those.length;
    const { value, standardError } = focalLength;
    const rings = mean(({ extension }) => extension);
    return {
      setting,
      focusMagnification: {
        // What is left of m without the rings' e/f; the error is that of f.
        value: mean(({ sensorWidth, fieldWidth }) => sensorWidth / fieldWidth) - rings / value,
        standardError: standardError === null ? null : (rings * standardError) / value ** 2,
      },
    };
  });
  const spoiler = found.spoiler === null ? undefined : rows[found.spoiler];
  return { by: 'distances', lens: { focalLength, settings, frontPrincipalDepth }, rows, spoiler };
}
