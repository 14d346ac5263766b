import { fitDistances, type LensByDistances } from '#core/rig/fit/fit-distances.ts';
import { fitSettings, type SetPhotograph } from '#core/rig/fit/fit-settings.ts';
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

export interface LensFits {
  readonly byRings: ReturnType<typeof fitSettings>;
  readonly byDistances: LensByDistances | null;
}

/** The lens by rings and by distances; undefined for photographs that cannot be. */
export function fitsOf(photographs: readonly SetPhotograph[]): LensFits | undefined {
  try {
    return { byRings: fitSettings(photographs), byDistances: fitDistances(photographs) };
  } catch (error) {
    if (error instanceof FaultyPhotograph) return undefined;
    throw error;
  }
}
