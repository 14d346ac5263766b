import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'The ground is in focus. How much of it does the lens not see whole?',
    caption: 'A band of {hidden-band} along the edge. From there the edge stands before part of the pupil.',
    sheet: 'edge',
  },
  {
    question: 'Twice as many frames. Does the band get narrower?',
    caption: 'No: {frame-count} frames, and still {hidden-band}. Each of them looks past the same edge.',
    set: { overlap: 0.65 },
    sheet: 'edge',
  },
  {
    question: 'What does make it narrower?',
    caption: 'A smaller pupil. At {f-number} the band is {hidden-band}, and {frame-count} frames are enough.',
    set: { 'f-number': 11 },
    sheet: 'edge',
  },
  {
    question: 'One step along the rail. What moves in the picture?',
    caption: 'The middle stays, the sides move by {edge-shift}. Unless it is put right, edges there come out double.',
    sheet: 'scale',
  },
  {
    question: 'Rail or focus ring, at life size?',
    caption:
      'First frame to last, {whole-stack.scale-change} on the rail and {focus-ring.scale-change} on the ring: there the ring hardly moves the sharp plane.',
    sheet: 'scale',
  },
  {
    question: 'The same frames, merged as they are. What gave way?',
    caption:
      'On the left {frame-count} frames with no scale put right, on the right all sharp. The rim has moved most.',
    set: { scale: 'uncorrected' },
    sheet: 'picture',
  },
  {
    question: 'A leaning scale, its frames too far apart. What is missing?',
    caption: '{frame-step} from frame to frame, each {depth-of-field} deep: what lies between them nobody took sharp.',
    set: { subject: 'slanted-scale', overlap: -2, 'circle-of-confusion': 0.1, 'f-number': 4 },
    sheet: 'picture',
  },
];
