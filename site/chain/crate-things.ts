import type { Lens } from '#core/rig/lens.ts';
import {
  crateBellows,
  crateCamera,
  crateConverter,
  crateMountRing,
  crateObjective,
  crateRing,
} from '#site/kit/crate-parts.ts';
import type { NewPart } from '#site/kit/part.ts';
import { bodies, lenses, nameOf, rings, type LensSlug } from '#site/state/crate.ts';
import { closeUpPowers, parts } from '#site/state/crate-parts.ts';
import { crateLens, marks } from '#site/state/lens-marks.ts';
import { standsOut } from '#site/state/stands-out.ts';
import type { ChainKind, Thing } from './thing.ts';

const made = new Map<string, Thing>();

function add(slug: string, part: NewPart & { readonly kind: ChainKind }, lens?: Lens) {
  const { kind, name } = part;
  const known = lens && { lenses: { usual: lens, extremes: [lens], assumed: [], measured: [] } };
  made.set(slug, { slug, kind, name, part, isOwn: false, ...known });
}

for (const [slug, body] of Object.entries(bodies)) {
  add(slug, crateCamera(body));
}
for (const slug of Object.keys(lenses) as LensSlug[]) {
  const lens = marks[slug];
  const part = {
    kind: 'lens',
    name: nameOf(slug),
    'focal-length': lens['focal-length'],
    'max-aperture': lens['max-aperture'],
    'smallest-aperture': lens.smallestAperture,
    'rim-diameter': lens['rim-diameter'],
    iris: lens.iris,
  } as const;
  add(slug, part, { ...crateLens(slug), rearProtrusion: standsOut(slug) });
}
for (const extension of rings) {
  add(`ring-${extension}`, crateRing(extension));
}
add('bellows', crateBellows());
for (const power of closeUpPowers) {
  add(`close-up-${power}`, { kind: 'close-up-lens', name: `+${power} close-up lens`, 'close-up-power': power });
}
const pair = parts['close-up-pair-4'];
add('close-up-pair-4', { kind: 'close-up-lens', name: pair.label, 'close-up-power': pair['close-up-power'] });
for (const slug of ['converter-1.4', 'converter-2'] as const) {
  add(slug, crateConverter(slug));
}
for (const slug of ['reversing-ring', 'coupling-ring'] as const) {
  add(slug, crateMountRing(slug));
}
for (const slug of ['objective-4', 'objective-10'] as const) {
  add(slug, crateObjective(slug));
}

/** Everything of the crate that can stand in a chain, by slug. */
export const crateThings: ReadonlyMap<string, Thing> = made;

/** The thing of the crate by this slug. Throws where there is none: slugs of readers are looked up in {@link crateThings}. */
export function crateThing(slug: string): Thing {
  const thing = made.get(slug);
  if (!thing) throw new RangeError(`the crate has no ${slug}`);
  return thing;
}
