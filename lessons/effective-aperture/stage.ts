import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'Marked f/8 and focused far away: how slim is the cone of light on the sensor?',
    caption: 'At {magnification} the lens works as {effective-f-number}: far away the mark and the cone agree.',
    from: { magnification: 0.3 },
    set: { magnification: 0.02 },
  },
  {
    question: 'Focused to life size, nothing else touched. Is it still f/8?',
    caption:
      'The same opening, farther from the sensor: it works as {effective-f-number}, and {light-loss} of light are lost.',
    from: { magnification: 0.02 },
    set: { magnification: 1 },
  },
  {
    question: 'A lens whose opening looks half as wide from behind: does it lose more, or less?',
    caption:
      'More: it works as {effective-f-number}. The sensor sees the opening from behind: {pupil-magnification} times as wide.',
    set: { 'pupil-magnification': 0.5 },
  },
  {
    question: 'And one whose opening looks twice as wide from behind?',
    caption: 'It loses less, {light-loss}. At one mark and one size: the wider it looks from behind, the less is lost.',
    from: { 'pupil-magnification': 0.5 },
    set: { 'pupil-magnification': 2 },
  },
  {
    question: 'The same size by a close-up lens: how much light does that cost?',
    caption:
      'A close-up lens moves nothing; only the lens’s own {focus-magnification} counts, which costs {light-loss}.',
    set: { 'reached-by': 'close-up-lens' },
  },
  {
    question: 'Stops lost against size, with the lens moved out or turned round. How does a close-up lens’s line run?',
    caption: 'Flat: it moves nothing. Where the lens itself moves out, the loss grows with size.',
    sheet: 'stops',
    withheld: ['close-up-power'],
    from: { magnification: 0.1 },
    set: { magnification: 4 },
  },
  {
    question: 'A hand meter gives us a time for f/8. Do we set it as it is, at life size?',
    caption:
      'No: {exposure-time} becomes {corrected.exposure-time}. A meter behind the lens has counted the loss already.',
    from: { magnification: 0.02 },
    set: { magnification: 1 },
  },
  {
    question: 'Why is an optical finder so dark close up with the aperture closed?',
    caption:
      'It shows what the lens lets through: {finder-loss} less than wide open and far away. Each is half the light.',
    sheet: 'finder',
    from: { 'f-number': 2.8 },
    set: { 'f-number': 16 },
  },
];
