import type { NewPart } from '#site/kit/part.ts';

/** A camera of somebody's own kit, all of it known. */
export const ownCamera: NewPart = {
  kind: 'camera',
  name: 'Mine',
  'sensor-width': 36,
  'sensor-height': 24,
  'register-distance': 44,
};

/** A lens by what stands on it, moved as a whole. */
export const ownFifty: NewPart = {
  kind: 'lens',
  name: 'Fifty',
  'focal-length': 50,
  'max-aperture': 1.8,
  'focus-magnification': 0.15,
  focusing: 'whole',
  iris: 'camera',
};
