/** The parts every lesson has, in their order, and what each is called on the page. `safety` stands where it applies. */
export const parts = {
  question: 'Before anything moves',
  figure: 'The figure',
  idea: 'The idea',
  formula: 'The formula',
  example: 'A worked example',
  'hands-on': 'Hands on',
  check: 'Check yourself',
  limits: 'Where the model ends',
  instructor: 'For the instructor',
  safety: 'Safety',
} as const;

export type PartName = keyof typeof parts;

/** The parts that a lesson's text has, in its order. */
export function partsIn(text: string): readonly PartName[] {
  const named = [...text.matchAll(/<Part is="([^"]+)"/g)].map(([, name]) => name as PartName);
  return named.filter((name) => name in parts);
}
