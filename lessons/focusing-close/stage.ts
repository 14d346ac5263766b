import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    id: 'infinity',
    question: 'This 50 mm lens goes to infinity. Is H′ then 0, 50 or 100 mm from the sensor?',
    options: ['0 mm', '50 mm', '100 mm'],
    holds: 1,
    caption: 'H′ is {image-distance} from the sensor. At infinity that is one focal length.',
    set: { 'focus-travel': 0 },
  },
  {
    id: 'leaf',
    question: 'A leaf, one metre away. Does the lens move out or in?',
    options: ['Out', 'In'],
    holds: 0,
    caption: 'Out, by {focus-travel}. A nearer leaf has its image farther behind the lens.',
    set: { 'subject-distance': 1000 },
  },
  {
    id: 'half-the-way',
    question: 'Half the distance. Does that take less than twice the travel, twice or more?',
    options: ['Less than twice', 'Twice', 'More than twice'],
    holds: 2,
    caption: 'More: {focus-travel}. Travel goes with magnification, here {magnification}, not with distance.',
    set: { 'subject-distance': 500 },
  },
  {
    id: 'thread',
    question: 'Here the focus ring stops. Is this half of the way to life size, a third or less?',
    options: ['Half of the way', 'A third', 'Less'],
    holds: 2,
    caption: 'Less. Life size takes one focal length, {focus-travel}, and the thread is 7.5 mm long.',
    from: {},
    set: { 'focus-travel': 50 },
  },
  {
    id: 'floor',
    question: 'Out by another 50 mm: does the subject come nearer to the sensor still?',
    options: ['Yes', 'No'],
    holds: 1,
    caption:
      'No: it is {focus-distance} away. Nearest was life size, {nearest.focus-distance}. Past that it goes away again.',
    set: { 'focus-travel': 100 },
  },
  {
    id: 'on-the-ring',
    question: 'Which distance is on the focus ring: from the sensor, from H or from the rim?',
    options: ['The sensor', 'H', 'The rim'],
    holds: 0,
    caption: 'From the sensor, {focus-distance}. From H it is {subject-distance}, from the rim {working-distance}.',
    from: { 'focus-travel': 50 },
    set: {},
  },
  {
    id: 'macro',
    question: 'A 60 mm macro lens at life size: can it be nearer than four focal lengths, 240 mm?',
    options: ['Yes', 'No'],
    holds: 0,
    caption:
      'Yes, focused inside: f shrinks to {macro-lens.focal-length}. It is {macro-lens.focus-distance} away, {macro-lens.working-distance} before the rim.',
    from: { lens: 'lens-60', magnification: 0.15 },
    set: { lens: 'lens-60', magnification: 1 },
    sheet: 'inside',
  },
];
