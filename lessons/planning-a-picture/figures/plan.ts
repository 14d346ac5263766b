import type { Decisions } from './decisions.ts';

/** One of the eight answers, as the card has it. */
export interface PlanRow {
  readonly title: string;
  readonly answer: string;
  /** Where it fails: which earlier answer to change. */
  readonly change?: string | undefined;
}

type Print = (
  name:
    | 'frame-fill'
    | 'magnification'
    | 'extension'
    | 'working-distance'
    | 'flight-distance'
    | 'set.f-number'
    | 'effective-f-number'
    | 'frame-count'
    | 'frame-step'
    | 'in-time.frame-count'
    | 'time-limit'
    | 'ambient.exposure-time'
    | 'needed.flash-power'
    | 'iso'
    | 'source-angle'
    | 'flash-distance',
) => string;

/** Whether a chain gives the size that is asked for. */
export type SizeGiven = 'asked' | 'less' | 'more';

/** In words that hold away from the page: on paper nobody is asked the questions. */
const smaller = 'take it smaller (question 1)';

/** The eight answers, each with the earlier one to change where it fails. */
export function planRows(
  decided: Decisions,
  print: Print,
  words: { readonly chain: string; readonly checks: string; readonly gives: SizeGiven },
): readonly PlanRow[] {
  const rows = allRows(decided, print, words);
  // What leans on a chain that shows nothing says so; the chain alone is to be changed.
  return decided.isNone
    ? rows.map((row, at) => ({ ...row, change: at === 1 ? 'another size or chain (question 1 or 2)' : undefined }))
    : rows;
}

function allRows(
  { hasRoom, frames, light, isNone }: Decisions,
  print: Print,
  words: { readonly chain: string; readonly checks: string; readonly gives: SizeGiven },
): readonly PlanRow[] {
  return [
    { title: '1 Size', answer: `${print('frame-fill')} of the width: ${print('magnification')}` },
    {
      title: '2 Chain',
      answer: words.chain,
      change: { asked: undefined, less: smaller, more: 'take it larger (question 1)' }[words.gives],
    },
    {
      title: '3 Room',
      answer: `${print('working-distance')}, wanted ${print('flight-distance')}`,
      change: hasRoom ? undefined : 'a longer lens (question 2)',
    },
    {
      title: '4 f-number',
      answer: `${print('set.f-number')}, works at\u00a0${print('effective-f-number')}`,
      change: frames === 'open-up' ? 'open up' : frames === 'close-further' ? 'close further' : undefined,
    },
    {
      title: '5 Frames',
      answer: isNone
        ? print('frame-count')
        : frames === 'one-frame' || frames === 'close-further'
          ? 'one'
          : `${print('frame-count')} frames, ${print('frame-step')} apart` +
            (frames === 'too-slow' ? `; only ${print('in-time.frame-count')} done in ${print('time-limit')}` : ''),
      change: frames === 'too-slow' ? smaller : undefined,
    },
    {
      title: '6 Light',
      answer: isNone
        ? print('ambient.exposure-time')
        : light === 'ambient'
          ? `daylight, ${print('ambient.exposure-time')}, ISO ${print('iso')}`
          : light === 'flash'
            ? `flash ${print('needed.flash-power')}, ISO ${print('iso')}`
            : `neither at ISO ${print('iso')}`,
      change: light === 'higher-iso' ? 'another ISO, or f-number (question 4)' : undefined,
    },
    { title: '7 Softness', answer: `light ${print('source-angle')} wide, ${print('flash-distance')} off` },
    { title: '8 Check', answer: words.checks },
  ];
}
