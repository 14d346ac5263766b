import type { StageStep } from '#site/stage/step.ts';

/** Time is no matter until it is asked about. */
const patient = { 'time-limit': 60 };

export const stage: readonly StageStep[] = [
  {
    question: 'A jumping spider, 6 mm wide. How large on the sensor, to take half of the picture?',
    options: ['Life size', 'Twice life size', 'Three times'],
    holds: 2,
    caption: '{magnification}: its image is half of the sensor’s width. From this all else follows.',
    from: { 'frame-fill': 0.1, ...patient },
    set: patient,
    sheet: 'size',
  },
  {
    question: 'The macro lens goes to life size by itself. What must be added?',
    options: ['One ring', 'All the rings', 'The bellows'],
    holds: 2,
    caption: '{extension} between lens and camera: past all the rings, so the bellows.',
    from: { 'frame-fill': 0.16, ...patient },
    set: patient,
    sheet: 'place',
  },
  {
    question: 'It lets nothing come nearer than 30 mm. Is there room, also for a light at 60 mm?',
    options: ['Yes', 'No'],
    holds: 0,
    caption: 'Yes: {working-distance} before the lens. The light comes in from the side.',
    from: patient,
    set: { 'flash-distance': 60, ...patient },
    sheet: 'place',
    withheld: ['working-distance'],
  },
  {
    question: 'It is 3 mm deep. Will one frame do, closed further?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No. T is by rays alone. With diffraction one frame holds {one-frame.subject-depth} at most at this size.',
    from: { 'f-number': 2.8, ...patient },
    set: patient,
    sheet: 'size',
  },
  {
<<<<<<< HEAD
    question: 'So a stack. If it holds still for 8 s, not 30: are we done in time?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: {frame-count} frames take {stack-time}. In time: {in-time.frame-count}. Make it smaller.',
    from: { 'time-limit': 30 },
=======
    question: 'So a stack. It holds still for 8 s, not for a minute: are all frames done, half, or fewer?',
    caption: 'Fewer: {in-time.frame-count}, for all take {stack-time}. Make it smaller.',
    from: patient,
>>>>>>> a13
    set: {},
    sheet: 'time',
    withheld: ['stack-time'],
  },
  {
    question: 'A third of the picture, and 0.3 s from frame to frame: is that in time?',
    options: ['Yes', 'No'],
    holds: 0,
    caption: '{frame-count} frames in {stack-time}: done. The card had said which answer to change.',
    from: {},
    set: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    sheet: 'card',
  },
  {
<<<<<<< HEAD
    question: 'One of its frames by itself: how much of the 3 mm is sharp, half, a tenth, or less?',
    options: ['Half', 'A tenth', 'Less'],
    holds: 2,
    caption: 'Less: {depth-of-field}. Left all frames merged, right one of them: a thin slice.',
=======
    question: 'Its first frame by itself: how much of the 3 mm is sharp, half, a tenth, or less?',
    caption: 'Less: {depth-of-field}. Left all frames merged, right the first: sharp at the near end only.',
>>>>>>> a13
    from: { 'frame-fill': 0.35, 'settling-time': 0.3, beside: 'light' },
    set: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    sheet: 'picture',
    withheld: ['depth-of-field'],
  },
  {
<<<<<<< HEAD
    question: 'In the sun the shutter will do. And in the shade: shutter or flash?',
    options: ['Shutter', 'Flash'],
    holds: 1,
=======
    question: 'At ISO 6400 daylight would do, in noise. At ISO 200: shutter or flash?',
>>>>>>> a13
    caption:
      'Daylight wants {ambient.exposure-time}, movement allows {slowest.exposure-time}. Flash: {needed.flash-power} of its power.',
    from: { 'frame-fill': 0.35, 'settling-time': 0.3, iso: 6400 },
    set: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    sheet: 'time',
  },
  {
    question: 'The bare head makes hard shadows. Twice as far away, or diffusing paper, nearer?',
    options: ['Twice as far away', 'Paper, nearer'],
    holds: 1,
    caption: 'Paper, nearer: {source-angle} wide, seen from the spider. Farther off the shadows get harder.',
    from: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    set: { 'frame-fill': 0.35, 'settling-time': 0.3, source: 'paper', 'flash-distance': 60 },
    sheet: 'place',
  },
  {
    question: 'It turns away each time the light comes near. Go after it, or leave it?',
    options: ['Go after it', 'Leave it'],
    holds: 1,
    caption: 'Leave it: the card’s last line. What does not fit on the card is not a plan.',
    from: { 'frame-fill': 0.35, 'settling-time': 0.3 },
    set: { 'frame-fill': 0.35, 'settling-time': 0.3, source: 'paper', 'flash-distance': 60 },
    sheet: 'card',
  },
];
