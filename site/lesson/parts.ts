/** The parts every lesson has, in their order, and what each is called on the page. `safety` stands where it applies, and before the hands. */
export const parts = {
  question: 'Make a guess first',
  figure: 'The figure',
  idea: 'How it works',
  formula: 'The formula',
  example: 'A worked example',
  safety: 'Safety',
  'hands-on': 'Hands on',
  check: 'Try some problems',
  limits: 'Where this stops being true',
  instructor: 'For the instructor',
} as const;

export type PartName = keyof typeof parts;

/** The parts that a lesson's text has, in its order. */
export function partsIn(text: string): readonly PartName[] {
  const named = [...text.matchAll(/<Part is="([^"]+)"/g)].map(([, name]) => name as PartName);
  return named.filter((name) => name in parts);
}
