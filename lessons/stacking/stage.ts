import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'There is time for one frame only. Will half of this crystal be sharp in it?',
    caption:
      'No: {depth-of-field} of its {subject-depth}, for a blur of {circle-of-confusion}. Other frames must add the rest.',
    set: { 'time-limit': 1 },
    sheet: 'slabs',
  },
  {
    question: 'These frames just touch. Is a step as long as a frame is deep a good one?',
    caption: 'No: where frames touch, both are only just sharp. Better {frame-step}, so that they share {overlap}.',
    from: { overlap: 0 },
    set: { overlap: 0.25 },
    sheet: 'slabs',
  },
  {
    question: 'A crystal 2 mm deep. Stop down by two stops: are half as many frames enough?',
    caption: 'Yes: {frame-count}. Each frame is twice as deep, but diffraction blurs every one of them more.',
    from: { 'subject-depth': 2 },
    set: { 'subject-depth': 2, 'f-number': 11 },
    sheet: 'slabs',
  },
  {
    question: 'From life size to twice life size. Twice as many frames, or more?',
    caption: 'More: {frame-count}. The depth of a frame shrinks faster than the picture grows.',
    from: { 'time-limit': 600 },
    set: { magnification: 2, 'time-limit': 600 },
    sheet: 'slabs',
  },
  {
    question: 'Back at life size, the step grows to one and a half times a frame’s depth. Does it show in the picture?',
    caption: 'Yes: the shaded slices are sharp in no frame, and stay soft in the finished picture.',
    from: { overlap: 0.25 },
    set: { overlap: -0.5 },
    sheet: 'slabs',
  },
  {
    question: 'No rail at hand. Will the focus ring do?',
    caption:
      'Better not: each frame has another size, {focus-ring.scale-change} from first to second. Frames: {focus-ring.frame-count}.',
    from: { overlap: 0.25 },
    set: { by: 'focus-ring' },
    sheet: 'slabs',
  },
  {
    question: 'Twice life size needs 17 frames, and the crystal is melting: 40 s are left. Are we done in time?',
    caption: 'No: the stack takes {stack-time}, and {time-limit} are left. Finished in time: {in-time.frame-count}.',
    from: { magnification: 2, 'time-limit': 90 },
    set: { magnification: 2, 'time-limit': 40 },
    sheet: 'time',
  },
  {
    question: 'Where does most of the time go: into the exposures, or between them?',
    caption: 'Between them. With a flash and a rail that comes to rest in {settling-time}, {stack-time} are enough.',
    set: { magnification: 2, 'settling-time': 0.5, 'exposure-time': 0.005 },
    sheet: 'time',
  },
];
