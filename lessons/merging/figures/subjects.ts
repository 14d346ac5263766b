/**
 * Subjects worth a stack, mm: how wide and how deep they are, how high their nearest place lies above their deepest, and how far their boldest
 * edge stands above what lies behind it.
 */
export const subjects = {
  'drawing-pin': { label: 'drawing pin', width: 12, top: 8.2, 'subject-depth': 8.2, 'edge-height': 3 },
  'hoverfly-head': { label: 'hoverfly’s head', width: 3.2, top: 2.6, 'subject-depth': 2.6, 'edge-height': 1 },
  'bay-leaf': { label: 'bay leaf with hairs', width: 36, top: 7, 'subject-depth': 7, 'edge-height': 1.5 },
  'frost-crystal': { label: 'frost crystal, tilted', width: 4.6, top: 2.4, 'subject-depth': 2.4, 'edge-height': 1 },
  'drop-on-wire': { label: 'drop on a wire', width: 7, top: 12, 'subject-depth': 3, 'edge-height': 2 },
  'slanted-scale': { label: 'slanted scale', width: 24, top: 16, 'subject-depth': 16, 'edge-height': 2 },
} as const;

export type SubjectSlug = keyof typeof subjects;
