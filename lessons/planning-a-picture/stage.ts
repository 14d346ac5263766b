import type { StageStep } from '#site/stage/step.ts';

/** Time is no matter until it is asked about. */
const patient = { 'time-limit': 60 };
/** Small enough for the frames to be done. */
const smaller = { 'frame-fill': 0.35, 'settling-time': 0.3 };

export const stage: readonly StageStep[] = [
  {
    question: 'A jumping spider, 6 mm wide. How large on the sensor, to take half of the picture?',
    options: ['Life size', 'Twice life size', 'Three times'],
    holds: 2,
    caption: '{magnification}: its image is half of the sensor’s width. From this all else follows.',
    from: { 'frame-fill': 0.1, ...patient },
    set: patient,
    sheet: 'plan',
  },
  {
    question: 'The macro lens goes to life size by itself. What must be added?',
    options: ['One ring', 'All the rings', 'The bellows'],
    holds: 2,
    caption: '{extension} between lens and camera: past all the rings, so the bellows.',
    from: patient,
    set: { ...patient, question: 2 },
    sheet: 'plan',
    withheld: ['extension'],
  },
  {
    question: 'It lets nothing come nearer than 30 mm, which is the circle. Is there room?',
    options: ['Yes', 'No'],
    holds: 0,
    caption: 'Yes: {working-distance} before the lens.',
    from: { ...patient, question: 2 },
    set: { ...patient, question: 3 },
    sheet: 'plan',
    withheld: ['working-distance'],
  },
  {
    question: 'It is 3 mm deep. Will one frame do, closed further?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No. T is by rays alone. With diffraction one frame holds {one-frame.subject-depth} at most at this size.',
    from: { ...patient, question: 3 },
    set: { ...patient, question: 4 },
    sheet: 'plan',
  },
  {
    question: 'So a stack. It holds still for 8 s, not for a minute: are all frames done, half, or fewer?',
    options: ['All', 'Half', 'Fewer'],
    holds: 2,
    caption: 'Fewer: {in-time.frame-count}, for all take {stack-time}. Make it smaller.',
    from: { question: 4 },
    set: { question: 5 },
    sheet: 'plan',
  },
  {
    question: 'A third of the picture, and 0.3 s from frame to frame: is that in time?',
    options: ['Yes', 'No'],
    holds: 0,
    caption: '{frame-count} frames in {stack-time}: done. The card had said which answer to change.',
    from: { question: 5 },
    set: { ...smaller, question: 5 },
    sheet: 'card',
  },
  {
    question: 'Its first frame by itself: how much of the 3 mm is sharp, half, a tenth, or less?',
    options: ['Half', 'A tenth', 'Less'],
    holds: 2,
    caption: 'Less: {depth-of-field}. Left all frames merged, right the first: sharp at the near end only.',
    from: { ...smaller, question: 5, beside: 'light' },
    set: { ...smaller, question: 5 },
    sheet: 'picture',
  },
  {
    question: 'At ISO 6400 daylight would do, in noise. At ISO 200: shutter or flash?',
    options: ['Shutter', 'Flash'],
    holds: 1,
    caption:
      'Daylight wants {ambient.exposure-time}, movement allows {slowest.exposure-time}. Flash: {needed.flash-power} of its power.',
    from: { ...smaller, question: 5, iso: 6400 },
    set: { ...smaller, question: 6 },
    sheet: 'time',
  },
  {
    question: 'The bare head makes hard shadows. Twice as far away, or diffusing paper, nearer?',
    options: ['Twice as far away', 'Paper, nearer'],
    holds: 1,
    caption: 'Paper, nearer: {source-angle} wide, seen from the spider. Farther off the shadows get harder.',
    from: { ...smaller, question: 6 },
    set: { ...smaller, question: 7, source: 'paper', 'flash-distance': 60 },
    sheet: 'plan',
  },
  {
    question: 'It turns away each time the light comes near. Go after it, or leave it?',
    options: ['Go after it', 'Leave it'],
    holds: 1,
    caption: 'Leave it: the card’s last line. What does not fit on the card is not a plan.',
    from: { ...smaller, question: 7 },
    set: { ...smaller, question: 8, source: 'paper', 'flash-distance': 60 },
    sheet: 'card',
  },
];
