import type { KitLens, KitRow } from '#core/rig/kit/kit.ts';
import { lenses, nameOf, rings, type LensSlug } from './crate.ts';
import { closeUpPowers, parts } from './crate-parts.ts';
import { crateLens, crateRegister, marks } from './lens-marks.ts';
import { ownParts, type OwnCamera } from './own-parts.svelte.ts';

/** Things that a search puts together: rows as `searchKit` takes them, all but the camera. */
export interface SearchedKit {
  readonly label: string;
  readonly rows: readonly KitRow[];
}

/** The bayonet of the crate: everything in it fits on everything. */
const mount = 'crate';

const ring = (extension: number, id = `ring-${extension}`, price = 0): KitRow => ({
  part: 'ring',
  id,
  price,
  mount,
  extension,
});

const closeUp = (id: string, closeUpPower: number, price = 0): KitRow => ({
  part: 'close-up lens',
  id,
  price,
  closeUpPower,
  seat: parts['close-up-seat'].extension,
});

const converter = (slug: 'converter-1.4' | 'converter-2', price = 0): KitRow => ({
  part: 'converter',
  id: slug,
  price,
  mount,
  converterFactor: parts[slug]['converter-factor'],
  converterLength: parts[slug]['converter-length'],
});

/** What stands out behind the flanges, mm: what `standsOut` finds from the glass, which a page that draws none need not load. */
const rearOf = (slug: LensSlug) => (slug === 'lens-28' ? 10.8 : 5);

const isZoom = (slug: LensSlug) => slug === 'lens-18' || slug === 'lens-55';

/** A zoom is a lens at either end; it closes as far at its short end at both, which is all that can be relied on. */
function lens(slug: LensSlug, price = 0): KitLens {
  return {
    part: 'lens',
    id: slug,
    price,
    mount,
    lens: { ...crateLens(slug), rearProtrusion: rearOf(slug) },
    maxAperture: marks[slug]['max-aperture'],
    smallestAperture: marks[isZoom(slug) ? 'lens-18' : slug].smallestAperture,
    ...(isZoom(slug) && { zoom: 'zoom' }),
  };
}

const reversing = (price = 0): KitRow => ({
  part: 'reversing ring',
  id: 'reversing-ring',
  price,
  mount,
  extension: parts['reversing-ring'].extension,
});

const coupling = (price = 0): KitRow => ({
  part: 'coupling ring',
  id: 'coupling-ring',
  price,
  extension: parts['coupling-ring'].extension,
});

const bag: readonly KitRow[] = [
  ...(['lens-90', 'lens-50', 'lens-28', 'lens-18', 'lens-55'] as const).map((slug) => lens(slug)),
  ...rings.map((length) => ring(length)),
  ...closeUpPowers.map((power) => closeUp(`close-up-${power}`, power)),
];

const crateRows: readonly KitRow[] = [
  ...bag,
  ...(['lens-60', 'lens-100', 'lens-200'] as const).map((slug) => lens(slug)),
  closeUp('close-up-pair-4', parts['close-up-pair-4']['close-up-power']),
  converter('converter-1.4'),
  converter('converter-2'),
  reversing(),
  coupling(),
];

/** Kits by the name that an address carries; the first is there at the start. */
export const kits = {
  bag: { label: 'a member’s bag', rows: bag },
  crate: { label: 'the whole crate', rows: crateRows },
} as const satisfies Readonly<Record<string, SearchedKit>>;

/** One of those, or the reader's own, where one is kept. */
export type KitSlug = keyof typeof kits | 'own';

/** What could be bought, with invented prices in the club's points. */
const wishes = {
  'second-ring-36': ring(36, 'second-ring-36', 15),
  'reversing-ring': reversing(12),
  'coupling-ring': coupling(10),
  'close-up-pair-4': closeUp('close-up-pair-4', parts['close-up-pair-4']['close-up-power'], 40),
  'converter-2': converter('converter-2', 90),
  'lens-60': lens('lens-60', 260),
  'lens-200': lens('lens-200', 520),
} as const satisfies Readonly<Record<string, KitRow>>;

export type WishSlug = keyof typeof wishes;
export const wishSlugs = Object.keys(wishes) as readonly WishSlug[];

/** A thing of the wish list. */
export const wish = (slug: WishSlug): KitRow => wishes[slug];

/** Of what a kit of one's own holds as well, whatever it is called there, one is enough. */
function isLike(row: KitRow, wanted: KitRow): boolean {
  if (row.part !== wanted.part) return false;
  if (row.part === 'converter') return row.converterFactor === (wanted as typeof row).converterFactor;
  return row.part === 'reversing ring' || row.part === 'coupling ring';
}

