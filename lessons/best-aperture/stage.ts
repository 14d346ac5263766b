import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: '2 mm deep, life size. At f/5.6, does the worst place keep half of its contrast?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'Far from it: the ends are out of focus and blur {defocus-blur}. The worst place keeps {contrast}.',
    from: { 'f-number': 14 },
    set: { 'f-number': 5.6 },
    // The plot of contrast over the f-number would answer before it is asked.
    sheet: 'through',
  },
  {
    question: 'So we close all the way, to f/32. Is everything sharp now?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: {contrast} is left. Nothing is far out of focus, but the Airy disc is {airy-diameter}, everywhere.',
    set: { 'f-number': 32 },
    sheet: 'through',
  },
  {
    question: 'This blur falls; the Airy disc, 16 µm at f/5.6, rises. Do they meet nearer to f/8, f/11 or f/22?',
    options: ['f/8', 'f/11', 'f/22'],
    holds: 1,
    caption: 'At {balanced-f-number}: there the ends of the depth blur as widely as the Airy disc.',
    from: { 'f-number': 5.6 },
    set: { 'f-number': 13 },
    sheet: 'blurs',
    withheld: ['airy-diameter', 'balanced-f-number'],
  },
  {
    question: 'And most is left in the worst place: nearer to f/5.6, where the two meet, or nearer to f/32?',
    options: ['f/5.6', 'Where they meet', 'f/32'],
    holds: 1,
    caption: 'At {best-f-number}: {best.contrast}. Right beside the place where the blurs meet.',
    from: { 'f-number': 5.6 },
    set: { 'f-number': 14 },
    sheet: 'blurs',
  },
  {
    question: 'A stop wider, f/10. Is that a disaster?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: {contrast}, against {best.contrast} at the top. Half a stop either way hardly shows.',
    set: { 'f-number': 10 },
  },
  {
    question: 'The subject gets twice as deep. How many stops further on is the best f-number?',
    options: ['None', 'One', 'Two'],
    holds: 1,
    caption: 'About one, not two: balanced at {balanced-f-number}. But less is left, {best.contrast} at best.',
    set: { 'f-number': 10, 'subject-depth': 4 },
  },
  {
    question: 'The left picture is at f/8. Open it to f/4: do the eyes get soft first, or the antennae?',
    options: ['The eyes', 'The antennae'],
    holds: 1,
    caption: 'The antennae, farthest from the sharp plane. The best keeps {best.contrast}; at {f-number}, {contrast}.',
    from: { 'f-number': 8 },
    set: { 'f-number': 4 },
    sheet: 'picture',
  },
  {
    question: 'Four times life size. Can one frame show all 2 mm?',
    options: ['Yes', 'No'],
    holds: 1,
    caption:
      'No: {best.contrast} at best. Stack: {frame-count} frames at {f-number}, each {depth-of-field-close-up} deep.',
    from: { 'f-number': 5.6 },
    set: { magnification: 4, 'f-number': 5.6 },
    sheet: 'through',
  },
];
