import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    id: 'far-away',
    question: 'Marked f/8 and focused far away: how slim is the cone of light on the sensor?',
    options: ['As slim as f/8 says', 'Slimmer', 'Wider'],
    holds: 0,
    caption: 'At {magnification} the lens works at {effective-f-number}: far away the mark and the cone agree.',
    from: { magnification: 0.3 },
    set: { magnification: 0.02 },
  },
  {
    id: 'life-size',
    question: 'Focused to life size, nothing else touched. Is it still f/8?',
    options: ['Yes', 'No'],
    holds: 1,
    caption:
      'The same opening, farther from the sensor: it works at {effective-f-number}. Stops of light lost: {light-loss}.',
    from: { magnification: 0.02 },
    set: { magnification: 1 },
  },
  {
    id: 'half-behind',
    question: 'A lens whose opening looks half as wide from behind: does it lose more, or less?',
    options: ['More', 'Less'],
    holds: 0,
    caption:
      'More: it works at {effective-f-number}. The sensor sees the opening from behind; the pupil magnification is {pupil-magnification}.',
    set: { 'pupil-magnification': 0.5 },
  },
  {
    id: 'twice-behind',
    question: 'And one whose opening looks twice as wide from behind?',
    options: ['It loses more', 'It loses less'],
    holds: 1,
    caption: 'Marked alike, as large alike: the wider it looks from behind, the less is lost. Here: {light-loss}.',
    from: { 'pupil-magnification': 0.5 },
    set: { 'pupil-magnification': 2 },
  },
  {
    id: 'close-up-lens',
    question: 'The same size by a close-up lens: how much light does that cost?',
    options: ['As much', 'Less', 'More'],
    holds: 1,
    caption:
      'A close-up lens moves nothing; only the lens’s own {focus-magnification} counts. Stops lost: {light-loss}.',
    set: { 'reached-by': 'close-up-lens' },
  },
  {
    id: 'flat-line',
    question: 'Stops lost against size: which line stays flat?',
    options: ['That of rings', 'That of the close-up lens', 'None'],
    holds: 1,
    caption: 'The close-up lens’s. Where the lens itself moves out, the loss grows with size.',
    sheet: 'stops',
    from: { magnification: 0.1 },
    set: { magnification: 4 },
  },
  {
    id: 'hand-meter',
    question: 'A hand meter gives us a time for f/8. Do we set it as it is, at life size?',
    options: ['As it is', 'A longer one', 'A shorter one'],
    holds: 1,
    caption: '{exposure-time} becomes {corrected.exposure-time}. A meter behind the lens has counted the loss already.',
    from: { magnification: 0.02 },
    set: { magnification: 1 },
  },
  {
    id: 'dark-finder',
    question: 'Why is an optical finder so dark close up with the aperture closed?',
    options: ['The lens is closed', 'It is close', 'Both'],
    holds: 2,
    caption: 'Against wide open and far away it has lost, in stops: {finder-loss}. Each stop is half the light.',
    sheet: 'finder',
    from: { 'f-number': 2.8 },
    set: { 'f-number': 16 },
  },
];
