import { OutOfRange } from '#core/quantity/errors.ts';
import { closestMagnification, stateAt } from '#core/rig/lens-in-use.ts';
import { chainCount } from '#core/rig/kit/chain-count.ts';
import type { KitRow } from '#core/rig/kit/kit.ts';
import type { QuantityName } from '#core/quantity/vocabulary.ts';
import { ownThing } from '#site/chain/own-thing.ts';
import type { AnyBench } from '#site/controls/workbench/workbench.ts';
import type { Option } from '#site/state/choice.ts';
import { parts } from '#site/state/crate-parts.ts';
import { claws } from '#site/state/stands-out.ts';
import { ownParts, type OwnCamera, type OwnParts } from '#site/state/own-parts.svelte.ts';
import { converterPoints } from './converter-points.ts';
import { registerOf } from './known-lens.ts';
import { numberIn, partsOf, wordsIn, type Kit, type KitPart } from './part.ts';
import { nameInKit } from './told-apart.ts';

/** More are not gone through while a hand moves. */
export const mostChains = 100_000;

/** From the rim of a lens, or of another close-up lens, to the glass of a close-up lens, mm. */
const { extension: seat } = parts['close-up-seat'];

/** What a lens closes to that does not say it (common practice). */
const usualSmallest = 22;

/** A kit as chains are searched in it, or why none can be. */
export function searchedParts(kit: Kit, edition: number): OwnParts | string {
  const rows = kit.parts.map((part, at) => ({ part, id: `my-${part.kind}-${at}` }));
  const cameras = partsOf(kit, 'camera').map((camera) => ofCamera(camera, rows, kit));
  const usable = cameras.filter(({ mount, rows: all }) =>
    all.some((row) => row.part === 'lens' && row.mount === mount),
  );
  if (cameras.length === 0) return 'It has no camera.';
  if (usable.length === 0) return 'No lens in it fits a camera in it.';
  const most = Math.max(...usable.map((camera) => chainCount([asRow(camera), ...camera.rows])));
  if (most > mostChains) return `It makes more chains than are gone through here: ${mostChains.toLocaleString('en')}.`;
  const things = rows.flatMap(({ part, id }) => {
    const thing = ownThing(part, kit);
    return thing ? [[id, thing] as const] : [];
  });
  return {
    edition,
    cameras: usable,
    names: Object.fromEntries(rows.map(({ part, id }) => [id, nameInChain(part, kit)])),
    things: Object.fromEntries(things),
  };
}

const asRow = ({ sensorWidth, registerDistance, mount }: Omit<OwnCamera, 'thing'>): KitRow => ({
  part: 'camera',
  id: 'camera',
  price: 0,
  mount,
  registerDistance,
  sensorWidth,
  sensorHeight: sensorWidth,
  circleOfConfusion: sensorWidth,
});

type Rows = readonly { readonly part: KitPart; readonly id: string }[];

/** A camera with the parts of its mount, and with lenses of others, which can stand before it turned round. */
function ofCamera(camera: KitPart, rows: Rows, kit: Kit): OwnCamera {
  const registerDistance = numberIn(camera, 'register-distance')!;
  const mountOf = (part: KitPart, register = registerDistance) => `${wordsIn(part, 'mount')} ${register} mm`;
  const mount = mountOf(camera);
  return {
    sensorWidth: numberIn(camera, 'sensor-width')!,
    registerDistance,
    mount,
    thing: ownThing(camera, kit)!,
    rows: rows.flatMap(({ part, id }) => {
      if (part.kind === 'lens') return lensRow(part, id, kit, mountOf);
      const row = rowOf(part, { id, price: 0, mount: mountOf(part) });
      return row && (!('mount' in row) || row.mount === mount) ? [row] : [];
    }),
  };
}

