import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'The guide number says f/11. We set f/11 and come closer: right at life size?',
    options: ['Too dark', 'Right', 'Too bright'],
    holds: 0,
    caption: 'The flash alone: {flash-underexposure}. Closeness took {light-loss}.',
    from: { magnification: 0.02 },
    set: { magnification: 1 },
  },
  {
    question: 'How much more power does that need: twice as much, four times or sixteen times?',
    options: ['Twice as much', 'Four times', 'Sixteen times'],
    holds: 1,
    caption: 'Four times as much, for two stops: {needed.flash-power} of full power, not 1/64.',
    set: { power: 'p16' },
  },
  {
    question: 'The background goes from 20 mm to a metre behind. Does it get one stop less flash, three or six?',
    options: ['One stop', 'Three', 'Six'],
    holds: 2,
    caption: 'Almost black: {background-underexposure} less flash than on the subject. The rest is mostly daylight.',
    from: { power: 'p16', 'background-distance': 20 },
    set: { power: 'p16', 'background-distance': 1000 },
  },
  {
    question: 'A longer shutter time: what gets brighter, the subject or the background?',
    options: ['The subject', 'The background'],
    holds: 1,
    caption:
      'The background: daylight lights it, {ambient-share} of the subject’s light now. The flash gives as before.',
    set: { power: 'p16', 'background-distance': 1000, 'exposure-time': 0.04 },
  },
  {
    question: 'The subject moves. Does the flash hold it still?',
    options: ['Yes', 'Only the flash’s image', 'No'],
    holds: 1,
    caption: 'Flash {flash.motion-blur}, daylight {ambient.motion-blur}: two images, one on the other.',
    sheet: 'pictures',
    from: { power: 'p16', 'exposure-time': 0.04, 'subject-speed': 0.001 },
    set: { power: 'p16', 'exposure-time': 0.04, 'subject-speed': 20 },
  },
  {
    question: 'Would 1/1000 s help, five times as short as the sync speed?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: a curtain is in the way as the flash fires. At {shutter.exposure-time} the shutter is wholly open.',
    sheet: 'shutter',
    from: { power: 'p16' },
    set: { power: 'p16', 'exposure-time': 0.001 },
  },
  {
    question: 'Full power from 600 mm, or 1/64 from 75 mm: the same light. Which holds what moves?',
    options: ['Full power, far', '1/64, near', 'Both alike'],
    holds: 1,
    caption: 'Near and weak: less power is a shorter flash. Its streak is {flash.motion-blur}.',
    sheet: 'pictures',
    from: { power: 'full', 'flash-distance': 600, 'subject-speed': 200 },
    set: { power: 'p64', 'flash-distance': 75, 'subject-speed': 200 },
  },
];
