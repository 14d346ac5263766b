/** Things to photograph, the largest first; what they look like stands in `outlines.ts`. Widths of such things as one finds them, mm. */
export const subjects = {
  'dinner-plate': { label: 'dinner plate, 270 mm', 'subject-width': 270 },
  'bay-leaf': { label: 'bay leaf, 80 mm', 'subject-width': 80 },
  'postage-stamp': { label: 'postage stamp, 30 mm', 'subject-width': 30 },
  'drawing-pin': { label: 'drawing pin, 10 mm', 'subject-width': 10 },
  'jumping-spider': { label: 'jumping spider, 6 mm', 'subject-width': 6 },
  'salt-grain': { label: 'grain of salt, 0.4 mm', 'subject-width': 0.4 },
} as const;

/** The subject that comes nearest to a width, by ratio: a width of the reader's own is drawn as the thing most like it. */
export function subjectOfWidth(width: number): string {
  const farOff = ([, subject]: (typeof all)[number]) => Math.abs(Math.log(subject['subject-width'] / width));
  const all = Object.entries(subjects);
  return all.sort((one, other) => farOff(one) - farOff(other))[0]![0];
}
