import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'Soapy water has no colour. Why has a film of it?',
    caption: '{film-thickness} of film sends back {film-reflectance} of this wavelength, and less or more of others.',
    from: { 'film-thickness': 0.0001 },
    set: { 'film-thickness': 0.00034 },
  },
  {
    question: 'As thin as it gets: bright, coloured or black?',
    caption: '{film-reflectance} comes back. Black is the thinnest film, not a hole: one beam is turned over.',
    set: { 'film-thickness': 0.000005 },
  },
  {
    question: 'How thick is the film where green is first brightest?',
    caption: 'Order {interference-order}: at {bright.film-thickness}. The next bright bands follow in even steps.',
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
    question: 'We look from farther aside. What happens to the colour?',
    caption: 'Inside, light runs at {refraction-angle}; brightest is {bright.wavelength}. Flatter is bluer.',
    sheet: 'two-ways',
    from: { 'incidence-angle': 0 },
    set: { 'incidence-angle': 1.0471975512 },
  },
  {
    question: 'A bare flash lights the film. How large a light does it take?',
    caption:
      'It takes {needed.source-size} to fill {field-width} of film: a film has colour where it mirrors the light.',
    sheet: 'mirror',
    from: { 'source-size': 60, 'flash-distance': 300 },
    set: { 'source-size': 160, 'flash-distance': 100 },
  },
  {
    question: 'Seen aslant, is the film sharp from side to side?',
    caption: '{subject-depth} deep across the picture, {depth-of-field} sharp. Nearly straight on it is shallowest.',
    sheet: 'mirror',
    from: { 'incidence-angle': 0 },
    set: { 'incidence-angle': 0.5235987756 },
  },
];
