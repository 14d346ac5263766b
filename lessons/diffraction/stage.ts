import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'A perfect lens makes this of one point of light at f/2.8. At f/11, is it still narrower than a pixel?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: a disc, {airy-diameter} wide, with rings around it. Each pixel is {pixel-pitch} wide.',
    from: { 'f-number': 2.8, magnification: 0.2 },
    set: { 'f-number': 11, magnification: 0.2 },
  },
  {
    question: 'We close the aperture by two more stops. Is the disc still as wide?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No, twice as wide: {airy-diameter} at {f-number}. The narrower the cone, the wider the disc.',
    set: { 'f-number': 22, magnification: 0.2 },
  },
  {
    question: 'Open to f/5.6, and the disc is small again. At four times life size, is it still?',
    options: ['Yes', 'No'],
    holds: 1,
    caption:
      'No: {airy-diameter}. Set to {f-number}, the lens works at {effective-f-number} here, and the cone is narrower.',
    from: { 'f-number': 5.6, magnification: 0.2 },
    set: { 'f-number': 5.6, magnification: 4 },
  },
  {
    question: 'The same in blue light: is the disc wider or narrower?',
    options: ['Wider', 'Narrower'],
    holds: 1,
    caption: 'Narrower: {airy-diameter} at {wavelength}. Shorter waves make a smaller disc.',
    set: { 'f-number': 5.6, magnification: 4, light: 'blue' },
  },
  {
    question: 'Life size, f/8. A pattern four times as fine: does it keep more than half of its contrast?',
    options: ['Yes', 'No'],
    holds: 0,
    caption: 'Yes: {contrast} at {spatial-frequency}. From {cutoff-frequency} on, only an even grey is left.',
    from: { 'spatial-frequency': 10 },
    set: { 'spatial-frequency': 40 },
    sheet: 'mtf',
  },
  {
    question: 'At which f-number does diffraction begin: at f/8, at f/11, at f/16, or at none?',
    options: ['At f/8', 'At f/11', 'At f/16', 'At none'],
    holds: 3,
    caption: 'At none: every stop costs some. At {f-number}, {contrast} is left. Drag the cutoff and look.',
    set: { 'f-number': 11 },
    sheet: 'mtf',
  },
  {
    question: 'f/16, from life size to four times life size. Is a pattern of 40 lp/mm still there?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: nothing finer than {cutoff-frequency} is left, whatever the pixels.',
    from: { 'f-number': 16 },
    set: { 'f-number': 16, magnification: 4 },
    sheet: 'mtf',
  },
];
