import { bridges } from '#core/diagnosis/usual.ts';
import type { Formula } from '#core/quantity/formula.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { depthOfFieldCloseUpFormula } from '#core/depth/depth-of-field-close-up.formula.ts';
import { depthOfFieldOfConeFormula } from '#core/depth/depth-of-field-of-cone.formula.ts';
import { farLimitOfConeFormula } from '#core/depth/far-limit-of-cone.formula.ts';
import { nearLimitOfConeFormula } from '#core/depth/near-limit-of-cone.formula.ts';
import { waveDepthFormula } from '#core/depth/wave-depth.formula.ts';
import { keeperFramesFormula } from '#core/exposure/keeper-frames.formula.ts';
import { keeperShareFormula } from '#core/exposure/keeper-share.formula.ts';
import { slowestExposureTimeFormula } from '#core/exposure/slowest-exposure-time.formula.ts';
import { angleOfViewFormula } from '#core/gaussian/angle-of-view.formula.ts';
import { cropFactorFormula } from '#core/gaussian/crop-factor.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { entrancePupilDistanceFormula } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupilFormula } from '#core/gaussian/entrance-pupil.formula.ts';
import { exitPupilFormula } from '#core/gaussian/exit-pupil.formula.ts';
import { fNumberFromApertureFormula } from '#core/gaussian/f-number-from-aperture.formula.ts';
import { fieldHeightFormula } from '#core/gaussian/field-height.formula.ts';
import { fieldWidthFormula } from '#core/gaussian/field-width.formula.ts';
import { finderLossFormula } from '#core/gaussian/finder-loss.formula.ts';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { imageDistanceFormula } from '#core/gaussian/image-distance.formula.ts';
import { lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import { magnificationFromExtensionFormula } from '#core/gaussian/magnification-from-extension.formula.ts';
import { numericalApertureFormula } from '#core/gaussian/numerical-aperture.formula.ts';
import { pixelsPerMillimetreFormula } from '#core/gaussian/pixels-per-millimetre.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { converterFactorWithRingBehindFormula } from '#core/rig/converter-factor-with-ring-behind.formula.ts';
import { effectiveFNumberOfCoupledLensesFormula } from '#core/rig/effective-f-number-of-coupled-lenses.formula.ts';
import { effectiveFNumberOfObjectiveOnLensFormula } from '#core/rig/effective-f-number-of-objective-on-lens.formula.ts';
import { effectiveFNumberOfReversedLensFormula } from '#core/rig/effective-f-number-of-reversed-lens.formula.ts';
import { effectiveFNumberWithCloseUpLensFormula } from '#core/rig/effective-f-number-with-close-up-lens.formula.ts';
import { effectiveFNumberWithConverterFormula } from '#core/rig/effective-f-number-with-converter.formula.ts';
import { entrancePupilDistanceOfReversedLensFormula } from '#core/rig/entrance-pupil-distance-of-reversed-lens.formula.ts';
import { entrancePupilOfReversedLensFormula } from '#core/rig/entrance-pupil-of-reversed-lens.formula.ts';
import { magnificationOfCoupledLensesFormula } from '#core/rig/magnification-of-coupled-lenses.formula.ts';
import { magnificationOfInfinityObjectiveFormula } from '#core/rig/magnification-of-infinity-objective.formula.ts';
import { magnificationOfReversedLensFormula } from '#core/rig/magnification-of-reversed-lens.formula.ts';
import { magnificationWithCloseUpLensFormula } from '#core/rig/magnification-with-close-up-lens.formula.ts';
import { magnificationWithConverterFormula } from '#core/rig/magnification-with-converter.formula.ts';
import { magnificationWithRingsAroundConverterFormula } from '#core/rig/magnification-with-rings-around-converter.formula.ts';
import { workingDistanceOfRackedOutReversedLensFormula } from '#core/rig/working-distance-of-racked-out-reversed-lens.formula.ts';
import { workingDistanceWithCloseUpLensFormula } from '#core/rig/working-distance-with-close-up-lens.formula.ts';
import { workingDistanceWithConverterFormula } from '#core/rig/working-distance-with-converter.formula.ts';
import { frameCountFormula } from '#core/stack/frame-count.formula.ts';
import { frameStepFormula } from '#core/stack/frame-step.formula.ts';
import { airyDiameterFormula } from '#core/wave/airy-diameter.formula.ts';
import { cutoffFrequencyFormula } from '#core/wave/cutoff-frequency.formula.ts';
import { nyquistFrequencyFormula } from '#core/wave/nyquist-frequency.formula.ts';

/** A formula by which a working may go on, under the name of its file. */
export interface Way {
  readonly id: string;
  readonly formula: Formula<never>;
  /** What it is worked for: what it gives, or a letter that it is solved for. */
  readonly gives: QuantityName;
  /** By it where it is solved for a letter of its right-hand side. */
  readonly solved?: (known: Readonly<Record<string, number>>) => number;
}

const way = (id: string, formula: { readonly gives: QuantityName }): Way => ({
  id,
  formula: formula as unknown as Formula<never>,
  gives: formula.gives,
});

const overPupilDistance = bridges.find(({ id }) => id === 'one-over-the-pupil-distance')!;

/** All of them, of several for one quantity the most particular first. */
export const ways: readonly Way[] = [
  way('magnification-with-close-up-lens', magnificationWithCloseUpLensFormula),
  way('magnification-of-coupled-lenses', magnificationOfCoupledLensesFormula),
  way('magnification-with-converter', magnificationWithConverterFormula),
  way('magnification-with-rings-around-converter', magnificationWithRingsAroundConverterFormula),
  way('magnification-of-infinity-objective', magnificationOfInfinityObjectiveFormula),
  way('magnification-of-reversed-lens', magnificationOfReversedLensFormula),
  way('magnification-from-extension', magnificationFromExtensionFormula),
  {
    ...way('image-distance', imageDistanceFormula),
    gives: 'magnification',
    solved: (known) => known['image-distance']! / known['focal-length']! - 1,
  },
  way('converter-factor-with-ring-behind', converterFactorWithRingBehindFormula),
  way('field-width', fieldWidthFormula),
  way('field-height', fieldHeightFormula),
  way('pixels-per-millimetre', pixelsPerMillimetreFormula),
  way('angle-of-view', angleOfViewFormula),
  way('crop-factor', cropFactorFormula),
  way('working-distance-of-racked-out-reversed-lens', workingDistanceOfRackedOutReversedLensFormula),
  way('working-distance-with-close-up-lens', workingDistanceWithCloseUpLensFormula),
  way('working-distance-with-converter', workingDistanceWithConverterFormula),
  way('working-distance', workingDistanceFormula),
  way('subject-distance', subjectDistanceFormula),
  way('image-distance', imageDistanceFormula),
  way('focus-distance', focusDistanceFormula),
  way('entrance-pupil-distance-of-reversed-lens', entrancePupilDistanceOfReversedLensFormula),
  way('entrance-pupil-distance', entrancePupilDistanceFormula),
  way('effective-f-number-with-close-up-lens', effectiveFNumberWithCloseUpLensFormula),
  way('effective-f-number-of-coupled-lenses', effectiveFNumberOfCoupledLensesFormula),
  way('effective-f-number-of-objective-on-lens', effectiveFNumberOfObjectiveOnLensFormula),
  way('effective-f-number-with-converter', effectiveFNumberWithConverterFormula),
  way('effective-f-number-of-reversed-lens', effectiveFNumberOfReversedLensFormula),
  way('effective-f-number', effectiveFNumberFormula),
  way('f-number-from-aperture', fNumberFromApertureFormula),
  way('light-loss', lightLossFormula),
  way('finder-loss', finderLossFormula),
  way('entrance-pupil-of-reversed-lens', entrancePupilOfReversedLensFormula),
  way('entrance-pupil', entrancePupilFormula),
  way('exit-pupil', exitPupilFormula),
  way('numerical-aperture', numericalApertureFormula),
  { ...overPupilDistance, gives: overPupilDistance.formula.gives },
  way('depth-of-field-of-cone', depthOfFieldOfConeFormula),
  way('near-limit-of-cone', nearLimitOfConeFormula),
  way('far-limit-of-cone', farLimitOfConeFormula),
  way('depth-of-field-close-up', depthOfFieldCloseUpFormula),
  way('wave-depth', waveDepthFormula),
  way('frame-step', frameStepFormula),
  way('frame-count', frameCountFormula),
  way('airy-diameter', airyDiameterFormula),
  way('cutoff-frequency', cutoffFrequencyFormula),
  way('nyquist-frequency', nyquistFrequencyFormula),
  way('slowest-exposure-time', slowestExposureTimeFormula),
  way('keeper-share', keeperShareFormula),
  way('keeper-frames', keeperFramesFormula),
];
