import type { ElementPoints, PlacedPupil, PrincipalPoints } from '#core/rig/element-points.ts';
import type { Outline } from './outlines.ts';
import type { Lettered, Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewShown } from './shown.ts';
import type { SideViewChain } from './side-view.ts';

/** The lens by whose height principal planes are drawn, pixels. */
function lensHalf(outlines: readonly Outline[], { positions }: SideViewChain, part: number): number {
  const isBody = positions.parts[part]?.part.part === 'camera';
  return isBody ? 0 : (outlines[part]?.half ?? 0);
}

/** Whether a place is where it is drawn: on the sheet, and not beyond a break. */
const isShown = (x: number, place: SheetPlace) =>
  x > (place.breakX ?? 4) + (place.breakX === null ? 0 : 8) && x < place.width - 4;

function planesOf(chain: SideViewChain, shown: SideViewShown): { part: number; points: PrincipalPoints }[] {
  const { elements, whole } = chain.positions;
  const own = elements.flatMap(({ part, points }: ElementPoints) => (points ? [{ part, points }] : []));
  if (shown.planes === 'each') return own;
  return shown.planes === 'rig' && whole ? [{ part: own.at(-1)!.part, points: whole }] : [];
}

/** H, H', F and F' with their letters. */
export function principalPlanes(
  chain: SideViewChain,
  shown: SideViewShown,
  outlines: readonly Outline[],
  place: SheetPlace,
) {
  const strokes: Stroke[] = [];
  const lettered: Lettered[] = [];
  for (const { part, points } of planesOf(chain, shown)) {
    const kind = chain.positions.parts[part]!.part.part;
    // A thin lens is its own principal plane.
    const isThin = kind === 'close-up lens' || kind === 'tube lens';
    const half = lensHalf(outlines, chain, part);
    const { rearPrincipal, frontPrincipal, rearFocus, frontFocus } = points;
    const add = (letter: string, at: number, other: number) => {
      const x = place.x(at);
      if (!isShown(x, place)) return;
      const key = `${letter}${part}`;
      const path = `M${x.toFixed(1)} ${place.axisY - half}v${2 * half}`;
      strokes.push({ key, path, className: 'plane', quantity: 'focal-length' });
      lettered.push({
        key,
        letters: [letter],
        x,
        half,
        isLeft: x < place.x(other) || (at === other && letter === 'H'),
        ...(shown.planes === 'rig' && { quantity: 'principal-separation' }),
      });
    };
    if (!(isThin && shown.planes === 'each')) {
      add('H', frontPrincipal, rearPrincipal);
      add('H′', rearPrincipal, frontPrincipal);
    }
    if (!shown.foci) continue;
    for (const [letter, at] of [
      ['F', frontFocus],
      ['F′', rearFocus],
    ] as const) {
      const x = place.x(at);
      if (!isShown(x, place)) continue;
      const key = `${letter}${part}`;
      strokes.push({ key, path: `M${x.toFixed(1)} ${place.axisY}m-3 -3l6 6m0 -6l-6 6`, className: 'focus' });
      lettered.push({ key, letters: [letter], x, half: 4, isLeft: letter === 'F' });
    }
  }
  return { strokes, lettered };
}

/** A pupil: two strokes with the opening between them, dashed where no light comes together there. */
function pupilStroke(
  key: string,
  words: readonly string[],
  pupil: PlacedPupil | null,
  isVirtual: boolean,
  isLeft: boolean,
  place: SheetPlace,
): { strokes: Stroke[]; lettered: Lettered[] } {
  const x = pupil ? place.x(pupil.at) : NaN;
  if (!pupil || !isShown(x, place)) return { strokes: [], lettered: [] };
  const { half, cut } = place.half(pupil.diameter / 2);
  const quantity = { quantity: key };
  const reach = Math.min(half + 16, place.axisY - place.top);
  const at = x.toFixed(1);
  const path = `M${at} ${place.axisY - half}V${place.axisY - reach}M${at} ${place.axisY + half}V${place.axisY + reach}`;
  return {
    strokes: cut ? [] : [{ key, path, className: isVirtual ? 'pupil virtual' : 'pupil', ...quantity }],
    lettered: cut ? [] : [{ key, letters: words, x, half: reach, isLeft, isBeyond: true, ...quantity }],
  };
}

/** The limiting stop as subject and sensor see it. */
export function pupilsOf({ positions }: SideViewChain, place: SheetPlace) {
  const { entrancePupil, exitPupil, foremost, elements } = positions;
  const lastGlass = Math.min(...elements.map(({ points }) => points?.rearPrincipal ?? Infinity));
  // On the sheet what is farther from the sensor is on the left.
  const isLeft = (entrancePupil?.at ?? 0) > (exitPupil?.at ?? 0);
  const entrance = pupilStroke(
    'entrance-pupil',
    ['entrance pupil', 'D'],
    entrancePupil,
    (entrancePupil?.at ?? 0) < foremost,
    isLeft,
    place,
  );
  const exit = pupilStroke(
    'exit-pupil',
    ['exit pupil', 'D′'],
    exitPupil,
    (exitPupil?.at ?? 0) > lastGlass,
    !isLeft,
    place,
  );
  return { strokes: [...entrance.strokes, ...exit.strokes], lettered: [...entrance.lettered, ...exit.lettered] };
}
