import type { Subject } from './scene.ts';
import { bayLeaf } from './subjects/bay-leaf.ts';
import { drawingPin } from './subjects/drawing-pin.ts';
import { dropOnWire } from './subjects/drop-on-wire.ts';
import { frostCrystal } from './subjects/frost-crystal.ts';
import { hoverflyHead } from './subjects/hoverfly-head.ts';
import { slantedScale } from './subjects/slanted-scale.ts';
import { stamp } from './subjects/stamp.ts';

/** Everything that can be photographed here. */
export const subjects: readonly Subject[] = [
  slantedScale,
  drawingPin,
  bayLeaf,
  hoverflyHead,
  dropOnWire,
  frostCrystal,
  stamp,
];

/**
 * A subject by its slug.
 *
 * @throws RangeError that names the slugs there are
 */
export function subjectOf(slug: string): Subject {
  const found = subjects.find((subject) => subject.slug === slug);
  if (!found)
    throw new RangeError(`no subject is called “${slug}”; there are ${subjects.map((one) => one.slug).join(', ')}`);
  return found;
}
