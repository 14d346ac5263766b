import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'Soapy water has no colour. Has its film some by the soap, or by how thin it is?',
    caption: 'How thin: at {film-thickness} the two beams are in step for {bright.wavelength} and cancel for violet.',
    from: { 'film-thickness': 0.0001 },
    set: { 'film-thickness': 0.00034 },
  },
  {
    question: 'As thin as it gets: bright, coloured or black?',
    caption: 'Black: {film-reflectance} comes back. It is film, not a hole: one of the two beams is turned over.',
    set: { 'film-thickness': 0.000005 },
  },
  {
    question: 'How thick is the film where green is first brightest: about 110, 220 or 450 nm?',
    caption: 'At {bright.film-thickness}. All other colours are bright there as well, so it looks white.',
    sheet: 'film',
    withheld: ['bright.film-thickness'],
    from: { 'film-thickness': 0.000005, 'interference-order': 1 },
    set: { 'film-thickness': 0.00011, 'interference-order': 1 },
  },
  {
    question: 'It drains. Which way do the bands go?',
    caption: 'Down: each colour stays with its thickness, and that moves down. The black grows from the top.',
    sheet: 'film',
    from: { 'film-thickness': 0.00034, 'interference-order': 1 },
    set: { 'film-thickness': 0.00034, 'interference-order': 1, 'bottom.film-thickness': 0.0004 },
  },
  {
    question: 'We look from farther aside. Does the colour go to red, to blue, or stay?',
    caption: 'To blue: brightest is {bright.wavelength}. Aslant the detour is shorter.',
    sheet: 'two-ways',
    from: { 'incidence-angle': 0 },
    set: { 'incidence-angle': 1.0471975512 },
  },
  {
    question: 'A bare flash, 60 mm wide, lights one spot. From 100 mm, will it light all, or only a wider light?',
    caption: 'A wider one, such as this bowl: {needed.source-size} at least, for {field-width} of film.',
    sheet: 'mirror',
    from: { 'source-size': 60, 'flash-distance': 300 },
    set: { 'source-size': 160, 'flash-distance': 100 },
  },
  {
    question: 'Seen aslant, is the film sharp from side to side?',
    caption: 'No: {subject-depth} deep across the picture, {depth-of-field} sharp. Straight on it is shallowest.',
    sheet: 'mirror',
    from: { 'incidence-angle': 0 },
    set: { 'incidence-angle': 0.5235987756 },
  },
];
