/** Subjects worth a stack: how deep they are, and how far their boldest edge stands above what lies behind it, mm. */
export const subjects = {
  'drawing-pin': { label: 'drawing pin', 'subject-depth': 4, 'edge-height': 3 },
  'hoverfly-head': { label: 'hoverfly’s head', 'subject-depth': 2, 'edge-height': 1 },
  'bay-leaf': { label: 'bay leaf with hairs', 'subject-depth': 5, 'edge-height': 1.5 },
  'frost-crystal': { label: 'frost crystal, tilted', 'subject-depth': 2, 'edge-height': 1 },
  'drop-on-wire': { label: 'drop on a wire', 'subject-depth': 3, 'edge-height': 2 },
  'slanted-scale': { label: 'slanted scale', 'subject-depth': 6, 'edge-height': 2 },
} as const;
