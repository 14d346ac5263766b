import type { LensSlug } from '#site/state/crate.ts';

/** Assumed, to have three that differ: how near one comes depends on the animal, the day and you. */
export const animals = {
  spider: { label: 'spider, 30 mm', 'flight-distance': 30 },
  hoverfly: { label: 'hoverfly, 120 mm', 'flight-distance': 120 },
  butterfly: { label: 'butterfly, 300 mm', 'flight-distance': 300 },
} as const;

/** The lens held between a short one and a long one; between these a macro lens, where it is one of the two. */
export function compared(
  chosen: string | undefined,
): readonly { readonly slug: LensSlug | undefined; readonly isHeld: boolean }[] {
  const [short, middle, long] = ['lens-50', 'lens-90', 'lens-200'] as const;
  if (chosen === short || chosen === long)
    return [short, middle, long].map((slug) => ({ slug, isHeld: slug === chosen }));
  return [
    { slug: short, isHeld: false },
    { slug: chosen as LensSlug | undefined, isHeld: true },
    { slug: long, isHeld: false },
  ];
}
