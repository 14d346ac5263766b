import { balancedFNumber } from '#core/wave/balanced-f-number.formula.ts';
import { bestFNumber, worstContrast } from '#core/wave/best-f-number.ts';
import { contrastAtPlace } from '#core/wave/contrast-at-place.ts';
import { defocusBlurOfEnds } from '#core/depth/defocus-blur-of-ends.formula.ts';
import { effectiveFNumber } from '#core/gaussian/effective-f-number.formula.ts';
import { opticalTransfer } from '#core/wave/optical-transfer.ts';
import { spatialFrequencyOfCircle } from '#core/wave/spatial-frequency-of-circle.formula.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Subject {
  readonly magnification: number;
  readonly pupilMagnification: number;
  readonly subjectDepth: number;
}

/** Green light, a circle of confusion of 0.02 mm, focus in the middle, and the entrance pupil far away. */
const depthAtFrequency = ({ subjectDepth, ...lens }: Subject) => ({
  subjectDepth,
  wavelength: 0.00055,
  spatialFrequency: spatialFrequencyOfCircle({ circleOfConfusion: 0.02 }),
  planeDepth: subjectDepth / 2,
  coneAt: (fNumber: number) => ({
    magnification: lens.magnification,
    effectiveFNumber: effectiveFNumber({ ...lens, fNumber }),
    inverseEntrancePupilDistance: 0,
  }),
});

type AtMarks = Subject & { readonly fNumbers: readonly number[] };
const worst = ({ fNumbers, ...subject }: AtMarks) => ({
  contrast: fNumbers.map((fNumber) => worstContrast(depthAtFrequency(subject), fNumber).contrast),
});
const best = ({ fNumbers, ...subject }: AtMarks) => ({
  fNumber: bestFNumber(depthAtFrequency(subject), fNumbers)!.fNumber,
});

interface Places extends Subject {
  readonly fNumber: number;
  readonly maxAperture: number;
  readonly sphericalAberration: number;
  readonly placeDepth: readonly number[];
}
const through = ({ fNumber, placeDepth, ...lens }: Places) => ({
  contrast: placeDepth.map((place) =>
    contrastAtPlace({ ...depthAtFrequency(lens), wideOpen: lens, placeDepth: place }, fNumber),
  ),
});

const transfers = ({ waves, share }: { readonly waves: number; readonly share: readonly number[] }) => ({
  transfer: share.map((spatialFrequency) =>
    opticalTransfer({ spatialFrequency, cutoffFrequency: 1, defocusAberration: waves, sphericalAberration: 0 }),
  ),
});

/** A thin lens has equal pupils. */
const thin = { pupilMagnification: 1, wavelength: 0.00055 };
type Depth = Pick<Subject, 'magnification' | 'subjectDepth'>;
const ends = (lens: Depth & { readonly fNumber: number }) => ({
  defocusBlur: defocusBlurOfEnds({ ...lens, effectiveFNumber: effectiveFNumber({ ...thin, ...lens }) }),
});
const balance = (lens: Depth) => ({ balancedFNumber: balancedFNumber({ ...thin, ...lens }) });

export const ours = oursById({
  'analytic-two-waves': transfers,
  'analytic-four-waves': transfers,
  'worst-life-size': worst,
  'worst-life-size-best': best,
  'worst-half-life-size': worst,
  'worst-half-life-size-best': best,
  'worst-three-times': worst,
  'worst-three-times-best': best,
  'through-the-depth': through,
  'through-aberrated': through,
  'ends-traced-100-8': ends,
  'balance-traced-100-8': balance,
  'ends-traced-200-16': ends,
  'balance-traced-200-16': balance,
  'ends-traced-100-11': ends,
  'balance-traced-100-11': balance,
});
