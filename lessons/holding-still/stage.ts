import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'By hand, 90 mm. At 1/30 s a far hedge is smeared. Will 1/125 s hold it?',
    options: ['Yes', 'No'],
    holds: 0,
    caption:
      'Just: streak {motion-blur}, and c is {circle-of-confusion}. Far off only turning counts: hence one over f.',
    from: { magnification: 0.02, 'exposure-time': 1 / 30 },
    set: { magnification: 0.02 },
  },
  {
    question: 'Life size, same hands, same time. Is the streak twice as long, three times or ten times?',
    options: ['Twice', 'Three times', 'Ten times'],
    holds: 1,
    caption: 'Three times: {motion-blur}, turning {turning.motion-blur}. About the sensor that grows with (1 + m)².',
    from: { magnification: 0.02 },
    set: {},
  },
  {
    question: 'One over the focal length is 1/90 s. Which holds life size: 1/125 s, 1/500 s or 1/2000 s?',
    options: ['1/125 s', '1/500 s', '1/2000 s'],
    holds: 1,
    caption: '1/500 s: {slowest.exposure-time} or shorter. The rule, 1/f, does not know the magnification.',
    from: { magnification: 0.02 },
    set: { 'exposure-time': 0.002 },
    sheet: 'limits',
  },
  {
    question: 'A spider walks by. Do four stops of stabilisation make its streak 16 times shorter, twice, or less?',
    options: ['16 times shorter', 'Twice', 'Less'],
    holds: 2,
    caption: 'Less: turning {turning.motion-blur}, walk {subject.motion-blur}: it works on the first alone.',
    from: { subject: 'spider' },
    set: { subject: 'spider', stabilisation: 4 },
  },
  {
    question: 'The spider walks on. Does a tripod hold it?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: the walk draws {subject.motion-blur} as before. Only {slowest.exposure-time} or shorter holds it.',
    from: { subject: 'spider' },
    set: { subject: 'spider', holding: 'tripod' },
  },
  {
    question: 'It smears. At 1/1000 s, an eighth of the light: is signal to noise an eighth, a third or a half?',
    options: ['An eighth', 'A third', 'A half'],
    holds: 1,
    caption: 'A third: {signal-to-noise}, for {electrons} electrons scatter by their root. The camera is at ISO {iso}.',
    from: {},
    set: { 'exposure-time': 0.001 },
    sheet: 'picture',
  },
  {
    question: 'A hand under the front of the lens: does the same turn draw as much?',
    options: ['As much', 'Less'],
    holds: 1,
    caption: 'No: the turn draws {turning.motion-blur}. About the pupil it grows with 1 + m/P only.',
    from: {},
    set: { 'turns-about': 'entrance-pupil' },
  },
];
