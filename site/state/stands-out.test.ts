import { usualRearProtrusion } from '#core/rig/assumed/usual-rear-protrusion.ts';
import { expect, test } from 'vitest';
import { lenses, type LensSlug } from './crate.ts';
import { glassLenses, type GlassSlug } from './glass.ts';
import { claws, standsOut } from './stands-out.ts';

test.each(Object.keys(lenses) as LensSlug[])(
  'behind the flange of %s stands its traced glass, or the claws',
  (slug) => {
    const traced = slug in glassLenses ? glassLenses[slug as GlassSlug].rearProtrusion! : 0;
    expect(standsOut(slug)).toBe(Math.round(10 * Math.max(claws, traced)) / 10);
  },
);

test('claws alone are what is assumed behind the mount of a lens that nobody has measured', () => {
  expect(claws).toBe(usualRearProtrusion.usual);
});
