import { effectiveFNumberForDepthFormula } from '#core/depth/effective-f-number-for-depth.formula.ts';
import { subjectDepthInOneFrameFormula } from '#core/depth/subject-depth-in-one-frame.formula.ts';
import { exposureTimeForSubjectSpeedFormula } from '#core/exposure/exposure-time-for-subject-speed.formula.ts';
import { exposureTimeFromLuminanceFormula } from '#core/exposure/exposure-time-from-luminance.formula.ts';
import { reflectedLightConstants } from '#core/exposure/metering-constants.ts';
import { stopsInHandFormula } from '#core/exposure/stops-in-hand.formula.ts';
import { frameFillFormula } from '#core/gaussian/frame-fill.formula.ts';
import { magnificationFromFieldFormula } from '#core/gaussian/magnification-from-field.formula.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { Bench, choiceOf, keptChoice, startsOf } from '#site/state/bench.svelte.ts';
import { circleByBody, circleChoice } from '#site/state/body-circle.ts';
import { bodies } from '#site/state/crate.ts';
import { affordable, has, kits, wishNames, type KitSlug, type WishSlug } from '#site/state/kits.ts';
import { depthOfFrame, ofAsked, search, type Asked } from './figures/searches.ts';
import { lightings, ofLight, ofSubject, subjects } from './figures/subjects.ts';

const labels = Object.fromEntries(Object.entries(kits).map(([slug, { label }]) => [slug, label]));

/** All chains of the kit, and of what the budget would add to it, gone through. */
const searched = step({
  from: [...ofAsked, 'budget'],
  gives: [
    'chain-count',
    'suited.chain-count',
    'over-budget.chain-count',
    'no-picture.chain-count',
    'too-large.chain-count',
    'too-small.chain-count',
    'inside.chain-count',
    'too-near.chain-count',
    'too-shallow.chain-count',
    'too-soft.chain-count',
    'too-dark.chain-count',
    'best.magnification',
    'best.working-distance',
    'best.f-number',
    'best.effective-f-number',
    'best.price',
    'one-frame.subject-depth',
    'allowed.circle-of-confusion',
    'reflected-light-constant',
  ],
  evaluate(given, chosen) {
    const kit = chosen['kit'] as KitSlug;
    const found = search(kit, affordable(kit, given.budget), given, chosen['as'], given.budget);
    const { count, tally, suited } = found;
    const [first] = suited;
    const judged = first === undefined ? undefined : found.judgementOf(first);
    return {
      chainCount: count,
      suitedChainCount: tally.suited,
      overBudgetChainCount: tally['over budget'],
      noPictureChainCount: tally['no picture'],
      tooLargeChainCount: tally['too large'],
      tooSmallChainCount: tally['too small'],
      insideChainCount: tally.inside,
      tooNearChainCount: tally['too near'],
      tooShallowChainCount: tally['too shallow'],
      tooSoftChainCount: tally['too soft'],
      tooDarkChainCount: tally['too dark'],
      bestMagnification: judged?.magnification,
      bestWorkingDistance: judged?.room,
      bestFNumber: judged?.fNumber,
      bestEffectiveFNumber: judged?.effectiveFNumber,
      bestPrice: first === undefined ? undefined : found.chain(first).price,
      oneFrameSubjectDepth: depthOfFrame(given.subjectDepth, chosen['as']),
      allowedCircleOfConfusion:
        judged &&
        given.circleOfConfusion * Math.min(1, (judged.magnification * given.subjectWidth) / given.sensorWidth),
      reflectedLightConstant: reflectedLightConstants.common,
    };
  },
});

/** What one more part would be worth: the kit with it and without, whatever it costs. */
const gained = step({
  from: [...ofAsked],
  gives: ['gain.merit', 'gain.chain-count'],
  evaluate(given, chosen) {
    return gainOf(chosen['part'] as WishSlug, chosen['kit'] as KitSlug, given, chosen['as']);
  },
});

export function gainOf(part: WishSlug, kit: KitSlug, asked: Asked, as: string | undefined) {
  if (has(kit, part)) return { gainMerit: undefined, gainChainCount: 0 };
  const [before, after] = [search(kit, [], asked, as), search(kit, [part], asked, as)];
  const best = [before, after].map((found) =>
    found.suited[0] === undefined ? undefined : found.judgementOf(found.suited[0]).merit,
  );
  return {
    gainMerit: best[0] === undefined || best[1] === undefined ? undefined : Math.max(0, best[1] - best[0]),
    gainChainCount: after.suited.length - before.suited.length,
  };
}

/** The time that is allowed at all: by movement and by patience. */
const longest = step({
  from: ['allowed.exposure-time', 'longest.exposure-time'],
  gives: ['shorter.exposure-time'],
  evaluate: (given) => ({
    shorterExposureTime: Math.min(given.allowedExposureTime, given.longestExposureTime),
  }),
});

const none = 'none: no chain suits';

export const bench = new Bench({
  inputs: {
    ...startsOf(subjects.butterfly, ['subject-width', 'subject-depth', 'subject-speed', 'luminance']),
    'nearest.working-distance': { start: subjects.butterfly['nearest.working-distance'], least: 0, most: 2000 },
    budget: { start: 0, least: 0, most: 1000 },
    'least.frame-fill': subjects.butterfly['least.frame-fill'],
    'longest.exposure-time': subjects.butterfly['longest.exposure-time'],
    iso: 400,
    wavelength: 0.00055,
    ...startsOf(bodies['body-36'], ['sensor-width', 'circle-of-confusion']),
    'chain-rank': 1,
  },
  choices: {
    subject: choiceOf('Subject', subjects, ofSubject),
    as: keptChoice('Taken as', { one: 'one frame', stack: 'a stack of frames' }),
    light: choiceOf('It is', lightings, ofLight),
    kit: { ...keptChoice('Choose from', labels), wholeKit: 'own' },
    part: keptChoice('One more part', wishNames),
    sensor: choiceOf('Camera', bodies, ['sensor-width']),
    [circleChoice]: circleByBody,
  },
  formulas: [
    ...under('filling', [magnificationFromFieldFormula], { 'field-width': 'subject-width' }),
    searched,
    gained,
    ...under('best', [frameFillFormula], { magnification: 'best.magnification' }),
    ...under('deepest', [subjectDepthInOneFrameFormula], { magnification: 'filling.magnification' }),
    ...under('needed', [effectiveFNumberForDepthFormula], {
      magnification: 'best.magnification',
      'subject-depth': 'one-frame.subject-depth',
      'circle-of-confusion': 'allowed.circle-of-confusion',
    }),
    ...under('needed', [exposureTimeFromLuminanceFormula], { 'effective-f-number': 'best.effective-f-number' }),
    ...under('allowed', [exposureTimeForSubjectSpeedFormula], {
      magnification: 'best.magnification',
      'circle-of-confusion': 'allowed.circle-of-confusion',
    }),
    longest,
    ...under('best', [stopsInHandFormula], {
      'longest.exposure-time': 'shorter.exposure-time',
      'frame-fill': 'best.frame-fill',
    }),
  ],
  words: {
    'best.magnification': { none },
    'best.working-distance': { none },
    'best.f-number': { none },
    'best.effective-f-number': { none },
    'best.price': { none },
    'best.merit': { none },
    'allowed.circle-of-confusion': { none },
    'gain.merit'(value, known) {
      if (value !== undefined) return value < 0.05 ? 'nothing' : undefined;
      return known['gain.chain-count'] === 0 ? 'nothing' : 'the first chains that suit';
    },
  },
});
