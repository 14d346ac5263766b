import { defocusBlurOfEnds } from '#core/depth/defocus-blur-of-ends.formula.ts';
import { apertureValue } from '#core/exposure/stops.ts';
import { airyDiameter } from '#core/wave/airy-diameter.formula.ts';
import { balancedFNumber } from '#core/wave/balanced-f-number.formula.ts';
import { bestEffectiveFNumber } from '#core/wave/best-effective-f-number.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Spread {
  readonly focusSpread: readonly number[];
  /** The f-number over the width, in mm, that diffraction gives a point. */
  readonly airyShare: number;
}

interface CloseUp {
  readonly magnification: readonly number[];
  readonly subjectDepth: readonly number[];
  readonly airyShare: number;
}

interface Ends {
  /** How far apart the images of the nearest and the farthest part lie. */
  readonly focusSpread: readonly number[];
  readonly effectiveFNumber: readonly number[];
}

/** The light whose Airy disc is N/*airyShare* wide. */
const wavelengthOf = (airyShare: number) => 1 / (airyShare * airyDiameter({ wavelength: 1, effectiveFNumber: 1 }));

/** Spread is depth times the square of the magnification, so that any magnification will do. */
const magnification = 0.05;
const depthOf = (spread: number) => spread / magnification ** 2;

export const ours = oursById({
  'focus-spread': ({ focusSpread, airyShare }: Spread) => ({
    apertureValue: focusSpread.map((spread) =>
      apertureValue(
        bestEffectiveFNumber({ magnification, subjectDepth: depthOf(spread), wavelength: wavelengthOf(airyShare) }),
      ),
    ),
  }),
  'close-up': ({ magnification: sizes, subjectDepth, airyShare }: CloseUp) => ({
    balancedFNumber: sizes.map((size, index) =>
      balancedFNumber({
        magnification: size,
        subjectDepth: subjectDepth[index]!,
        wavelength: wavelengthOf(airyShare),
        pupilMagnification: 1,
      }),
    ),
  }),
  'blur-of-the-ends': ({ focusSpread, effectiveFNumber }: Ends) => ({
    defocusBlur: focusSpread.map((spread, index) =>
      defocusBlurOfEnds({
        magnification,
        subjectDepth: depthOf(spread),
        effectiveFNumber: effectiveFNumber[index]!,
      }),
    ),
  }),
});
