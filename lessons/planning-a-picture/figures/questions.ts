/** The eight questions of a plan, in their order: what each is called, and what is set to answer it. */
export const questions = [
  {
    title: 'Size and depth',
    controls: [
      'subject-width',
      'subject-depth',
      'frame-fill',
      'sensor',
      'sensor-width',
      'circle-of-confusion-by',
      'circle-of-confusion',
    ],
  },
  {
    title: 'Chain',
    controls: [
      'lens',
      'focal-length',
      'focus-magnification',
      'front-principal-depth',
      'principal-separation',
      'pupil-magnification',
    ],
  },
  { title: 'Room', controls: ['flight-distance'] },
  { title: 'f-number', controls: ['wavelength'] },
  { title: 'Frames', controls: ['overlap', 'time-limit', 'exposure-time', 'settling-time', 'recycling-time'] },
  {
    title: 'Shutter or flash',
    controls: [
      'light',
      'luminance',
      'iso',
      'subject-speed',
      'holding',
      'shake-rate',
      'sideways-speed',
      'stabilisation',
      'guide-number',
    ],
  },
  { title: 'Softness', controls: ['source', 'source-size', 'flash-distance'] },
  { title: 'Check', controls: ['beside'] },
] as const;

/** One of the questions, from 1. */
export type Question = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

/** Questions by their number, as a choice that an address carries; the first is asked at the start. */
export const askedUpTo = Object.fromEntries(
  questions.map(({ title }, at) => [`${at + 1}`, `${at + 1} ${title}`]),
) as Readonly<Record<`${Question}`, string>>;

/** Which question settles each thing in the drawing of a plan. */
export const settledBy = {
  /** The picture with the subject in it, and how deep that is. */
  size: 1,
  chain: 2,
  room: 3,
  /** The cone of light, and what one frame holds. */
  frame: 4,
  stack: 5,
  light: 6,
  softness: 7,
} as const satisfies Readonly<Record<string, Question>>;

export type Thing = keyof typeof settledBy;

/** Whether a thing is undecided while *question* is the last that is answered. */
export const isOpen = (thing: Thing, question: Question): boolean => settledBy[thing] > question;
