import { hyperfocalDistance } from '#core/depth/hyperfocal-distance.formula.ts';
import { sharpFromLens, type FocusedLens } from '#tests/support/depth-from-lens.ts';
import { oursById } from '#tests/support/reference-case.ts';

type Stopped = Omit<FocusedLens, 'subjectDistance'>;

/** A lens of which the source gives the hyperfocal distance instead of the f-number. */
type ByHyperfocal = Omit<FocusedLens, 'fNumber'> & { hyperfocal: number };

/** These books write f²/(N c): the hyperfocal distance counted from the front focal point, one *f* less than from the lens. */
const hyperfocal = (lens: Stopped) => hyperfocalDistance(lens) - lens.focalLength;

/** The f-number with a given hyperfocal distance, as those books count it. */
const stopped = ({ hyperfocal, ...lens }: ByHyperfocal): FocusedLens => ({
  ...lens,
  fNumber: lens.focalLength ** 2 / (hyperfocal * lens.circleOfConfusion),
});

const nearAndFar = (lens: ByHyperfocal) => sharpFromLens(stopped(lens));

export const ours = oursById({
  'ss0507-le10': (lens: FocusedLens) => ({ hyperfocal: hyperfocal(lens), near: sharpFromLens(lens).near }),
  'ss0507-le12': (lens: FocusedLens) => {
    const sharp = sharpFromLens(lens);
    return { hyperfocal: hyperfocal(lens), ...sharp, depth: sharp.far - sharp.near };
  },
  'ss0507-q16': (lens: Stopped) => ({ hyperfocal: hyperfocal(lens) }),
  'ss0507-q17': nearAndFar,
  'navedtra-1-26': (lens: ByHyperfocal) => ({
    ...nearAndFar(lens),
    depth: nearAndFar(lens).far - nearAndFar(lens).near,
  }),
  'navedtra-1-26-focus': (lens: ByHyperfocal) => {
    const { near, far } = nearAndFar(lens);
    return { focusForBoth: (2 * near * far) / (near + far) };
  },
  'sinclair-hyperfocal': (lens: FocusedLens) => ({ hyperfocal: hyperfocal(lens), near: sharpFromLens(lens).near }),
  'sinclair-series': nearAndFar,
  'barnet-depth': (lens: Stopped) => ({ hyperfocal: hyperfocal(lens) }),
  'hyperfocal-50-8': (lens: Stopped) => {
    const hyperfocalFromLens = hyperfocalDistance(lens);
    // A hair beyond, where rounding no longer decides between infinity and very far.
    const { near, far } = sharpFromLens({ ...lens, subjectDistance: hyperfocalFromLens * (1 + 1e-9) });
    return { hyperfocalFromLens, hyperfocal: hyperfocal(lens), nearWhenFocusedThere: near, farWhenFocusedThere: far };
  },
  'hyperfocal-50-8-half': sharpFromLens,
});
