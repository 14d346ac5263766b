/** What a search says of a chain: that it does what is wanted, or the first thing that stands against it. */
export const verdicts = [
  'suited',
  'over budget',
  'no picture',
  'too large',
  'too small',
  'inside',
  'too near',
  'too shallow',
  'too soft',
  'too dark',
] as const;

export type Verdict = (typeof verdicts)[number];

const words: Readonly<Record<Verdict, string>> = {
  suited: 'It does what is wanted.',
  'over budget': 'Its parts cost more than there is.',
  'no picture':
    'It focuses past infinity, or sees the subject upright through a picture inside: nothing near is sharp.',
  'too large': 'Even focused as far away as it goes it shows less than the subject’s width.',
  'too small': 'Even at its closest the subject fills too little of the frame.',
  inside: 'The sharp plane lies inside the lens, or inside a deep rim, however small the subject is taken.',
  'too near': 'It has to stand nearer to the subject than that tolerates, however small it is taken.',
  'too shallow':
    'It cannot be stopped down far enough to have the subject’s depth in focus, however small that is taken.',
  'too soft':
    'Stopped down for the depth it blurs every point too much by diffraction, however small the subject is taken: that wants a stack.',
  'too dark':
    'Stopped down for the depth, it needs a longer exposure than the subject’s movement allows, however small that is taken.',
};

/** One sentence for a verdict. */
export function verdictWords(verdict: Verdict): string {
  return words[verdict];
}
