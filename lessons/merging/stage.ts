import type { StageStep } from '#site/stage/step.ts';

/** Blur as wide as this is still small beside the halo, and the frames are few. */
const drop = {
  subject: 'drop-on-wire',
  magnification: 1.5,
  'subject-depth': 12,
  'edge-height': 11,
  'circle-of-confusion': 0.1,
  overlap: 0,
} as const;
const ruler = { subject: 'slanted-scale', 'circle-of-confusion': 0.1, 'f-number': 4 } as const;

export const stage: readonly StageStep[] = [
  {
    id: 'higher-edge',
    question:
      'Only part of the lens can see this band. With the edge three times as high, is the band wider or narrower?',
    options: ['Wider', 'Narrower'],
    holds: 0,
    caption: 'Wider, about three times: {hidden-band}. Seen from there, the edge covers part of the lens.',
    from: { 'edge-height': 1 },
    set: { 'edge-height': 3 },
    sheet: 'edge',
  },
  {
    id: 'more-frames',
    question: 'Twice as many frames, half as far apart. Does the band get narrower?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: {frame-count} frames, and still {hidden-band}. Each of them looks past the same edge.',
    set: { overlap: 0.65 },
    sheet: 'edge',
  },
  {
    id: 'smaller-pupil',
    question: 'Stop down by two stops. Does the band get narrower?',
    options: ['Yes', 'No'],
    holds: 0,
    caption: 'Yes, half as wide: {hidden-band}. The pupil is half as wide, too.',
    set: { overlap: 0.65, 'f-number': 11 },
    sheet: 'edge',
  },
  {
    id: 'drop',
    question: 'A drop on a wire before a flower, merged, at f/11. Open to f/2.8: what happens along the outlines?',
    options: ['Nothing', 'A halo comes', 'It doubles'],
    holds: 1,
    caption: 'A halo: the band is {hidden-band} now. Enlarged. Left: {frame-count} frames, merged. Right: all sharp.',
    from: { ...drop, 'f-number': 11 },
    set: { ...drop, 'f-number': 2.8 },
    sheet: 'picture',
    // A halo is faint: the back row sees it enlarged.
    arranged: { asked: 'side-by-side', answered: 'enlarged' },
  },
  {
    id: 'sides',
    question: 'The camera moves one step nearer. What moves more: the middle of the picture, or its sides?',
    options: ['The middle', 'Its sides'],
    holds: 1,
    caption: 'The sides: by {edge-shift}; the middle stays. Uncorrected, edges there come out double.',
    from: { magnification: 0.25, overlap: 0.9 },
    set: { magnification: 0.25 },
    sheet: 'scale',
  },
  {
    id: 'rail-or-ring',
    question: 'From a quarter of life size to life size: which changes the size more now, rail or focus ring?',
    options: ['The rail', 'The ring'],
    holds: 1,
    caption:
      'The ring: {focus-ring.scale-change}, the rail {whole-stack.scale-change}. There, the ring hardly moves the sharp plane.',
    set: { magnification: 1 },
    sheet: 'scale',
  },
  {
    id: 'sizes-left',
    question: 'This crystal was taken with the ring. What happens if the sizes of the frames are not corrected?',
    options: ['Nothing', 'Edges double', 'Stripes come'],
    holds: 1,
    caption: 'Edges are double. Left: {frame-count} frames, sizes uncorrected. Right: everything sharp.',
    from: { subject: 'frost-crystal', by: 'focus-ring', scale: 'known' },
    set: { subject: 'frost-crystal', by: 'focus-ring', scale: 'uncorrected' },
    sheet: 'picture',
  },
  {
    id: 'longer-step',
    question: 'A slanted ruler, merged. Now the step becomes three times as long as a frame is deep. What is missing?',
    options: ['Its far end', 'Stripes all along', 'Nothing'],
    holds: 1,
    caption:
      'Soft stripes: {frame-step} a step, {depth-of-field} a frame (blur: {circle-of-confusion}). Between, none is sharp.',
    from: ruler,
    set: { ...ruler, overlap: -2 },
    sheet: 'picture',
  },
];
