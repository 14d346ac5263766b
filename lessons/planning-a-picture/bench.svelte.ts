import { subjectDepthInOneFrameFormula } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { exposureTimeFromLuminanceFormula } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { flashPowerForFNumberFormula } from '#core/exposure/flash-power-for-f-number.formula.ts';
import { isoFromLuminanceFormula } from '#core/exposure/iso-from-luminance.formula.ts';
import { slowestExposureTimeFormula } from '#core/exposure/slowest-exposure-time.formula.ts';
import { effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { extensionForMagnificationFormula } from '#core/gaussian/extension-for-magnification.formula.ts';
import {
  magnificationFromFrameFill,
  magnificationFromFrameFillFormula,
} from '#core/gaussian/magnification-from-frame-fill.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { sourceAngleFormula } from '#core/light/source-angle.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { frameCountFormula } from '#core/stack/frame-count.formula.ts';
import { frameStepFormula } from '#core/stack/frame-step.formula.ts';
import { framesBeforeDeadline, framesBeforeDeadlineFormula } from '#core/stack/frames-before-deadline.formula.ts';
import { stackTimeFormula } from '#core/stack/stack-time.formula.ts';
import { stackTravelFormula } from '#core/stack/stack-travel.formula.ts';
import { finestEffectiveFNumberFormula } from '#core/wave/finest-effective-f-number.formula.ts';
import { Bench, choiceOf, keptChoice, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import type { ChoicePlan, Inputs } from '#site/state/choice.ts';
import { bodies, lenses, nameOf, type LensSlug } from '#site/state/crate.ts';
import { holdings, lights, twinArm } from '#site/state/crate-light.ts';
import { roomInWords } from '#site/state/edges.ts';
import { lensAt } from '#site/state/lens-in-use.ts';
import { metered } from '#site/state/metered.ts';
import { askedOf, chainWays, oneLens, ofAsked, ownKit, spelledOut } from './figures/asked-of-chain.ts';
import { chains } from './figures/chains.ts';
import { changes } from './figures/changes.ts';
import {
  extensionSaid,
  finestInWords,
  framesInWords,
  inTimeInWords,
  isoInWords,
  powerInWords,
  sizeInWords,
} from './figures/in-words.ts';
import { ownLensNumbers } from './figures/own-lens.ts';
import { askedUpTo } from './figures/questions.ts';
import { ranged } from './figures/ranged.svelte.ts';
import { ofSubject, sources, subjects } from './figures/subjects.ts';

/** What a lens brings along. */
export const ofLens = [
  'focal-length',
  'focus-magnification',
  'front-principal-depth',
  'principal-separation',
  'pupil-magnification',
] as const;
type Filled = 'frame-fill' | 'sensor-width' | 'subject-width' | (typeof ofLens)[number];

/** A lens as it is at the magnification that the subject asks for: one that focuses inside is shorter there. */
function lensFor(slug: LensSlug) {
  return (given: Inputs<'frame-fill' | 'sensor-width' | 'subject-width'>) => {
    const magnification = magnificationFromFrameFill({
      frameFill: given['frame-fill'],
      sensorWidth: given['sensor-width'],
      subjectWidth: given['subject-width'],
    });
    return startsOf(lensAt(slug, magnification), ofLens);
  };
}
const lensChoice = {
  label: 'Lens',
  options: Object.fromEntries(
    (Object.keys(lenses) as LensSlug[]).map((slug) => [slug, { label: nameOf(slug), fills: lensFor(slug) }]),
  ),
} as ChoicePlan<Filled>;

/** What stands between camera and subject, set for the size that is wanted: one lens by the lessons' formulas, a chain of parts by the engine. */
const mounted = step({
  from: [...new Set([...ofAsked, ...ofLens])],
  gives: [
    'chain.magnification',
    'chain.focal-length',
    'chain.focus-magnification',
    'chain.principal-separation',
    'chain.front-principal-depth',
    'chain.pupil-magnification',
    'chain.f-number',
    'set.f-number',
    'extension',
    'working-distance',
    'effective-f-number',
    'iris.effective-f-number',
    'open.effective-f-number',
    'entrance-pupil-distance',
    'near-limit',
    'far-limit',
  ],
  evaluate(given, { chain: slug = oneLens }) {
    const set = slug === oneLens ? undefined : chains.here?.plannedChain(slug, askedOf(given));
    const own = slug === oneLens ? ownLensNumbers(given) : undefined;
    const numbers = own ?? set?.numbers ?? {};
    return {
      chainMagnification: numbers.magnification,
      chainFocalLength: numbers.focalLength,
      // What a chain has of rings is not made to measure: nothing is taken off for its own focusing.
      chainFocusMagnification: own && given.focusMagnification,
      chainPrincipalSeparation: numbers.principalSeparation,
      chainFrontPrincipalDepth: numbers.frontPrincipalDepth,
      chainPupilMagnification: numbers.pupilMagnification,
      chainFNumber: numbers.fNumber,
      setFNumber: set?.marked ?? given.fNumber,
      extension: own ? own.extension : set?.extension || undefined,
      workingDistance: numbers.workingDistance,
      effectiveFNumber: numbers.effectiveFNumber,
      // The iris of one lens is its only stop.
      irisEffectiveFNumber: own ? own.effectiveFNumber : numbers.irisEffectiveFNumber,
      openEffectiveFNumber: numbers.openEffectiveFNumber,
      entrancePupilDistance: numbers.entrancePupilDistance,
      nearLimit: numbers.nearLimit,
      farLimit: numbers.farLimit,
    };
  },
});

/** A formula's letters, where they are the whole chain's. */
const ofChain = {
  magnification: 'chain.magnification',
  'focal-length': 'chain.focal-length',
  'focus-magnification': 'chain.focus-magnification',
  'principal-separation': 'chain.principal-separation',
  'front-principal-depth': 'chain.front-principal-depth',
  'pupil-magnification': 'chain.pupil-magnification',
  'f-number': 'chain.f-number',
} as const;

/** What looks sharp by its rays: near and far limit together. */
const bothLimits = step({
  from: ['near-limit', 'far-limit'],
  gives: ['depth-of-field'],
  evaluate: ({ nearLimit, farLimit }) => ({ depthOfField: nearLimit + farLimit }),
});

/** The mark that comes to the finest effective f-number: by its iris alone a lens goes in step with that. */
const finestMark = step({
  from: ['finest.effective-f-number', 'iris.effective-f-number', 'set.f-number'],
  gives: ['finest.f-number'],
  evaluate: (given) => ({
    finestFNumber: (given.finestEffectiveFNumber * given.setFNumber) / given.irisEffectiveFNumber,
  }),
});

/** How many of the frames are finished while the subject holds. */
const inTime = step({
  from: ['frame-count', ...framesBeforeDeadlineFormula.from],
  gives: ['in-time.frame-count'],
  evaluate: ({ frameCount, ...given }) => ({ inTimeFrameCount: Math.min(frameCount, framesBeforeDeadline(given)) }),
});

const spider = subjects['jumping-spider'];
const body = bodies['body-36'];
const start = lensFor('lens-90')({ ...startsOf(spider, ofSubject), ...startsOf(body, ['sensor-width']) });

/** What the list calls a chain that an address spells out. */
const chainName = (text: string) => spelledOut(text) && (chains.here?.spelledName(text) || spelledOut(text));

/** The range of an answer of this bench as it stands: what stands elsewhere, in prose, has none. */
const rangeOf = (name: 'working-distance' | 'effective-f-number', value: number | undefined): string | undefined =>
  value !== undefined && value === bench.number(name, undefined) ? ranged.of?.(name) : undefined;

export const bench = new Bench({
  inputs: {
    ...startsOf(spider, ['subject-width', 'frame-fill']),
    'f-number': 5.6,
    ...startsOf(spider, ['subject-depth', 'flight-distance', 'time-limit', 'subject-speed']),
    overlap: 0.3,
    'exposure-time': 1 / 200,
    'settling-time': 0.5,
    'recycling-time': 0.2,
    ...startsOf(start, ofLens),
    ...startsOf(body, ['sensor-width', 'circle-of-confusion']),
    ...startsOf(holdings.elbows, ['shake-rate', 'sideways-speed']),
    stabilisation: 0,
    'guide-number': twinArm['guide-number'],
    'flash-distance': 100,
    ...startsOf(sources.head, ['source-size']),
    ...startsOf(spider, ['luminance']),
    iso: 200,
    wavelength: 0.00055,
  },
  choices: {
    subject: { ...choiceOf('Subject', subjects, ofSubject), kept: true },
    chain: { ...keptChoice('Chain', chainWays), spelled: chainName, wholeKit: ownKit },
    lens: lensChoice,
    holding: choiceOf('Held', holdings, ['shake-rate', 'sideways-speed']),
    source: choiceOf('What shines on it', sources, ['source-size']),
    light: choiceOf('Daylight', lights, ['luminance']),
    question: { ...keptChoice('Answered up to', askedUpTo), quiet: true },
    beside: keptChoice('Beside the picture, the plan', changes),
    sensor: choiceOf('Camera', bodies, ['sensor-width']),
    [circleChoice]: circleByBody,
  },
  formulas: [
    magnificationFromFrameFillFormula,
    mounted,
    // How the same numbers follow: of a chain as if it were one lens, which the engine says it is.
    ...under(
      'chain',
      [extensionForMagnificationFormula, subjectDistanceFormula, workingDistanceFormula, effectiveFNumberFormula],
      ofChain,
    ),
    bothLimits,
    ...under('finest', [finestEffectiveFNumberFormula]),
    finestMark,
    ...under('one-frame', [subjectDepthInOneFrameFormula], ofChain),
    frameStepFormula,
    frameCountFormula,
    stackTravelFormula,
    stackTimeFormula,
    inTime,
    metered,
    ...under('slowest', [slowestExposureTimeFormula], ofChain),
    ...under('ambient', [exposureTimeFromLuminanceFormula]),
    ...under('needed', [flashPowerForFNumberFormula]),
    ...under('needed', [isoFromLuminanceFormula], { 'exposure-time': 'slowest.exposure-time' }),
    sourceAngleFormula,
  ],
  words: {
    magnification: sizeInWords,
    'chain.magnification': (size) =>
      size !== undefined ? undefined : chains.here ? 'none: nothing before it is sharp' : 'its chain is being fetched',
    'chain.focus-magnification': { none: 'a chain has its own rings' },
    'chain.pupil-magnification': { none: 'none: its opening is seen upside down' },
    extension: extensionSaid,
    'chain.extension': extensionSaid,
    'working-distance': (room) => rangeOf('working-distance', room) ?? roomInWords(room),
    'effective-f-number': (fNumber) => rangeOf('effective-f-number', fNumber),
    'depth-of-field': { infinite: '∞: no far end' },
    'finest.f-number': finestInWords,
    'far-limit': { infinite: '∞: everything behind is sharp' },
    'frame-step': { none: 'none: one frame is enough' },
    'frame-count': framesInWords,
    'in-time.frame-count': inTimeInWords,
    'slowest.exposure-time': { none: 'none: this lens has no such focus' },
    'needed.flash-power': powerInWords,
    'needed.iso': isoInWords,
  },
  /** A depth of field without end needs no stack. */
  edge: (known) => (known['depth-of-field'] === Infinity ? { 'frame-count': 1, 'stack-travel': 0 } : undefined),
});
