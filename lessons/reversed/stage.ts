import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    id: 'right-way-round',
    question: 'A 28 mm lens at nearly twice life size, the right way round on a ring. How much room is left?',
    options: ['As much as ever', 'Half of it', 'Hardly any'],
    holds: 2,
    caption: 'Hardly any: {unreversed.working-distance} before the rim. The ring is {unreversed.extension} long.',
    from: { drawn: 'upright', extension: 0, lens: 'lens-50' },
    set: { drawn: 'upright' },
  },
  {
    id: 'turned',
    question: 'The same lens turned round, at the same size. Less room, as much, or more?',
    options: ['Less', 'As much', 'More'],
    holds: 2,
    caption:
      'More: {working-distance}. It was built to make its image that far behind itself, and now the subject is there.',
    set: {},
  },
  {
    id: 'longer-lens',
    question: 'A longer lens on the same ring, 50 mm: larger, or smaller?',
    options: ['Larger', 'Smaller'],
    holds: 1,
    caption: 'Smaller: {magnification}. Turned round, the shorter lens is the stronger.',
    set: { lens: 'lens-50', drawn: 'turned' },
  },
  {
    id: 'longer-tube',
    question: 'Again 28 mm, and all three rings behind it. Does the subject touch the glass?',
    options: ['Yes', 'No'],
    holds: 1,
    caption:
      'No: {magnification} at {working-distance}. It never comes nearer to the flange than the register; the rear glass takes part of that.',
    from: { drawn: 'turned' },
    set: { drawn: 'turned', extension: 76 },
  },
  {
    id: 'focus-ring',
    question: 'We turn the focus ring to its closest mark. What happens to the size?',
    options: ['It grows', 'Nothing', 'It shrinks'],
    holds: 1,
    caption: 'Nothing: {magnification}. The rim is what is screwed on. Only the flange moves: out by {focus-travel}.',
    from: { drawn: 'turned' },
    set: { drawn: 'turned', 'focus-travel': 2.8 },
  },
  {
    id: 'who-closes',
    question: 'A 50 mm lens that the camera closes through contacts. Who closes it, turned round?',
    options: ['The camera', 'A ring on the lens, or nobody'],
    holds: 1,
    caption: 'A ring on the lens, or nobody: the contacts face the subject now.',
    from: { drawn: 'turned' },
    set: { lens: 'lens-50', drawn: 'turned' },
  },
  {
    id: 'cone',
    question: 'Turned round, 50 mm hardly differs. And 28 mm, at f/18 before?',
    options: ['As before, at f/18', 'Brighter', 'Darker'],
    holds: 2,
    caption:
      'It works at {effective-f-number}: the sensor sees the smaller opening now, and the subject the larger one.',
    sheet: 'faces',
    from: { lens: 'lens-50' },
    set: {},
  },
  {
    id: 'yet-stronger',
    question: 'Turned round, shorter is stronger. Yet 55 mm gives more than 50 mm: why?',
    options: ['It is wider', 'Its H is deeper', 'It has more glass'],
    holds: 1,
    caption:
      'Its H is deeper, h {front-principal-depth}: more is between sensor and H. Over f, less 1, that is {magnification}.',
    sheet: 'plot',
    from: {},
    set: { lens: 'lens-55' },
  },
];