/** Whether a kit has it already. */
export function has(kit: KitSlug, slug: WishSlug): boolean {
  if (kit !== 'own') return kits[kit].rows.some(({ id }) => id === slug);
  return ownParts.found?.cameras.some(({ rows }) => rows.some((row) => isLike(row, wishes[slug]))) ?? false;
}

/** What of the wish list a kit lacks and *budget* would pay by itself. */
export function affordable(kit: KitSlug, budget: number): readonly WishSlug[] {
  return wishSlugs.filter((slug) => !has(kit, slug) && wishes[slug].price <= budget);
}

/** The camera that all is put on: one of the crate's, or of the reader's own with its mount and depth. */
export function cameraRow(
  sensorWidth: number,
  circleOfConfusion: number,
  { mount: on, registerDistance }: Pick<OwnCamera, 'mount' | 'registerDistance'> = {
    mount,
    registerDistance: crateRegister,
  },
): KitRow {
  return {
    part: 'camera',
    id: 'camera',
    price: 0,
    mount: on,
    registerDistance,
    sensorWidth,
    sensorHeight: (2 / 3) * sensorWidth,
    circleOfConfusion,
  };
}

/** The same thing as it is sold for another mount. */
function forMount(row: KitRow, { mount: on, registerDistance }: OwnCamera): KitRow {
  if (row.part === 'lens') return { ...row, mount: on, lens: { ...row.lens, registerDistance } };
  return 'mount' in row ? { ...row, mount: on } : row;
}

/** A kit on a camera with such a sensor, mm, and what is *added* to it from the wish list. */
export function rowsOn(
  kit: KitSlug,
  added: readonly WishSlug[],
  given: { readonly sensorWidth: number; readonly circleOfConfusion: number },
): readonly KitRow[] {
  const { sensorWidth, circleOfConfusion } = given;
  const cameras = kit === 'own' ? ownParts.found?.cameras : undefined;
  const own = cameras && (cameras.find((camera) => camera.sensorWidth === sensorWidth) ?? cameras[0]);
  if (own) {
    const more = added.map((slug) => forMount(wishes[slug], own));
    return [cameraRow(sensorWidth, circleOfConfusion, own), ...own.rows, ...more];
  }
  // A kit that another tab has emptied meanwhile is the bag until the choice follows.
  const { rows } = kits[kit === 'own' ? 'bag' : kit];
  return [cameraRow(sensorWidth, circleOfConfusion), ...rows, ...added.map(wish)];
}

/** Tells one kit from another, and from itself before it was changed. */
export const keyOf = (kit: KitSlug) => (kit === 'own' ? `own ${ownParts.found?.edition}` : kit);

/** What a row is called in a list of the wishes. */
export const wishNames: Readonly<Record<WishSlug, string>> = {
  'second-ring-36': 'second 36 mm ring',
  'reversing-ring': 'reversing ring',
  'coupling-ring': 'coupling ring',
  'close-up-pair-4': 'cemented +4',
  'converter-2': '×2 converter',
  'lens-60': nameOf('lens-60'),
  'lens-200': nameOf('lens-200'),
};

const isLens = (id: string): id is LensSlug => id in lenses;

/** What a row is called in a chain; nothing for a ring that only holds the next thing. */
function shortName(id: string): string {
  const own = ownParts.found?.names[id];
  if (own !== undefined) return own;
  if (isLens(id)) return `${isZoom(id) ? 'zoom at ' : ''}${marks[id]['focal-length']} mm`;
  const [, length] = /^(?:second-)?ring-(\d+)$/.exec(id) ?? [];
  if (length !== undefined) return `ring ${length}`;
  if (id.startsWith('converter-')) return `×${id.slice('converter-'.length)}`;
  if (id === 'close-up-pair-4') return '+4 cemented';
  return id.startsWith('close-up-') ? `+${id.slice('close-up-'.length)}` : '';
}

/** The parts of a chain in words, from the camera outwards and without it. */
export function namesOfChain(ids: readonly string[]): readonly string[] {
  return ids.map((id, index) => {
    const isTurned = /(?:reversing|coupling)-ring/.test(ids[index - 1] ?? '');
    return isTurned ? `${shortName(id)} turned` : shortName(id);
  });
}

/** All of a chain on one line. */
export const chainInWords = (ids: readonly string[]) =>
  namesOfChain(ids)
    .slice(1)
    .filter((name) => name !== '')
    .join(', ');
