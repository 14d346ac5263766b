import { assembleRig } from '../assemble.ts';
import type { Part } from '../part.ts';
import { solveRig } from '../solve.ts';
import type { SolvedRig } from '../solved-rig.ts';
import type { Back } from './back.ts';
import type { Front } from './front.ts';
import { likeness } from './kinds.ts';
import type { KitCamera, KitConverter, KitLens, KitRing, KitRow } from './kit.ts';
import type { Verdict } from './verdict.ts';

/** One chain of a kit as it would stand on the tripod. */
export interface KitChain {
  /** Names of its rows in mechanical order, the camera first. */
  readonly ids: readonly string[];
  /** What the engine takes, set as it was judged. */
  readonly parts: readonly Part[];
  readonly price: number;
  readonly verdict: Verdict;
  /** Stops of exposure in hand, less those lost by not filling the frame; null unless suited. */
  readonly merit: number | null;
  readonly solved: SolvedRig;
}

interface Set {
  readonly focusMagnification: number;
  readonly fNumber: number;
}

/** Puts a chain together and has the engine solve it. Of rows that are alike it names as many as it takes. */
export function builtChain(
  kit: readonly KitRow[],
  { camera, front }: { readonly camera: KitCamera; readonly front: Front },
  back: Back,
  set: Set,
  verdict: Verdict,
  merit: number | null,
): KitChain {
  const { lens, reversingRing, closeUpLenses, coupled } = front;
  const { registerDistance } = camera;
  const spacer = ({ extension, coupled: contacts = true }: Pick<KitRing, 'extension' | 'coupled'>): Part => {
    return { part: 'ring', extension, coupled: contacts };
  };
  const mounted = ({ lens: inside }: KitLens, { focusMagnification, fNumber }: Set, reversed: boolean): Part => {
    return { part: 'lens', lens: inside, focusMagnification, fNumber, reversed };
  };
  const built: [KitRow, Part][] = [[camera, camera]];
  for (const ring of back.behind) built.push([ring, spacer(ring)]);
  if (back.converter) built.push([back.converter, converterPart(back.converter, registerDistance)]);
  for (const ring of back.before) built.push([ring, spacer(ring)]);
  if (reversingRing) built.push([reversingRing, spacer({ extension: reversingRing.extension, coupled: false })]);
  built.push([lens, mounted(lens, set, reversingRing !== null)]);
  for (const closeUp of closeUpLenses) built.push([closeUp, closeUp]);
  if (coupled) {
    const asLeft = { focusMagnification: 0, fNumber: coupled.lens.maxAperture };
    built.push([coupled.ring, spacer(coupled.ring)], [coupled.lens, mounted(coupled.lens, asLeft, true)]);
  }
  const parts = built.map(([, part]) => part);
  return {
    ids: namesOf(
      kit,
      built.map(([row]) => row),
    ),
    parts,
    price: camera.price + front.price + back.price,
    verdict,
    merit,
    solved: solveRig(assembleRig(parts)),
  };
}

/** As the engine takes it: by its planes where they are known. */
function converterPart(converter: KitConverter, registerDistance: number): Part {
  const { points, ...printed } = converter;
  if (!points) return { ...printed, registerDistance };
  const { converterLength, coupled = true } = converter;
  return { part: 'converter by points', ...points, converterLength, coupled };
}

function namesOf(kit: readonly KitRow[], rows: readonly KitRow[]): readonly string[] {
  const taken = new Map<KitRow, number>();
  return rows.map((row) => {
    const nth = taken.get(row) ?? 0;
    taken.set(row, nth + 1);
    if (nth === 0) return row.id;
    const like = likeness(row);
    const alike = kit.filter((other) => likeness(other) === like).map(({ id }) => id);
    return alike.sort()[nth] ?? row.id;
  });
}
