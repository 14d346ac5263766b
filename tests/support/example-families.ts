import { effectiveFNumber, effectiveFNumberFormula } from '#core/gaussian/effective-f-number.formula.ts';
import { lightLoss, lightLossFormula } from '#core/gaussian/light-loss.formula.ts';
import {
  magnificationFromExtension,
  magnificationFromExtensionFormula,
} from '#core/gaussian/magnification-from-extension.formula.ts';
import { choiceFamily, numberFamily } from '#core/practice/family.ts';

const length = 'focal-length';
const own = 'focus-magnification';

/** A measure with a relative tolerance; two things of one kind under part names; a step that only adds. */
export const ringsOnALens = numberFamily({
  id: 'rings-on-a-lens',
  asks: 'magnification',
  question:
    'A {subject} is in front of {a focal-length} lens, which reaches {focus-magnification} by itself. Rings of ' +
    '{first-ring.extension} and {second-ring.extension} go on. What is the magnification now?',
  givens: (draw) => ({
    subject: draw.pick(['bay leaf', 'drawing pin']),
    [length]: draw.pick([35, 50, 85, 100]),
    [own]: draw.between(0.1, 0.2, 0.05),
    'first-ring.extension': draw.pick([12, 24]),
    'second-ring.extension': 36,
  }),
  answer: (given) =>
    magnificationFromExtension({
      focusMagnification: given[own],
      extension: given['first-ring.extension'] + given['second-ring.extension'],
      focalLength: given[length],
    }),
  tolerance: { relative: 0.02, because: 'three figures read off a ring' },
  mistakes: [
    {
      id: 'own-focusing-forgotten',
      value: (given) => (given['first-ring.extension'] + given['second-ring.extension']) / given[length],
      because: 'That is what the rings add. The lens already gave {focus-magnification} before they went on.',
    },
    {
      id: 'ratio-to-the-whole',
      value: (given) => {
        const rings = given['first-ring.extension'] + given['second-ring.extension'];
        return rings / (given[length] + rings);
      },
      because:
        'That is the rings as a share of rings and lens together. Count their length in focal lengths: divide by {focal-length}.',
    },
    {
      id: 'one-ring',
      value: (given) => given[own] + given['second-ring.extension'] / given[length],
      because: 'That is with one of the rings. Both are between camera and lens.',
    },
  ],
  hint: 'How many focal lengths of {focal-length} do the rings add up to?',
  working: [
    {
      values: (known) => ({ extension: known['first-ring.extension'] + known['second-ring.extension'] }),
      note: '{first-ring.extension} and {second-ring.extension} make {extension}.',
    },
    { note: 'The lens’s own part is added once.', formula: magnificationFromExtensionFormula },
  ],
});

/** An absolute tolerance, and a step that builds on the one before. */
export const stopsLost = numberFamily({
  id: 'stops-lost',
  asks: 'light-loss',
  question:
    'At {magnification}, marked {f-number}, with a pupil magnification of {pupil-magnification}: how many stops are lost?',
  givens: (draw) => ({
    magnification: draw.logStep(0.5, 3),
    'f-number': draw.pick([4, 5.6, 8]),
    'pupil-magnification': draw.pick([0.6, 1.4, 1.8]),
  }),
  answer: (given) => {
    const fNumber = given['f-number'];
    const effective = effectiveFNumber({
      fNumber,
      magnification: given.magnification,
      pupilMagnification: given['pupil-magnification'],
    });
    return lightLoss({ effectiveFNumber: effective, fNumber });
  },
  tolerance: { absolute: 0.1, because: 'cameras are set in thirds of a stop' },
  mistakes: [
    {
      id: 'pupils-forgotten',
      value: (given) => 2 * Math.log2(1 + given.magnification),
      because: 'That holds for a lens with equal pupils. Divide the magnification by {pupil-magnification} first.',
    },
    {
      id: 'squared-forgotten',
      value: (given) => Math.log2(1 + given.magnification / given['pupil-magnification']),
      because: 'Light goes as the square of the f-number, so each doubling of it costs two stops, not one.',
    },
    {
      id: 'counted-twice',
      value: (given) => 4 * Math.log2(1 + given.magnification / given['pupil-magnification']),
      because: 'That counts the loss twice.',
    },
  ],
  hint: 'First the f-number that works, then how often it has doubled.',
  working: [{ formula: effectiveFNumberFormula }, { note: 'Two stops for each doubling.', formula: lightLossFormula }],
});

/** A whole number, exact. */
export const framesOnARail = numberFamily({
  id: 'frames-on-a-rail',
  asks: 'frame-count',
  question:
    'A rail steps {frame-step} at a time over a subject {subject-depth} deep, a frame at either end. How many frames?',
  givens: (draw) => {
    const step = draw.pick([0.1, 0.2, 0.5]);
    return { 'frame-step': step, 'subject-depth': step * draw.between(4, 20, 1) };
  },
  answer: (given) => Math.round(given['subject-depth'] / given['frame-step']) + 1,
  tolerance: { absolute: 0, because: 'frames are counted' },
  mistakes: [
    {
      id: 'fence-posts',
      value: (given) => Math.round(given['subject-depth'] / given['frame-step']),
      because: 'That counts the steps. There is a frame before the first of them.',
    },
    {
      id: 'both-ends-added',
      value: (given) => Math.round(given['subject-depth'] / given['frame-step']) + 2,
      because: 'One frame more than there are steps, not two.',
    },
    {
      id: 'ends-left-out',
      value: (given) => Math.round(given['subject-depth'] / given['frame-step']) - 1,
      because: 'That leaves out the frames at both ends.',
    },
  ],
  hint: 'Draw three steps and count the frames.',
  working: [
    {
      values: (known) => ({ 'frame-count': Math.round(known['subject-depth'] / known['frame-step']) + 1 }),
      note: '{subject-depth} over {frame-step}, and one for the start: {frame-count}.',
    },
  ],
});

/** One of three. */
export const whichLensGainsMore = choiceFamily({
  id: 'which-lens-gains-more',
  question:
    'The same ring of {extension} goes on {a short.focal-length} and on {a long.focal-length} lens. Which gains more?',
  givens: (draw) => ({
    extension: draw.pick([12, 24, 36]),
    'short.focal-length': draw.pick([28, 35, 50]),
    'long.focal-length': draw.pick([85, 100, 180]),
  }),
  options: { short: 'The short lens', long: 'The long lens', same: 'Both the same' },
  answer: () => 'short',
  mistakes: [
    {
      id: 'long-is-strong',
      value: () => 'long',
      because: 'Long lenses enlarge distant things. Here {extension} is few of its focal lengths.',
    },
    {
      id: 'ring-alone',
      value: (given) => (given.extension < 36 ? 'same' : undefined),
      because: 'The ring is the same; what it is measured against is not.',
    },
    {
      id: 'long-rings-level-out',
      value: (given) => (given.extension < 36 ? undefined : 'same'),
      because: 'However long the ring, it is counted in focal lengths of the lens.',
    },
  ],
  hint: 'Count the ring in focal lengths of each.',
  working: [
    {
      values: (known) => ({ 'focus-magnification': 0, [length]: known['short.focal-length'] }),
      note: 'On the short lens:',
      formula: magnificationFromExtensionFormula,
    },
    {
      values: (known) => ({ [length]: known['long.focal-length'] }),
      note: 'On the long lens:',
      formula: magnificationFromExtensionFormula,
    },
  ],
});

export const families = [ringsOnALens, stopsLost, framesOnARail, whichLensGainsMore] as const;
