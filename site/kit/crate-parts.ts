import type { bodies } from '#site/state/crate.ts';
import { parts } from '#site/state/crate-parts.ts';
import type { NewPart } from './part.ts';

/*
 * Things of the crate as parts of a kit, for the crate as a kit and for chains of its things alike.
 */

export const crateCamera = (body: (typeof bodies)[keyof typeof bodies]) =>
  ({
    kind: 'camera',
    name: body.label,
    'sensor-width': body['sensor-width'],
    'sensor-height': body['sensor-height'],
    'register-distance': body['register-distance'],
    'pixels-across': Math.round(body['sensor-width'] / body['pixel-pitch']),
  }) as const satisfies NewPart;

export const crateRing = (extension: number) =>
  ({ kind: 'ring', name: `${extension} mm ring`, extension, contacts: 'yes' }) as const satisfies NewPart;

export function crateBellows() {
  const { label, shortest, longest } = parts.bellows;
  return { kind: 'bellows', name: label, shortest, longest } as const satisfies NewPart;
}

export function crateConverter(slug: 'converter-1.4' | 'converter-2') {
  const { label, ...engraved } = parts[slug];
  return { kind: 'converter', name: label, ...engraved, contacts: 'yes' } as const satisfies NewPart;
}

export function crateMountRing(slug: 'reversing-ring' | 'coupling-ring') {
  const { label, extension } = parts[slug];
  return { kind: slug, name: label, extension } as const satisfies NewPart;
}

export function crateObjective(slug: 'objective-4' | 'objective-10') {
  const { label, ...engraved } = parts[slug];
  return { kind: 'objective', name: label, ...engraved } as const satisfies NewPart;
}
