import { closeFocusFocalLengthFormula } from '#core/gaussian/close-focus-focal-length.formula.ts';
import { focusDistanceFormula } from '#core/gaussian/focus-distance.formula.ts';
import { imageDistanceFormula } from '#core/gaussian/image-distance.formula.ts';
import { magnificationFromTravelFormula } from '#core/gaussian/magnification-from-travel.formula.ts';
import { nearestFocusDistanceFormula } from '#core/gaussian/nearest-focus-distance.formula.ts';
import { subjectDistanceFormula } from '#core/gaussian/subject-distance.formula.ts';
import { workingDistanceFormula } from '#core/gaussian/working-distance.formula.ts';
import { stateAt } from '#core/rig/lens-in-use.ts';
import { step, under } from '#core/quantity/answers-from.ts';
import { printQuantity } from '#core/quantity/print.ts';
import { Bench, choiceOf, startsOf } from '#site/state/bench.svelte.ts';
import { lenses } from '#site/state/crate.ts';
import { asGoodAsZero, infinite, noneAtInfinity, roomInWords } from '#site/state/edges.ts';
import { glassLenses } from '#site/state/glass.ts';
import { marks } from '#site/state/lens-marks.ts';

const ofLens = ['focal-length', 'focus-magnification', 'principal-separation', 'front-principal-depth'] as const;
const ofPair = ['closest.focus-distance', 'closest.magnification', 'closest.principal-separation'] as const;

const { 'lens-50': start, 'lens-28': wide, 'lens-18': zoomed, 'lens-55': long, 'lens-100': tele } = lenses;
const { 'focal-length': f60, 'principal-separation': apart60, 'front-principal-depth': depth60 } = marks['lens-60'];

/** The lenses that move as a whole, and one that does not, as if its groups were fixed where they stand at infinity. */
const whole = {
  'lens-50': start,
  'lens-28': wide,
  'lens-18': zoomed,
  'lens-55': long,
  'lens-100': tele,
  'lens-60': {
    label: '60 mm macro, if its groups were fixed',
    'focal-length': f60,
    'focus-magnification': marks['lens-60'].closest['focus-magnification'],
    'principal-separation': apart60,
    'front-principal-depth': depth60,
  },
};

/** The lenses that focus inside, with all that their makers print of how near they come; the rest is assumed. */
const inside = { 'lens-90': printed('lens-90'), 'lens-60': printed('lens-60'), 'lens-200': printed('lens-200') };

function printed(slug: 'lens-60' | 'lens-90' | 'lens-200') {
  const { 'focal-length': focalLength, closest } = marks[slug];
  return {
    label: `${focalLength} mm, at ${printQuantity('focus-distance', closest['focus-distance'])}`,
    'closest.focus-distance': closest['focus-distance'],
    'closest.magnification': closest['focus-magnification'],
    'closest.principal-separation': 0,
  };
}

const tooFarApart = 'none: H and H′ cannot be so far apart here';
const pastItsRing = 'none: its ring ends at life size';

export const bench = new Bench({
  inputs: {
    'focal-length': start['focal-length'],
    'focus-travel': start['focal-length'] * start['focus-magnification'],
    ...startsOf(start, ['focus-magnification', 'principal-separation', 'front-principal-depth']),
    ...startsOf(inside['lens-90'], ofPair),
  },
  choices: {
    lens: { ...choiceOf('Lens, moved as a whole', whole, ofLens), takes: 'whole' },
    printed: { ...choiceOf('Lens that focuses inside', inside, ofPair), takes: 'inside' },
  },
  handles: {
    'subject-distance': {
      gives: 'focus-travel',
      from: ['subject-distance', 'focal-length'],
      evaluate: ({ subjectDistance: s, focalLength: f }: Record<'subjectDistance' | 'focalLength', number>) =>
        s > f ? f ** 2 / (s - f) : Infinity,
    },
    magnification: {
      gives: 'focus-travel',
      from: ['magnification', 'focal-length'],
      evaluate: ({ magnification, focalLength }: Record<'magnification' | 'focalLength', number>) =>
        magnification * focalLength,
    },
  },
  formulas: [
    magnificationFromTravelFormula,
    subjectDistanceFormula,
    imageDistanceFormula,
    focusDistanceFormula,
    workingDistanceFormula,
    ...under('nearest', [nearestFocusDistanceFormula]),
    ...under('closest', [closeFocusFocalLengthFormula], {
      'focus-distance': 'closest.focus-distance',
      magnification: 'closest.magnification',
      'principal-separation': 'closest.principal-separation',
    }),
    step({
      from: ['magnification'],
      gives: [
        'macro-lens.magnification',
        'macro-lens.focal-length',
        'macro-lens.principal-separation',
        'macro-lens.front-principal-depth',
      ],
      evaluate: ({ magnification }) => macroLensAt(magnification),
    }),
    ...under('macro-lens', [focusDistanceFormula, subjectDistanceFormula, workingDistanceFormula], {
      'focal-length': 'macro-lens.focal-length',
      magnification: 'macro-lens.magnification',
      'principal-separation': 'macro-lens.principal-separation',
      'front-principal-depth': 'macro-lens.front-principal-depth',
    }),
  ],
  words: {
    magnification: noneAtInfinity,
    'subject-distance': { infinite },
    'focus-distance': { none: tooFarApart, infinite },
    'working-distance': roomInWords,
    'nearest.focus-distance': { none: tooFarApart },
    'closest.focal-length': { none: 'none: H and H′ would be farther apart than sensor and subject' },
    'macro-lens.magnification': { none: pastItsRing },
    'macro-lens.focal-length': { none: pastItsRing },
    'macro-lens.principal-separation': { none: pastItsRing },
    'macro-lens.front-principal-depth': { none: pastItsRing },
    'macro-lens.focus-distance': { infinite },
    'macro-lens.working-distance': { infinite },
  },
  /** At its infinity setting a lens has its subject infinitely far away, and the rest follows. */
  edge: ({ magnification = 1, ...known }) =>
    magnification >= asGoodAsZero
      ? undefined
      : {
          magnification: 0,
          'subject-distance': Infinity,
          'image-distance': known['focal-length']!,
          'focus-distance': Infinity,
          'working-distance': Infinity,
          'macro-lens.focus-distance': Infinity,
          'macro-lens.subject-distance': Infinity,
          'macro-lens.working-distance': Infinity,
        },
});

/** The crate's 60 mm macro lens, traced through its glass where its groups stand at this magnification; nothing past the end of its ring. */
function macroLensAt(magnification: number) {
  if (magnification > 1) return {};
  const { focalLength, principalSeparation, frontPrincipalDepth } = stateAt(glassLenses['lens-60'], magnification);
  return {
    macroLensMagnification: magnification,
    macroLensFocalLength: focalLength,
    macroLensPrincipalSeparation: principalSeparation,
    macroLensFrontPrincipalDepth: frontPrincipalDepth,
  };
}
