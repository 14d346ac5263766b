import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'A lens set to infinity, +2 on it. With +4 instead: is the subject nearer or farther?',
    options: ['Nearer', 'Farther'],
    holds: 0,
    caption: 'Nearer: {working-distance}. With the lens at infinity it is 1000 over the power, on any lens.',
    from: { 'close-up': 'two' },
    set: {},
  },
  {
    question: 'The same +4 on a lens of four times the focal length: larger, nearer, or both?',
    options: ['Larger', 'Nearer', 'Both'],
    holds: 0,
    caption: 'Larger: {magnification}. At infinity size goes with focal length, and distance does not.',
    set: { lens: 'lens-200' },
  },
  {
    question: '+2 and +4, one on the other: stronger than +4, weaker, or something between?',
    options: ['Stronger', 'Weaker', 'In between'],
    holds: 0,
    caption: 'Stronger. Powers add: {close-up-power}, and the subject is {working-distance} away.',
    from: {},
    set: { 'close-up': 'both' },
  },
  {
    question: '+4 gives 1:5, and focusing closer gives 1:6.7. Both together: their sum, or something else?',
    options: ['Their sum', 'Something else'],
    holds: 1,
    caption: 'Something else: {magnification}, from {working-distance}. The gap between the two counts as well.',
    from: {},
    set: { 'focus-magnification': 0.15 },
  },
  {
    question: 'One size at infinity: the ring leaves 28 mm more room than +4. With a 100 mm lens: as much more?',
    options: ['Less', 'As much', 'More'],
    holds: 2,
    caption:
      'More still: the ring leaves {ring.working-distance}, the close-up lens {working-distance}, as on any lens.',
    from: {},
    set: { lens: 'lens-100' },
  },
  {
    question: 'Focused closer, both give one size again. Which of them costs more light?',
    options: ['The ring', 'The close-up lens'],
    holds: 0,
    caption:
      'The ring: set to {f-number}, it works at {ring.effective-f-number}; the close-up lens at {effective-f-number}.',
    set: { lens: 'lens-100', 'focus-magnification': 0.1 },
  },
  {
    question: 'One glass on a 50 mm lens. On 200 mm, is the blur of blue four times as wide, or more?',
    options: ['Four times', 'More'],
    holds: 1,
    caption: 'More, sixteen times: {colour-blur}. It goes with the square of f, and c is still {circle-of-confusion}.',
    from: {},
    set: { lens: 'lens-200' },
    sheet: 'colour',
  },
  {
    question: 'A cemented pair blurs blue by half of c here, at f/8. Wide open, at f/4: still half of c?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No, all of it: {colour-blur}, and c is {circle-of-confusion}. The wider the opening, the wider the blur.',
    from: { lens: 'lens-200', glass: 'pair' },
    set: { lens: 'lens-200', glass: 'pair', 'f-number': 4 },
    sheet: 'colour',
  },
];
