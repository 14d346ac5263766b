import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'The stamp is 30 mm wide. At half life size, is its image 15, 30 or 60 mm wide?',
    options: ['15 mm', '30 mm', '60 mm'],
    holds: 0,
    caption: '{image-width}: at {magnification} everything is half as large on the sensor as in reality.',
    from: { magnification: 0.1 },
    set: { magnification: 0.5 },
  },
  {
    question: 'How much ruler fills the picture at life size: 18, 36 or 72 mm?',
    options: ['18 mm', '36 mm', '72 mm'],
    holds: 1,
    caption: '{field-width}, exactly the width of the sensor. Each millimetre has an image one millimetre long.',
    set: { magnification: 1 },
  },
  {
    question: 'Same lens, same setting, smaller sensor: is the stamp’s image larger?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No. This sensor only catches {field-width} of it. The image: {image-width}.',
    set: { magnification: 1, sensor: 'body-23' },
  },
  {
    question: 'The smaller sensor’s print shows the stamp larger. Has the lens magnified more?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: the print is enlarged more. A crop from the larger camera shows the same, here with fewer pixels.',
    from: { magnification: 0.5 },
    set: { magnification: 0.5, sensor: 'body-23' },
    sheet: 'print',
  },
  {
    question: 'A zoom says “macro”. Will it show 36, 72 or 144 mm of ruler?',
    options: ['36 mm', '72 mm', '144 mm'],
    holds: 2,
    caption: 'Often {field-width}: a quarter of life size. Some reach a third, few a half (common practice).',
    set: { magnification: 0.25 },
  },
  {
    question: 'At life size one millimetre gets 167 pixels. And at four times life size?',
    options: ['As many', 'Twice as many', 'Four times as many'],
    holds: 2,
    caption: 'Four times as many: {pixels-per-millimetre}. The whole field is only {field-width} wide.',
    from: { magnification: 1, subject: 'jumping-spider' },
    set: { magnification: 4, subject: 'jumping-spider' },
    sheet: 'pixels',
  },
];
