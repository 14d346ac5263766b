import type { StageStep } from '#site/stage/step.ts';

/** Time is no matter until it is asked about. */
const patient = { 'time-limit': 60 };

export const stage: readonly StageStep[] = [
  {
    question: 'A jumping spider, 6 mm wide. How large on the sensor, to take half of the picture?',
    caption: '{magnification}: its image is half of the sensor’s width. From this all else follows.',
    from: { 'frame-fill': 0.1, ...patient },
    set: patient,
    sheet: 'size',
  },
  {
    question: 'The macro lens goes to life size by itself. What must be added?',
    caption: '{extension} between lens and camera: past all the rings, so the bellows.',
    from: { 'frame-fill': 0.16, ...patient },
    set: patient,
    sheet: 'place',
  },
  {
    question: 'It lets nothing come nearer than 30 mm. Is there room, also for a light at 60 mm?',
    caption: 'Yes: {working-distance} before the lens. The light comes in from the side.',
    from: patient,
    set: { 'flash-distance': 60, ...patient },
    sheet: 'place',
    withheld: ['working-distance'],
  },
  {
    question: 'It is 3 mm deep. Will one frame do, closed further?',
    caption: 'No. T is by rays alone. With diffraction one frame holds {one-frame.subject-depth} at most at this size.',
    from: { 'f-number': 2.8, ...patient },
    set: patient,
    sheet: 'size',
  },
  {
    question: 'So a stack. It holds still for 8 s, not for a minute: are all frames done, half, or fewer?',
    caption: 'Fewer: {in-time.frame-count}, for all take {stack-time}. Make it smaller.',
    from: patient,
    set: {},
    sheet: 'time',
    withheld: ['stack-time'],
  },
  {
    question: 'A third of the picture, and 0.3 s from frame to frame: is that in time?',
    caption: '{frame-count} frames in {stack-time}: done. The card had said which answer to change.',
    from: {},
    set: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    sheet: 'card',
  },
  {
    question: 'Its first frame by itself: how much of the 3 mm is sharp, half, a tenth, or less?',
    caption: 'Less: {depth-of-field}. Left all frames merged, right the first: sharp at the near end only.',
    from: { 'frame-fill': 0.35, 'settling-time': 0.3, beside: 'light' },
    set: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    sheet: 'picture',
  },
  {
    question: 'At ISO 6400 daylight would do, in noise. At ISO 200: shutter or flash?',
    caption:
      'Daylight wants {ambient.exposure-time}, movement allows {slowest.exposure-time}. Flash: {needed.flash-power} of its power.',
    from: { 'frame-fill': 0.35, 'settling-time': 0.3, iso: 6400 },
    set: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    sheet: 'time',
  },
  {
    question: 'The bare head makes hard shadows. Twice as far away, or diffusing paper, nearer?',
    caption: 'Paper, nearer: {source-angle} wide, seen from the spider. Farther off the shadows get harder.',
    from: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    set: { 'frame-fill': 0.35, 'settling-time': 0.3, source: 'paper', 'flash-distance': 60 },
    sheet: 'place',
  },
  {
    question: 'It turns away each time the light comes near. Go after it, or leave it?',
    caption: 'Leave it: the card’s last line. What does not fit on the card is not a plan.',
    from: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    set: { 'frame-fill': 0.35, 'settling-time': 0.3, source: 'paper', 'flash-distance': 60 },
    sheet: 'card',
  },
];
