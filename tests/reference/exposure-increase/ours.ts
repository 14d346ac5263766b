import { timeForLightLoss } from '#core/exposure/stops.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { lightLoss } from '#core/gaussian/light-loss.formula.ts';
import { magnificationFromExtension } from '#core/gaussian/magnification-from-extension.formula.ts';
import { magnification } from '#core/gaussian/magnification.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

/**
 * How many times the exposure must grow: two to the power of the stops lost. These sources know symmetric lenses only,
 * and any f-number gives the same factor.
 */
function exposureFactor(m: number): number {
  const fNumber = 16;
  const cone = effectiveFNumber({ fNumber, magnification: m, pupilMagnification: 1 });
  return 2 ** lightLoss({ effectiveFNumber: cone, fNumber });
}

/** The manuals' bellows extension counts from the lens: one focal length of it is there at infinity already. */
function withBellows({
  focalLength,
  bellows,
  exposureTime,
}: {
  focalLength: number;
  bellows: number;
  exposureTime: number;
}) {
  const extension = bellows - focalLength;
  const factor = exposureFactor(magnificationFromExtension({ focusMagnification: 0, extension, focalLength }));
  return { factor, correctedTime: timeForLightLoss({ exposureTime, lightLoss: Math.log2(factor) }) };
}

const byLengths = ({ imageLength, subjectLength }: { imageLength: number; subjectLength: number }) => ({
  factor: exposureFactor(magnification({ imageWidth: imageLength, subjectWidth: subjectLength })),
});

export const ours = oursById({
  'ss0512-44-first': withBellows,
  'ss0512-44-second': byLengths,
  'ss0511-73': withBellows,
  'basic-photography-half': byLengths,
  'practical-photography-table': (table: { magnification: readonly number[] }) => ({
    factor: table.magnification.map(exposureFactor),
  }),
  'practical-photography-same-size': (table: { magnification: readonly number[] }) => ({
    factorAgainstLifeSize: table.magnification.map((m) => exposureFactor(m) / exposureFactor(1)),
  }),
});
