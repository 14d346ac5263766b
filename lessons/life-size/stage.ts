import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'The stamp is 30 mm wide. How wide is it on the sensor?',
    caption: 'Here {image-width}: at {magnification} the lens draws everything half as large as it is.',
    set: { magnification: 0.5 },
  },
  {
    question: 'How much ruler fills the picture at life size?',
    caption: '{field-width}, exactly as much as the sensor is wide. Its millimetres lie over the sensor’s own.',
    set: { magnification: 1 },
  },
  {
    question: 'Same lens, same setting, smaller sensor: is the stamp larger on it?',
    caption: 'No. Its image is {image-width}: this one sees only {field-width} of the stamp.',
    set: { magnification: 1, sensor: 'body-23' },
  },
  {
    question: 'Then why does the print from the smaller body show it larger?',
    caption: 'Because that print enlarges more. A crop from the larger body shows the same, with fewer pixels.',
    set: { magnification: 0.5 },
    sheet: 'print',
  },
  {
    question: 'The zoom says ‘macro’. How much ruler will it show?',
    caption: 'Often no less than {field-width}, which is a quarter of life size (common practice).',
    set: { magnification: 0.25 },
  },
  {
    question: 'And past life size: what does one millimetre get?',
    caption: '{pixels-per-millimetre} at {magnification}. The whole picture is {field-width} wide.',
    set: { magnification: 4, subject: 'jumping-spider' },
  },
];
