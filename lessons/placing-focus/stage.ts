import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'A hoverfly’s head at 2:1, f/8, turned a little aside. Are both eyes still sharp?',
    caption: 'No: {subject-depth} from eye to eye along the axis, and only {depth-of-field} is sharp.',
    from: { 'subject-tilt': 0 },
    set: {},
  },
  {
    question: 'How far to stop down until both eyes are sharp: f/9, f/11 or f/16?',
    caption: 'To {needed.f-number}, if lens and diffraction allow. f/16 takes four times the light of f/8.',
    from: {},
    set: { 'f-number': 16 },
  },
  {
    question: 'Back to f/8, and the camera is turned until the eyes are square to it. What is sharp?',
    caption: 'Everything between them: {sharp.subject-width}, at {f-number}. Turning costs no light.',
    from: {},
    set: { 'subject-tilt': 0 },
  },
];
