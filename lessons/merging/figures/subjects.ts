import { photographed } from '#site/figures/picture/photographed.ts';

/**
 * Subjects worth a stack, mm: how wide and how deep they are, how high their nearest place lies above their deepest, and how far their boldest
 * edge stands above what lies behind it.
 */
export const subjects = {
  'drawing-pin': { ...photographed['drawing-pin'], 'subject-depth': 8.2, 'edge-height': 3 },
  'hoverfly-head': { ...photographed['hoverfly-head'], 'subject-depth': 2.6, 'edge-height': 1 },
  'bay-leaf': { ...photographed['bay-leaf'], 'subject-depth': 7, 'edge-height': 1.5 },
  'frost-crystal': { ...photographed['frost-crystal'], 'subject-depth': 2.4, 'edge-height': 1 },
  'drop-on-wire': { ...photographed['drop-on-wire'], 'subject-depth': 3, 'edge-height': 2 },
  'slanted-scale': { ...photographed['slanted-scale'], 'subject-depth': 16, 'edge-height': 2 },
} as const;

export type SubjectSlug = keyof typeof subjects;
