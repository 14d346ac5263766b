import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'What is 50 mm of a 50 mm lens: its length, its width, or something behind it?',
    caption: 'Something behind it. Light from very far away meets {focal-length} behind H′, one of its two planes.',
    from: { 'focus-distance': 440, 'f-number': 2.8 },
    set: { 'focus-distance': 50000, 'f-number': 2.8 },
    sheet: 'marks',
  },
  {
    question: 'From 5 m to the horizon, how far must the lens move: 0.5 mm, 5 mm or 50 mm?',
    caption: 'Half a millimetre: at {focus-distance} it stands {focus-travel} out. All that is farther asks for less.',
    from: { 'focus-distance': 50000 },
    set: { 'focus-distance': 5000 },
  },
  {
    question: 'What is f/8: eight times as wide as f/1, or an eighth of something?',
    caption: 'The opening is {entrance-pupil} wide: the focal length, {focal-length}, divided by the f-number.',
    from: { 'f-number': 1.8 },
    set: { 'f-number': 8 },
  },
  {
    question: 'From f/8 to f/16 the opening is half as wide. Half the light?',
    caption: '{stopped-down} below the widest. Half the width is a quarter of the light: two stops.',
    from: { lens: 'lens-28', 'f-number': 8 },
    set: { lens: 'lens-28', 'f-number': 16 },
    sheet: 'stops',
  },
  {
    question: '0.44 m on the ring: from the front of the lens, or from where?',
    caption: 'From the sensor: {focus-distance}. From the rim of the lens it is {working-distance}.',
    from: { 'focus-distance': 2000 },
    set: { 'focus-distance': 440 },
    sheet: 'marks',
  },
  {
    question: 'A zoom says “macro”; its ring ends at 0.31 m. Is 12 mm, 12 cm or 1.2 m of a page in the picture?',
    caption: '{field-width} of it. The magnification: {magnification}.',
    from: { lens: 'lens-55', 'focus-distance': 2000 },
    set: { lens: 'lens-55', 'focus-distance': 312 },
    sheet: 'marks',
  },
  {
    question: 'Seen from behind, is the opening of a 28 mm lens wider, narrower or the same?',
    caption:
      'From behind {exit-pupil}, from the front {entrance-pupil}. The pupil magnification is {pupil-magnification}.',
    from: { 'focus-distance': 50000, 'f-number': 2.8 },
    set: { lens: 'lens-28', 'focus-distance': 50000, 'f-number': 2.8 },
    sheet: 'marks',
  },
];
