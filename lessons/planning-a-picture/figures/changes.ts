/** The one answer that the picture beside the plan has otherwise; the first is there at the start. */
export const changes = {
  frames: 'its first frame alone',
  'f-number': 'closed two stops further',
  size: 'half as large',
  light: 'a wide light close by',
} as const;

export type Change = keyof typeof changes;
