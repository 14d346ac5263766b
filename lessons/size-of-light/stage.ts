import type { StageStep } from '#site/stage/step.ts';

const [ahead, farRound] = [0, (80 * Math.PI) / 180];

export const stage: readonly StageStep[] = [
  {
    question: 'The flash comes from a metre to 300 mm. Does the soft rim of the shadow get wider or narrower?',
    options: ['Wider', 'Narrower'],
    holds: 0,
    caption: 'Wider: {penumbra}, for the light looks {source-angle} wide. It still passes for a hard edge.',
    from: { 'flash-distance': 1000 },
    set: {},
  },
  {
    question: 'A cap of diffusing paper goes over the head. Is the shadow softer now?',
    options: ['Yes', 'Hardly'],
    holds: 1,
    caption: 'Rim {penumbra}: hardly. The cap is about as wide as the head, and as far away.',
    set: { 'source-size': 66 },
  },
  {
    question: 'A paper 100 mm wide, 80 mm from the leaf, the flash behind it. Is the shadow soft now?',
    options: ['Yes', 'No'],
    holds: 0,
    caption: 'Yes: rim {penumbra}. The paper is the light now, and it looks {source-angle} wide.',
    set: { light: 'paper', 'flash-distance': 80 },
  },
  {
    question: 'A light 120 mm wide comes five times nearer. Is there 25 times the light?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No, 13 times: {illuminance}. So near, its outer parts are farther off, and shine aslant.',
    sheet: 'nearer',
    from: { 'source-size': 120, 'flash-distance': 300 },
    set: { 'source-size': 120, 'flash-distance': 60 },
  },
  {
    question: 'A small light from the left leaves a dark side. It goes to the front: is a dark side left?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'No: left over right is {lighting-ratio}. Both sides have the same light, and there is less shape.',
    sheet: 'ball',
    from: {},
    set: { 'light-angle': ahead },
  },
  {
    question: 'The small light from the left again. The bowl instead, 60 mm away: is the dark side as dark?',
    options: ['As dark', 'Far less dark'],
    holds: 1,
    caption: 'Far less dark: left over right is {lighting-ratio}. A wide light reaches round the ball.',
    sheet: 'ball',
    from: {},
    set: { light: 'bowl', 'flash-distance': 60 },
  },
  {
    question: 'Two small lights instead, one far round on each side. Is that as soft?',
    options: ['Yes', 'No'],
    holds: 1,
    caption: 'Left over right {lighting-ratio}, yet a dark ridge in the middle, and two lights in the eye.',
    sheet: 'ball',
    set: { lights: 'two', 'light-angle': farRound },
  },
  {
    question: 'A ring round the lens. What does a shiny eye show: a spot, two, or a ring?',
    options: ['A spot', 'Two', 'A ring'],
    holds: 2,
    caption: 'A ring in each eye. Left over right {lighting-ratio}: no dark side, and little shape.',
    sheet: 'eye',
    set: { lights: 'ring', light: 'bowl', 'flash-distance': 60 },
  },
  {
    question: 'The bowl straight ahead, 50 mm from the eye. On the sensor at 3:1, is it 0.2 mm wide, 2 or 20?',
    options: ['0.2 mm', '2 mm', '20 mm'],
    holds: 1,
    caption:
      '{catchlight.image-width}. On the eye {catchlight-width}; the short form says {catchlight-width-paraxial}.',
    sheet: 'ball',
    from: { 'light-angle': ahead },
    set: { light: 'bowl', 'flash-distance': 50, 'light-angle': ahead },
  },
];
