import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    id: 'half-life-size',
    question: 'Half life size, f/8. Is the sharp part as deep as a match is thick, about 2 mm?',
    options: ['Yes', 'No'],
    holds: 1,
    caption:
      'Not quite: {near-limit} in front, {far-limit} behind. In all {depth-of-field}, for a blur of {circle-of-confusion}.',
    from: { 'f-number': 2.8 },
    set: { 'f-number': 8 },
  },
  {
    id: 'two-stops',
    question: 'Closed by two stops, to f/16. Half as deep, or twice?',
    options: ['Half as deep', 'Twice as deep'],
    holds: 1,
    caption: 'Twice: {depth-of-field}. Half the opening makes half the blur, so twice the depth stays sharp.',
    set: { 'f-number': 16 },
  },
  {
    id: 'longer-lens',
    question: 'f/8 again, with a 200 mm lens from farther away, the same picture. Deeper?',
    options: ['Deeper', 'As deep', 'Less deep'],
    holds: 1,
    caption: 'Still {depth-of-field}. The opening is four times as wide and four times as far away.',
    from: { 'f-number': 8 },
    set: { 'focal-length': 200 },
  },
  {
    id: 'twice-the-size',
    question: 'Life size instead of half. Is half of the depth left, a third or a quarter?',
    options: ['Half', 'A third', 'A quarter'],
    holds: 1,
    caption: 'A third: {depth-of-field}. Half as much blur is allowed on the subject, and the cone is wider.',
    from: { magnification: 0.5 },
    set: { magnification: 1 },
  },
  {
    id: 'far-away',
    question: 'When does the focal length begin to matter: close up, far away or never?',
    options: ['Close up', 'Far away', 'Never'],
    holds: 1,
    caption: 'Far away, on the left. Focused at {hyperfocal-distance}, this lens has everything behind sharp.',
    from: { magnification: 0.5, 'focal-length': 20, 'f-number': 22 },
    set: { magnification: 0.02, 'focal-length': 20, 'f-number': 22 },
    sheet: 'plot',
  },
  {
    id: 'who-decides',
    question: 'Who decides how much blur still counts as sharp: the lens, the sensor or we?',
    options: ['The lens', 'The sensor', 'We do'],
    holds: 2,
    caption:
      'We do. For a print 300 mm wide seen from 400 mm, c is {circle-of-confusion}. The depth: {depth-of-field}.',
    from: { magnification: 0.5 },
    set: { 'circle-of-confusion-by': 'viewing' },
  },
  {
    id: 'five-times',
    question: 'Five times life size at f/2.8. Are rays still the whole story?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No. Rays alone give {depth-of-field} of depth. Diffraction gives {wave-depth}.',
    from: { magnification: 1, 'f-number': 2.8 },
    set: { magnification: 5, 'f-number': 2.8 },
  },
];
