import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'A hoverfly at a tenth of life size, 50 mm. At half life size: is a fifth of the room left, or more?',
    options: ['A fifth', 'More'],
    holds: 1,
    caption: 'More: {working-distance}. From H it is one focal length plus f over m, and only f over m shrinks.',
    from: { magnification: 0.1 },
    set: {},
  },
  {
    question: 'The same half life size with 200 mm. Is the fly larger in the picture?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No, {magnification} again. Focal length changes the room: now it is {working-distance}.',
    set: { lens: 'lens-200' },
  },
  {
    question: 'The hoverfly is content with 50 mm. A butterfly leaves at 30 cm. What would do: 70, 110 or 200 mm?',
    options: ['70 mm', '110 mm', '200 mm'],
    holds: 2,
    caption:
      '{shortest.focal-length} or more, with H as near to the rim as here. In our 90 mm it is farther in: take 200 mm.',
    from: {},
    set: { animal: 'butterfly' },
  },
  {
    question: 'The butterfly again, twice as large. Will the same focal length still do?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No, now it takes {shortest.focal-length}. With one lens, larger is always nearer.',
    set: { animal: 'butterfly', magnification: 1 },
  },
  {
    question: 'Posts right behind the fly: all lenses see equally much. Half a metre behind, which sees most?',
    options: ['The shortest', 'The longest', 'All as much'],
    holds: 0,
    caption: 'The shortest: {background-width}. It is nearest, so its lines of sight spread most.',
    from: { 'background-distance': 0 },
    set: {},
    sheet: 'behind',
  },
  {
    question: 'A row of posts half a metre behind instead, all lenses at one f-number. Which blurs it most?',
    options: ['The shortest', 'The longest', 'All alike'],
    holds: 1,
    caption: 'The longest: a point becomes {background-blur} wide. Its opening is {entrance-pupil} wide.',
    from: { lens: 'lens-200', 'background-distance': 0 },
    set: { lens: 'lens-200' },
    sheet: 'picture',
  },
  {
    question: 'A spider at life size: the rim takes a tenth of an even sky. At twice life size: a fifth, or a quarter?',
    options: ['A fifth', 'A quarter'],
    holds: 0,
    caption: 'A fifth: {lens-shadow}. The rim is now {working-distance} away, and {rim-diameter} wide.',
    from: { magnification: 1, animal: 'spider' },
    set: { magnification: 2, animal: 'spider' },
  },
];
