import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'Half life size, f/8. How deep is the sharp part?',
    caption:
      'From {near-limit} in front to {far-limit} behind: {depth-of-field} in all, hardly more than a match is thick.',
  },
  {
    question: 'Two stops down, to f/16. Half as deep, or twice?',
    caption: 'Twice: {depth-of-field}. The hole is half as wide, so the cone takes twice as long to become too wide.',
    set: { 'f-number': 16 },
  },
  {
    question: 'A lens four times as long, from farther away, the picture as before. Deeper?',
    caption: 'Still {depth-of-field}. The hole is four times as wide and four times as far away: the cone is the same.',
    set: { 'focal-length': 200 },
  },
  {
    question: 'Life size instead of half. How much is left?',
    caption: 'A third: {depth-of-field}. Twice the size wants half the blur, and the lens has come closer as well.',
    set: { magnification: 1 },
  },
  {
    question: 'Where do lenses begin to differ?',
    caption:
      'Far to the left. Focused at {hyperfocal-distance} all behind is sharp with this one; close up they are one line.',
    set: { magnification: 0.1 },
    sheet: 'plot',
  },
  {
    question: 'Who decides what is sharp?',
    caption:
      'We do. For a print {print-width} wide, seen from {viewing-distance}, c is {circle-of-confusion}, and the same picture is sharp over {depth-of-field}.',
    set: { 'circle-of-confusion-by': 'viewing' },
  },
  {
    question: 'Five times life size at f/2.8: is light still made of rays?',
    caption: 'No longer. Depth by rays: {depth-of-field}. Depth by the wave: {wave-depth}.',
    set: { magnification: 5, 'f-number': 2.8 },
  },
];
