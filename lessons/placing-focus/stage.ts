import type { StageStep } from '#site/stage/step.ts';

export const stage: readonly StageStep[] = [
  {
    question: 'A hoverfly’s head at 2:1, f/8, turned a little aside. Are both eyes still sharp?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: {subject-depth} from eye to eye along the axis, and only {depth-of-field} is sharp.',
    from: { 'subject-tilt': 0 },
    set: {},
    sheet: 'picture',
  },
  {
    question: 'How far to stop down until both eyes are sharp: f/9, f/11 or f/16?',
    options: ['f/9', 'f/11', 'f/16'],
    holds: 2,
    caption: 'To {needed.f-number}, if lens and diffraction allow. f/16 takes four times the light of f/8.',
    from: {},
    set: { 'f-number': 16 },
  },
  {
<<<<<<< HEAD
    question: 'Back to f/8, and the camera is turned until the eyes are square to it. What is sharp?',
    options: ['One eye', 'Both eyes alone', 'All between them, too'],
    holds: 2,
    caption: 'Everything between them: {sharp.subject-width}, at {f-number}. Turning costs no light.',
=======
    question: 'Back to f/8, and the camera is turned until the eyes are square to it. Are both sharp now?',
    caption: 'Yes, and all between them: {sharp.subject-width}, at {f-number}. Turning costs no light.',
>>>>>>> a13
    from: {},
    set: { 'subject-tilt': 0 },
  },
  {
<<<<<<< HEAD
    question: 'A tripod is not at hand. Standing, of forty frames at f/8, how many have the eye sharp?',
    options: ['About four', 'About fifteen', 'Nearly all'],
    holds: 0,
=======
    question: 'No tripod at hand. Of forty frames at f/8, have thirty the eye sharp, fifteen or four?',
>>>>>>> a13
    caption: 'About four: {keeper-share}. For one in focus, nineteen times in twenty: {keeper-frames} frames.',
    from: { sway: 0.1 },
    set: {},
    sheet: 'rocking',
  },
  {
<<<<<<< HEAD
    question: 'Closed by two stops, to f/16. How many frames does one in focus take now?',
    options: ['As many', 'Half as many', 'A quarter'],
    holds: 1,
=======
    question: 'Closed by two stops, to f/16: does one in focus take a quarter of the frames, or half?',
>>>>>>> a13
    caption: 'Half as many: {keeper-frames}. The sharp part is {depth-of-field}, and the light a quarter.',
    withheld: ['f-number'],
    from: {},
    set: { 'f-number': 16 },
    sheet: 'rocking',
  },
  {
    question: 'Back to f/8, but with your elbows on your knees. Is that worth more than two stops?',
    options: ['Yes', 'No'],
    holds: 0,
    caption: 'Yes: {keeper-frames} frames. You sway by {sway}. Steadiness costs no light.',
    from: {},
    set: { holding: 'elbows' },
    sheet: 'rocking',
  },
  {
    question: 'Elbows on knees, but always 0.4 mm too near. Do more frames make up for that?',
    options: ['At once', 'Slowly', 'Never'],
    holds: 1,
    caption: 'Slowly: {keeper-share} hit, so {keeper-frames} frames. It is quicker to mend the aim.',
    from: { holding: 'elbows' },
    set: { holding: 'elbows', 'focus-offset': 0.4 },
    sheet: 'rocking',
  },
  {
    question: 'Focused on the middle of the head, then turned by 5° to frame. Is the middle still sharp?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: the plane is now at {turned.focus-offset}, and sharpness ends {near-limit} before it.',
    from: {},
    set: { 'focus-offset': -0.463 },
  },
];
