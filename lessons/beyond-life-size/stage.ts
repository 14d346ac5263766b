import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'A macro lens at life size. With 72 mm of rings, does it reach twice life size?',
    caption: 'Almost: {magnification}. Rings add their length over the focal length, here 72.5 mm, to what was there.',
    from: { extension: 0 },
    set: { extension: 72 },
  },
  {
    question: 'A ×2 converter instead of the rings: does the subject come nearer?',
    caption: 'No. Twice the size, {magnification}, from the same {working-distance}: a converter is behind the lens.',
    from: { extension: 0 },
    set: { route: 'converter' },
  },
  {
    question: 'At life size two stops of light are lost already. Does the converter cost more?',
    caption:
      'Two stops more: {light-loss} in all, {effective-f-number}. The same light is spread over four times the area.',
    from: { extension: 0 },
    set: { route: 'converter' },
    sheet: 'costs',
    withheld: ['effective-f-number'],
  },
  {
    question: 'A 36 mm ring before the converter gives 2.99×. Behind it: more, less, or the same?',
    caption: 'Less: {magnification}. Before the converter the ring’s part is enlarged with the rest.',
    from: { route: 'converter', 'front-ring.extension': 36 },
    set: { route: 'converter', 'rear-ring.extension': 36 },
  },
  {
    question: 'A 28 mm lens, turned round on a short tube: more than life size, or less?',
    caption: 'More: {magnification}, from {working-distance}. Turned round, the shorter lens is the stronger.',
    from: { lens: 'lens-28', extension: 4 },
    set: { route: 'reversed' },
  },
  {
    question: 'A 50 mm lens turned round on 100 mm gives 2×. On 200 mm: more or less, nearer or farther?',
    caption: 'More, from as far: {magnification}, the long focal length over the short. Room: {working-distance}.',
    from: { route: 'coupled', main: 'lens-100' },
    set: { route: 'coupled' },
  },
  {
    question: 'Both lenses set to f/8 now: as what does the pair work?',
    caption: 'As {effective-f-number}: the smaller opening counts. It is the front one, f/8 times {magnification}.',
    from: { route: 'coupled' },
    set: { route: 'coupled', 'reversed-lens.f-number': 8 },
  },
  {
    question: 'A 10× objective, made for a 200 mm lens. On a 100 mm lens: still 10×?',
    caption: 'Half: {magnification}. The engraving holds on the focal length it was made for.',
    from: { route: 'objective' },
    set: { route: 'objective', main: 'lens-100' },
  },
  {
    question: 'On 200 mm it gives 10×. How much of a spider’s head, 2.4 mm wide, is left?',
    caption: 'All of it, with a little around: {field-width}. Ten times the size is a tenth of the field.',
    from: {},
    set: { route: 'objective' },
    sheet: 'field',
  },
];
