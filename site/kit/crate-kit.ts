import { bodies, lenses, nameOf, rings, type LensSlug } from '#site/state/crate.ts';
import { closeUpPowers, parts } from '#site/state/crate-parts.ts';
import { crateLens, crateRegister, marks } from '#site/state/lens-marks.ts';
import { standsOut } from '#site/state/stands-out.ts';
import { stateAt } from '#core/rig/lens-in-use.ts';
import { kitOf } from './change.ts';
import { crateBellows, crateCamera, crateConverter, crateMountRing, crateObjective, crateRing } from './crate-parts.ts';
import type { Kit, NewPart } from './part.ts';

const slugs = Object.keys(lenses) as LensSlug[];

/** The crate of the Saltmarsh Camera Club as a kit of the reader's own kind: everything in it is known, nothing assumed. */
export function crateKit(): Kit {
  return kitOf(...all());
}

function all(): readonly NewPart[] {
  const { 'close-up-pair-4': pair } = parts;
  return [
    ...Object.values(bodies).map(crateCamera),
    ...slugs.map(lensPart),
    ...rings.map(crateRing),
    crateBellows(),
    ...closeUpPowers.map((power): NewPart => ({
      kind: 'close-up-lens',
      name: `+${power} close-up lens`,
      'close-up-power': power,
      glass: 'single',
    })),
    { kind: 'close-up-lens', name: pair.label, 'close-up-power': pair['close-up-power'], glass: 'cemented' },
    ...(['converter-1.4', 'converter-2'] as const).map(crateConverter),
    ...(['reversing-ring', 'coupling-ring'] as const).map(crateMountRing),
    ...(['objective-4', 'objective-10'] as const).map(crateObjective),
  ];
}

function lensPart(slug: LensSlug): NewPart {
  const lens = marks[slug];
  const whole = lens['focal-length'] + lens['principal-separation'] + lens['front-principal-depth'];
  const near = stateAt(crateLens(slug), lens.closest['focus-magnification']);
  const nearRim =
    near.focalLength * (1 + near.focusMagnification) + near.principalSeparation + near.frontPrincipalDepth;
  const round = (length: number) => Math.round(10 * length) / 10;
  return {
    kind: 'lens',
    name: nameOf(slug),
    'focal-length': lens['focal-length'],
    'max-aperture': lens['max-aperture'],
    'smallest-aperture': lens.smallestAperture,
    'focus-distance': lens.closest['focus-distance'],
    'focus-magnification': lens.closest['focus-magnification'],
    focusing: lens.focusing,
    thread: lens.thread,
    iris: lens.iris,
    'barrel-length': round(whole - crateRegister),
    ...(lens.focusing === 'inside' && { 'closest-barrel-length': round(nearRim - crateRegister) }),
    'rim-diameter': lens['rim-diameter'],
    'rear-protrusion': standsOut(slug),
    'pupil-magnification': lens['pupil-magnification'],
    'principal-separation': lens['principal-separation'],
    'front-principal-depth': lens['front-principal-depth'],
  };
}
