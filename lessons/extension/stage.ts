import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    id: 'no-ring',
    question: 'Without a ring, how large does this 50 mm lens show things: life size, half, or less?',
    options: ['Life size', 'Half of it', 'Less'],
    holds: 2,
    caption: 'Less: its own focusing gives {magnification}. The field is {field-width} wide.',
    set: { extension: 0 },
  },
  {
    id: 'one-ring',
    question: 'A 12 mm ring goes in. Does the sharp plane come nearer or go away?',
    options: ['Nearer', 'Away'],
    holds: 0,
    caption:
      'Nearer: {working-distance} from the rim. The ring adds its length over the focal length. In all: {magnification}.',
    set: { extension: 12 },
  },
  {
    id: 'three-rings',
    question: 'Will all three rings, 72 mm, give six times as much as the first?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No. The rings’ part is six times as large, but the lens’s own is added once: {magnification}.',
    set: { extension: 72 },
  },
  {
    id: 'light',
    question: 'So close, with the 24 mm ring: how much of its light is left, all, half, or less?',
    options: ['All of it', 'Half of it', 'Less than half'],
    holds: 2,
    caption: 'Less: {light-loss} are lost, by ring and focusing. Set to f/8, the lens works at {effective-f-number}.',
    from: { extension: 0 },
    set: { extension: 24 },
  },
  {
    id: 'longer-lens',
    question: 'All three rings on a 100 mm lens: more than on the 50 mm lens, or less?',
    options: ['More', 'Less'],
    holds: 1,
    caption: 'Less: {magnification}. The longer the focal length, the less each millimetre of ring adds.',
    from: { extension: 72 },
    set: { extension: 72, 'focal-length': 100, 'focus-magnification': 0.15 },
  },
  {
    id: 'inside',
    question: 'An 18 mm lens with only the 12 mm ring: can a subject be in focus?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No. On paper it gives {magnification}. But the sharp plane is {working-distance}.',
    from: { lens: 'lens-18', extension: 0 },
    set: { lens: 'lens-18', extension: 12 },
  },
];
