import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
<<<<<<< HEAD
    question: 'By hand, 90 mm, 1/125 s. This leaf at life size is smeared. Will a far hedge be sharp?',
    options: ['Yes', 'No'],
    holds: 0,
=======
    question: 'By hand, 90 mm. At 1/30 s a far hedge is smeared. Will 1/125 s hold it?',
>>>>>>> a13
    caption:
      'Just: streak {motion-blur}, and c is {circle-of-confusion}. Far off only turning counts: hence one over f.',
    from: { magnification: 0.02, 'exposure-time': 1 / 30 },
    set: { magnification: 0.02 },
  },
  {
<<<<<<< HEAD
    question: 'Life size again, same hands, same time. How much longer does the streak get?',
    options: ['Hardly any', 'About three times', 'About ten times'],
    holds: 1,
    caption: '{motion-blur}, of it turning {turning.motion-blur}. About the sensor that grows with (1 + m)².',
=======
    question: 'Life size, same hands, same time. Is the streak twice as long, three times or ten times?',
    caption: 'Three times: {motion-blur}, turning {turning.motion-blur}. About the sensor that grows with (1 + m)².',
>>>>>>> a13
    from: { magnification: 0.02 },
    set: {},
  },
  {
<<<<<<< HEAD
    question: 'One over the focal length is 1/90 s. Which time holds life size?',
    options: ['1/90 s', '1/180 s', 'Only a shorter one'],
    holds: 2,
    caption: '{slowest.exposure-time} or shorter. The rule, 1/f, does not know the magnification.',
=======
    question: 'One over the focal length is 1/90 s. Which holds life size: 1/125 s, 1/500 s or 1/2000 s?',
    caption: '1/500 s: {slowest.exposure-time} or shorter. The rule, 1/f, does not know the magnification.',
>>>>>>> a13
    from: { magnification: 0.02 },
    set: { 'exposure-time': 0.002 },
    sheet: 'limits',
  },
  {
<<<<<<< HEAD
    question: 'A spider walks by. What do four stops of stabilisation do for it?',
    options: ['Hold it still', 'Nothing for its walk'],
    holds: 1,
    caption: 'Turning {turning.motion-blur}, walk {subject.motion-blur}: it works on the first alone.',
=======
    question: 'A spider walks by. Do four stops of stabilisation make its streak 16 times shorter, twice, or less?',
    caption: 'Less: turning {turning.motion-blur}, walk {subject.motion-blur}: it works on the first alone.',
>>>>>>> a13
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
<<<<<<< HEAD
    question: 'On the left it smears. We set 1/1000 s: what does that cost?',
    options: ['No light', 'Half of the light', 'More than half'],
    holds: 2,
    caption:
      'An eighth of the light: ISO {iso}, {electrons} electrons. Signal to noise {signal-to-noise}, a third of before.',
=======
    question: 'It smears. At 1/1000 s, an eighth of the light: is signal to noise an eighth, a third or a half?',
    caption: 'A third: {signal-to-noise}, for {electrons} electrons scatter by their root. The camera is at ISO {iso}.',
>>>>>>> a13
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
