import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
<<<<<<< HEAD
    question: 'Soapy water has no colour. Why has a film of it?',
    options: ['The soap is coloured', 'Two beams meet in it', 'It mirrors the sky'],
    holds: 1,
    caption:
      'At {film-thickness} the two beams are in step for {bright.wavelength} and cancel for violet. That is a colour.',
=======
    question: 'Soapy water has no colour. Has its film some by the soap, or by how thin it is?',
    caption: 'How thin: at {film-thickness} the two beams are in step for {bright.wavelength} and cancel for violet.',
>>>>>>> a13
    from: { 'film-thickness': 0.0001 },
    set: { 'film-thickness': 0.00034 },
  },
  {
    question: 'As thin as it gets: bright, coloured or black?',
    options: ['Bright', 'Coloured', 'Black'],
    holds: 2,
    caption: 'Black: {film-reflectance} comes back. It is film, not a hole: one of the two beams is turned over.',
    set: { 'film-thickness': 0.000005 },
  },
  {
<<<<<<< HEAD
    question: 'How thick is the film where green is first brightest?',
    options: ['About 0.1 µm', 'About 1 µm', 'About 0.1 mm'],
    holds: 0,
=======
    question: 'How thick is the film where green is first brightest: about 110, 220 or 450 nm?',
>>>>>>> a13
    caption: 'At {bright.film-thickness}. All other colours are bright there as well, so it looks white.',
    sheet: 'film',
    withheld: ['bright.film-thickness'],
    from: { 'film-thickness': 0.000005, 'interference-order': 1 },
    set: { 'film-thickness': 0.00011, 'interference-order': 1 },
  },
  {
    question: 'It drains. Which way do the bands go?',
    options: ['Up', 'Down'],
    holds: 1,
    caption: 'Down: each colour stays with its thickness, and that moves down. The black grows from the top.',
    sheet: 'film',
    from: { 'film-thickness': 0.00034, 'interference-order': 1 },
    set: { 'film-thickness': 0.00034, 'interference-order': 1, 'bottom.film-thickness': 0.0004 },
  },
  {
<<<<<<< HEAD
    question: 'We look from farther aside. What happens to the colour?',
    options: ['It stays', 'It turns red', 'It turns blue'],
    holds: 2,
    caption: 'It turns blue: brightest is {bright.wavelength}. Aslant the detour is shorter.',
=======
    question: 'We look from farther aside. Does the colour go to red, to blue, or stay?',
    caption: 'To blue: brightest is {bright.wavelength}. Aslant the detour is shorter.',
>>>>>>> a13
    sheet: 'two-ways',
    from: { 'incidence-angle': 0 },
    set: { 'incidence-angle': 1.0471975512 },
  },
  {
<<<<<<< HEAD
    question: 'A bare flash, 300 mm away, lights one spot. How wide a light fills the picture from 100 mm?',
    options: ['About 10 mm', 'About 50 mm', 'About 100 mm'],
    holds: 2,
    caption: 'At least {needed.source-size}, for {field-width} of film. It has colour only where it mirrors the light.',
=======
    question: 'A bare flash, 60 mm wide, lights one spot. From 100 mm, will it light all, or only a wider light?',
    caption: 'A wider one, such as this bowl: {needed.source-size} at least, for {field-width} of film.',
>>>>>>> a13
    sheet: 'mirror',
    from: { 'source-size': 60, 'flash-distance': 300 },
    set: { 'source-size': 160, 'flash-distance': 100 },
  },
  {
    question: 'Seen aslant, is the film sharp from side to side?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: {subject-depth} deep across the picture, {depth-of-field} sharp. Straight on it is shallowest.',
    sheet: 'mirror',
    from: { 'incidence-angle': 0 },
    set: { 'incidence-angle': 0.5235987756 },
  },
];
