import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'What does a perfect lens make of one point of light?',
    caption: 'A disc, {airy-diameter} wide, with rings around it. Each pixel is {pixel-pitch}.',
    set: { 'f-number': 5.6, magnification: 0.2 },
  },
  {
    question: 'We close the aperture by four stops. What becomes of the disc?',
    caption: 'The narrower the cone, the wider the disc: {airy-diameter} at {f-number}.',
    set: { 'f-number': 22, magnification: 0.2 },
  },
  {
    question: 'Back to f/5.6, but at four times life size. Is it as small as before?',
    caption: 'No. Marked {f-number} works as {effective-f-number} here, and the disc is {airy-diameter} wide.',
    set: { 'f-number': 5.6, magnification: 4 },
  },
  {
    question: 'The same in blue light. Wider or narrower?',
    caption: 'Shorter waves make a smaller disc: {airy-diameter} at {wavelength}.',
    set: { 'f-number': 5.6, magnification: 4, light: 'blue' },
  },
  {
    question: 'Life size, f/8, a fine pattern. How much of its contrast is left?',
    caption: 'At {spatial-frequency}: {contrast}. The cutoff is at {cutoff-frequency}.',
    sheet: 'mtf',
  },
  {
    question: 'At which f-number does diffraction begin?',
    caption: 'At none: every stop costs some. Drag the cutoff and look for the place. Contrast here: {contrast}.',
    set: { 'f-number': 4 },
    sheet: 'mtf',
  },
  {
    question: 'Four times life size at f/16. Which patterns are left?',
    caption: 'None beyond {cutoff-frequency}. At {spatial-frequency}: {contrast}, whatever the pixels.',
    set: { 'f-number': 16, magnification: 4 },
    sheet: 'mtf',
  },
];
