import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'Without a ring, how close does this 50 mm lens come?',
    caption: 'Its own focusing gives {magnification}: the sensor sees {field-width} of the subject.',
    set: { extension: 0 },
  },
  {
    question: 'A 12 mm ring goes in. Where is the sharp plane now?',
    caption: 'Ring over focal length is added: {magnification}. Working distance: {working-distance}.',
    set: { extension: 12 },
  },
  {
    question: 'Will all three rings give six times as much as the first?',
    caption: 'The rings’ part is six times as large, the lens’s own part is added once: {magnification}.',
    set: { extension: 72 },
  },
  {
    question: 'What did the light pay?',
    caption: 'Marked f/8 works as {effective-f-number}: {light-loss} lost. A meter behind the lens already knows.',
    set: { extension: 72 },
  },
  {
    question: 'Same rings, but a lens twice as long. More or less?',
    caption: 'Less: {magnification}. The longer the lens, the less each millimetre of ring buys.',
    set: { extension: 72, 'focal-length': 100, 'focus-magnification': 0.15 },
  },
  {
    question: 'And a wide lens with only the 12 mm ring?',
    caption: 'Strong on paper: {magnification}. But the sharp plane is {working-distance}.',
    set: { lens: 'lens-18', extension: 12 },
  },
];