function lensRow(
  part: KitPart,
  id: string,
  kit: Kit,
  mountOf: (part: KitPart, register?: number) => string,
): readonly KitRow[] {
  const register = registerOf(part, kit);
  if (register === undefined) return [];
  try {
    const lenses = ownThing(part, kit)?.lenses;
    if (!lenses) return [];
    // A search may turn it round, and what nobody has measured is taken to be the claws of its mount.
    const usual = { rearProtrusion: claws, ...lenses.usual };
    // Throws where the lens cannot be focused so.
    stateAt(usual, closestMagnification(usual));
    const maxAperture = numberIn(part, 'max-aperture')!;
    const smallestAperture = numberIn(part, 'smallest-aperture') ?? Math.max(usualSmallest, maxAperture);
    return [{ part: 'lens', id, price: 0, mount: mountOf(part, register), lens: usual, maxAperture, smallestAperture }];
  } catch (error) {
    if (error instanceof OutOfRange) return [];
    throw error;
  }
}

/** A part that is no lens; nothing for what no search puts into a chain. */
function rowOf(
  part: KitPart,
  item: { readonly id: string; readonly price: number; readonly mount: string },
): KitRow | undefined {
  const { id, price } = item;
  const coupled = wordsIn(part, 'contacts') !== 'no';
  switch (part.kind) {
    case 'ring':
      return { part: 'ring', ...item, extension: numberIn(part, 'extension')!, coupled };
    case 'reversing-ring':
      return { part: 'reversing ring', ...item, extension: numberIn(part, 'extension')! };
    case 'converter': {
      const points = converterPoints(part);
      return {
        part: 'converter',
        ...item,
        converterFactor: numberIn(part, 'converter-factor')!,
        converterLength: numberIn(part, 'converter-length')!,
        coupled,
        ...(points && { points }),
      };
    }
    case 'close-up-lens':
      return { part: 'close-up lens', id, price, closeUpPower: numberIn(part, 'close-up-power')!, seat };
    case 'coupling-ring':
      return { part: 'coupling ring', id, price, extension: numberIn(part, 'extension')! };
    default:
      return undefined;
  }
}

const nameInChain = (part: KitPart, kit: Kit) =>
  part.kind === 'reversing-ring' || part.kind === 'coupling-ring' ? '' : nameInKit(kit, part);

let edition = 0;

/** Where all parts are searched for chains: the whole kit as one of what is searched, beside *own* options. */
export function searchIn(bench: AnyBench, own: Parameters<AnyBench['offer']>[0], kit: Kit): void {
  const found = kit.parts.length > 0 ? searchedParts(kit, ++edition) : undefined;
  ownParts.found = typeof found === 'object' ? found : undefined;
  const listed = Object.entries(bench.choices).find(([, { wholeKit }]) => wholeKit !== undefined);
  if (!listed) throw new Error('no choice of this bench has the whole kit as an option: say so by its wholeKit');
  const [choice, { wholeKit }] = listed;
  const slug = wholeKit!;
  if (found !== undefined) bench.offer({ ...own, [choice]: { [slug]: optionOf(found) } });
  // An address that names it was read before it was here, and what another tab has taken away cannot stay chosen.
  const isNamed = new URLSearchParams(ownParts.opened).get(choice) === slug;
  ownParts.opened = '';
  if (ownParts.found && isNamed) bench.choose(choice, slug);
  else if (!ownParts.found && bench.kept[choice] === slug) {
    const { options } = bench.choices[choice]!;
    bench.choose(
      choice,
      Object.keys(options).find((slug) => !options[slug]!.own)!,
    );
  }
}

/** Its first camera comes with it, if none of its own is held. */
function optionOf(found: OwnParts | string): Option<QuantityName> {
  const option = { label: 'my own kit', own: true, fills: {} } as const;
  if (typeof found === 'string') return { ...option, apart: found };
  const widths = found.cameras.map(({ sensorWidth }) => sensorWidth);
  return {
    ...option,
    brings: (given) => (widths.includes(given['sensor-width']) ? {} : { 'sensor-width': widths[0]! }),
  };
}
