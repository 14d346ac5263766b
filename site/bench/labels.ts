import type { AnsweredName, Group } from './answers.ts';
import type { ConditionName } from './conditions.ts';

export const groupTitles: Readonly<Record<Group, string>> = {
  size: 'Size',
  distance: 'Distance',
  light: 'Light',
  depth: 'Depth',
  diffraction: 'Diffraction',
  movement: 'Movement',
};

/** Names that say more than the vocabulary's. */
export const labels: Readonly<Partial<Record<AnsweredName | ConditionName, string>>> = {
  'focal-length': 'focal length of the whole chain',
  'principal-separation': 'principal plane separation of the whole chain',
  'best-f-number': 'best f-number for the subject’s depth',
  'f-number': 'f-number marked on what limits the light',
  'exposure-time': 'slowest shutter that hides the movement',
  'frame-count': 'frames for the subject’s depth',
  'frame-step': 'step between frames',
};
