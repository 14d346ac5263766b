import { bayLeaf } from './bay-leaf.ts';
import { drawingPin } from './drawing-pin.ts';
import { dropOnWire } from './drop-on-wire.ts';
import { frostCrystal } from './frost-crystal.ts';
import { hoverflyHead } from './hoverfly-head.ts';
import { slantedScale } from './slanted-scale.ts';
import { stamp } from './stamp.ts';
import type { Subject } from './subject.ts';

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
