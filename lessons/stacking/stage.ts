import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'One frame of this crystal is sharp over how much?',
    caption: '{depth-of-field} of its {subject-depth}. The rest has to come from other frames.',
    sheet: 'slabs',
  },
  {
    question: 'How far may the camera move before the next one?',
    caption: 'By {frame-step}: the depth of one frame, less the {overlap} that neighbours share.',
    sheet: 'slabs',
  },
  {
    question: 'Stop down twice. How many frames now?',
    caption: '{frame-count}. Each frame is twice as deep, and diffraction blurs every one of them more.',
    set: { 'f-number': 11 },
    sheet: 'slabs',
  },
  {
    question: 'Twice life size. How many?',
    caption: '{frame-count}: the depth of a frame shrinks faster than the picture grows.',
    set: { magnification: 2 },
    sheet: 'slabs',
  },
  {
    question: 'And what happens with no overlap, or less than none?',
    caption: 'Slices that no frame has sharp. They will be there, soft, in the finished picture.',
    set: { overlap: -0.5 },
    sheet: 'slabs',
  },
  {
    question: 'No rail at hand. Will the focus ring do?',
    caption:
      '{focus-ring.frame-count} frames, but each at another size: {focus-ring.scale-change} from the first to the second, {focus-ring.edge-shift} at the side.',
    set: { by: 'focus-ring' },
    sheet: 'slabs',
  },
  {
    question: 'Twice life size, and the crystal melts. Are we done in time?',
    caption: 'The stack takes {stack-time}; {time-limit} are left. Frames taken: {in-time.frame-count}.',
    set: { magnification: 2 },
    sheet: 'time',
  },
  {
    question: 'What makes it faster?',
    caption: 'Waiting less. With a flash and a rail that comes to rest at once, {stack-time}: {in-time.frame-count}.',
    set: { magnification: 2, 'settling-time': 0.5, 'exposure-time': 0.005 },
    sheet: 'time',
  },
];
