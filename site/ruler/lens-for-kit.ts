import type { Estimate } from '#core/rig/fit/lens-fit.ts';
import { readField } from '#site/kit/field.ts';
import { planOf, type Field } from '#site/kit/kinds.ts';
import { emptyKit, type KitPart, type KitValue, type NewPart } from '#site/kit/part.ts';
import { readKit } from '#site/kit/schema.ts';
import type { MeasuredLens } from './fit-of.ts';

/** What has to be said of a lens that photographs do not tell. */
export interface SaidOfLens {
  readonly name: string;
  /** As typed. */
  readonly maxAperture: string;
  readonly focusDistance: string;
  readonly isInside: boolean;
  /** Which of the settings is the closest of the lens; undefined for none of them. */
  readonly nearest: string | undefined;
}

export type LensForKit =
  { readonly kind: 'lens'; readonly part: NewPart } | { readonly kind: 'refused'; readonly message: string };

/** A lens is set to infinity where its own magnification is less than that, or not told from nothing. */
const nearInfinity = 0.01;

/**
 * A fitted lens as a part of the kit, its numbers with their errors; or in words why it cannot be one yet.
 *
 * @param had the kit's lens that it is, whose other numbers stay as they are
 */
export function lensForKit(fit: MeasuredLens, said: SaidOfLens, had?: KitPart): LensForKit {
  const { isInside, nearest } = said;
  const atInfinity = fit.settings.every(
    ({ focusMagnification: { value, standardError } }) =>
      Math.abs(value) < Math.max(nearInfinity, 2 * (standardError ?? 0)),
  );
  if (isInside && !atInfinity) {
    return refused(
      'A kit takes the focal length at infinity, and this lens has another one at this setting. Take the photographs with the focus ring at ∞, on rings, and choose that setting.',
    );
  }
  const own = fit.settings.find(({ setting }) => setting === nearest)?.focusMagnification;
  const typed: Record<string, KitValue> = {};
  for (const [key, text] of [
    ['max-aperture', said.maxAperture],
    ['focus-distance', said.focusDistance],
  ] as const) {
    if (text.trim() === '' && had !== undefined) continue;
    const reading = readField(fieldOf(key), text);
    if (reading.kind === 'refused') return refused(reading.message);
    if (reading.kind === 'value') typed[key] = reading.value;
  }
  const { id: _, ...before } = had ?? { id: '' };
  const part = {
    iris: 'camera',
    ...before,
    kind: 'lens',
    name: (said.name.replace(/\s+/g, ' ').trim() || had?.name) ?? `${fit.focalLength.value.toFixed(1)} mm, measured`,
    ...typed,
    'focal-length': valueOf(fit.focalLength),
    focusing: isInside ? 'inside' : 'whole',
    ...(fit.frontPrincipalDepth && { 'front-principal-depth': valueOf(fit.frontPrincipalDepth) }),
    ...(own && { 'focus-magnification': valueOf(own) }),
  } as NewPart;
  const reading = readKit({ ...emptyKit, parts: [{ ...part, id: 'lens-1' }] });
  if (reading.kind === 'refused') return refused(reading.message.replace(/^Part 1[^:]*: /, ''));
  return { kind: 'lens', part };
}

const refused = (message: string): LensForKit => ({ kind: 'refused', message });

const fieldOf = (key: string): Field => planOf('lens').fields.find((field) => field.key === key)!;

/** Six figures say more than any measurement. */
function valueOf({ value, standardError }: Estimate): KitValue {
  const rounded = Number(value.toPrecision(6));
  return standardError === null ? rounded : { value: rounded, error: Number(standardError.toPrecision(3)) };
}
