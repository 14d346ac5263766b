import type { Decisions } from './decisions.ts';
import type { Question } from './questions.ts';

/** One of the eight answers, as the card has it. */
export interface PlanRow {
  readonly title: string;
  readonly answer: string;
  /** Where it is the first that fails: which answer to change. */
  readonly change?: string | undefined;
  /** Nothing is answered yet. */
  readonly isOpen?: true;
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

/** Whether a chain gives the size that is asked for; *beyond* where the least that it gives is more than the picture holds. */
export type SizeGiven = 'asked' | 'less' | 'more' | 'beyond';

export interface PlanWords {
  readonly chain: string;
  readonly checks: string;
  readonly gives: SizeGiven;
  /** Nothing is put together: it cannot be, or is on its way. */
  readonly noChain?: 'impossible' | 'coming';
  /** *S*. */
  readonly iso: number;
}

/** In words that hold away from the page: on paper nobody is asked the questions. */
const smaller = 'take it smaller (question 1)';
const anotherChain = 'another chain (question 2)';

/** The eight answers up to *question*; the first that fails with the one to change, for those after it may hold once that is mended. */
export function planRows(
  decided: Decisions,
  print: Print,
  words: PlanWords,
  question: Question = 8,
): readonly PlanRow[] {
  const without = words.noChain ? 'not without a chain' : 'nothing is sharp';
  const rows = allRows(decided, print, words).map((row, at): PlanRow => {
    if (at >= question) return { title: row.title, answer: 'not yet answered', isOpen: true };
    // What leans on a chain that shows nothing has no answer.
    if (decided.isNone && at > 1 && at < 7) return { title: row.title, answer: without, isOpen: true };
    return row;
  });
  const first = rows.findIndex(({ change }) => change !== undefined);
  return rows.map((row, at) => (at === first ? row : { ...row, change: undefined }));
}

function chainChange({ isNone }: Decisions, { gives, noChain }: PlanWords): string | undefined {
  if (noChain) return noChain === 'impossible' ? anotherChain : undefined;
  if (isNone) return 'another size or chain (question 1 or 2)';
  return { asked: undefined, less: smaller, more: 'take it larger (question 1)', beyond: anotherChain }[gives];
}

/** What a flash that gives too much wants. */
const lessLight = (iso: number) => `${iso > 100 ? 'ISO 100, ' : ''}farther off, or daylight on a tripod`;

function lightAnswer({ light, isOverexposed }: Decisions, print: Print, { iso }: PlanWords) {
  const at = `ISO ${print('iso')}`;
  switch (light) {
    case 'ambient':
      return { answer: `daylight, ${print('ambient.exposure-time')}, ${at}` };
    case 'flash':
      return {
        answer: `flash ${print('needed.flash-power')}, ${at}`,
        change: isOverexposed ? lessLight(iso) : undefined,
      };
    case 'higher-iso':
      return { answer: `neither at ${at}`, change: 'another ISO, or f-number (question 4)' };
  }
}

function softnessAnswer({ lightStands }: Decisions, print: Print) {
  const answer = `light ${print('source-angle')} wide, ${print('flash-distance')} off`;
  switch (lightStands) {
    case 'too-near':
      return {
        answer: `${answer}: nearer than ${print('flight-distance')}`,
        change: 'farther off, or more room (question 3 or 7)',
      };
    case 'in-the-way':
      return { answer: `${answer}: across the lens’s view`, change: 'a smaller light, or farther off (question 7)' };
    default:
      return { answer };
  }
}

function allRows(decided: Decisions, print: Print, words: PlanWords): readonly PlanRow[] {
  const { hasRoom, frames } = decided;
  return [
    { title: '1 Size', answer: `${print('frame-fill')} of the width: ${print('magnification')}` },
    { title: '2 Chain', answer: words.chain, change: chainChange(decided, words) },
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
      answer:
        frames === 'one-frame' || frames === 'close-further'
          ? 'one'
          : `${print('frame-count')} frames, ${print('frame-step')} apart` +
            (frames === 'too-slow' ? `; only ${print('in-time.frame-count')} done in ${print('time-limit')}` : ''),
      change: frames === 'too-slow' ? smaller : undefined,
    },
    { title: '6 Light', ...lightAnswer(decided, print, words) },
    { title: '7 Softness', ...softnessAnswer(decided, print) },
    { title: '8 Check', answer: words.checks },
  ];
}
