import type { PlacedPart } from '#core/rig/positions.ts';
import { bodyBehind } from './frame.ts';
import type { Box } from '../sheet/boxes.ts';
import type { Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';

/** The outline of one part, pixels. */
export interface Outline extends Stroke {
  /** Half of its drawn height, and its ends. */
  readonly half: number;
  readonly left: number;
  readonly right: number;
  /** Its lines, a pixel to each side: no word stands on them. */
  readonly edges: readonly Box[];
}

const n = (value: number) => String(Math.round(10 * value) / 10);

/** A ring narrower than this could not be seen or taken hold of, pixels. */
const least = 4;

/** How far a wavy break line of ISO 128 swings where an outline is cut, pixels. */
const wave = 4;

/** An edge along the axis: straight, or a zigzag where the part goes on beyond the sheet. */
function edge(from: number, to: number, y: number, cut: boolean, inwards: 1 | -1): string {
  if (!cut || Math.abs(to - from) < 4 * wave) return `L${n(to)} ${n(y)}`;
  const middle = (from + to) / 2;
  const side = to > from ? wave : -wave;
  return `L${n(middle - side)} ${n(y)}L${n(middle - side / 2)} ${n(y + inwards * wave)}L${n(middle + side / 2)} ${n(y)}L${n(to)} ${n(y)}`;
}

/** From its rear end (right) to its front end (left), half as high as given at each of its stations. */
function profile(
  stations: readonly (readonly [x: number, half: number])[],
  { axisY, room, cut }: { axisY: number; room: number; cut: boolean },
): string {
  const high = stations.map(([x, half]) => [x, Math.min(half, room)] as const);
  const [firstX, first] = high[0]!;
  let path = `M${n(firstX)} ${n(axisY - first)}`;
  for (let index = 1; index < high.length; index++) {
    const [[fromX, from], [toX, to]] = [high[index - 1]!, high[index]!];
    path += edge(fromX, toX, axisY - to, cut && from === to && to >= room && fromX !== toX, 1);
  }
  path += `L${n(high.at(-1)![0])} ${n(axisY + high.at(-1)![1])}`;
  for (let index = high.length - 1; index > 0; index--) {
    const [[toX, to], [fromX, from]] = [high[index - 1]!, high[index]!];
    path += edge(fromX, toX, axisY + to, cut && from === to && to >= room && fromX !== toX, -1);
  }
  return `${path}Z`;
}

/** The lines of such a profile; of one that slants, the box about it. */
function edgesOf(
  stations: readonly (readonly [x: number, half: number])[],
  { axisY, room }: { axisY: number; room: number },
): Box[] {
  const ends = [stations[0]![0], stations.at(-1)![0]];
  const at = (x: number, from: number, to: number, otherX = x): Box => ({
    left: Math.min(x, otherX) - 1,
    right: Math.max(x, otherX) + 1,
    top: axisY + Math.min(from, to) - 1,
    bottom: axisY + Math.max(from, to) + 1,
  });
  const high = stations.map(([x, half]) => [x, Math.min(half, room)] as const);
  return [
    ...ends.map((x, end) => at(x, -high.at(-end)![1], high.at(-end)![1])),
    ...high.slice(1).flatMap(([x, half], index) => {
      const [fromX, from] = high[index]!;
      return [at(fromX, from, half, x), at(fromX, -from, -half, x)];
    }),
  ];
}

/** Stations of a part from its rear end to its front, in shares of its length and half height. */
function stationsOf(placed: PlacedPart, rear: number, front: number, half: number): [number, number][] {
  const { part } = placed;
  const at = (share: number) => rear + share * (front - rear);
  if (part.part === 'lens') {
    // The end with the flange is narrower: it goes into the mount.
    const collar = Math.min(0.22, 8 / Math.max(1, rear - front));
    const isReversed = part.reversed === true;
    const stations: [number, number][] = isReversed
      ? [
          [rear, half],
          [at(1 - collar), half],
          [at(1 - collar), 0.82 * half],
          [front, 0.82 * half],
        ]
      : [
          [rear, 0.82 * half],
          [at(collar), 0.82 * half],
          [at(collar), half],
          [front, half],
        ];
    return stations;
  }
  if (part.part === 'objective') {
    return [
      [rear, half],
      [at(0.5), half],
      [at(0.72), 0.62 * half],
      [at(0.94), 0.62 * half],
      [front, 0.36 * half],
    ];
  }
  if (part.part === 'bellows') {
    const pleats = Math.max(3, Math.round((placed.to - placed.from) / 8));
    return Array.from({ length: 2 * pleats + 1 }, (_, step): [number, number] => [
      at(step / (2 * pleats)),
      step % 2 === 0 ? half : 0.8 * half,
    ]);
  }
  return [
    [rear, half],
    [front, half],
  ];
}

const classes: Partial<Record<PlacedPart['part']['part'], string>> = {
  camera: 'outline body',
  ring: 'ring',
  bellows: 'ring',
};

/** What a part looks like from the side: its outline to scale between its ends, cut with a break line where the sheet is too low. */
export function outlineOf(placed: PlacedPart, place: SheetPlace, key: string): Outline {
  const { half, cut } = place.half(placed.radius);
  const kind = placed.part.part;
  // Thin glass has a rim on the camera's side of its plane.
  const isThin = kind === 'close-up lens' || kind === 'tube lens';
  const end = place.x(kind === 'camera' ? -bodyBehind : placed.from);
  const rear = isThin ? Math.max(end, place.x(placed.to) + least + 2) : end;
  const front = Math.min(place.x(placed.to), isThin || kind === 'ring' ? rear : rear - least);
  const box = { axisY: place.axisY, room: half, cut };
  const stations = stationsOf(placed, rear, front, half);
  let path = profile(stations, box);
  const edges = edgesOf(stations, box);
  if (placed.foremost > placed.to) {
    // What stands out behind the flange of a lens turned round.
    const standsOut: [number, number][] = [
      [front, 0.5 * half],
      [place.x(placed.foremost), 0.5 * half],
    ];
    path += profile(standsOut, { ...box, cut: false });
    edges.push(...edgesOf(standsOut, box));
  }
  const left = Math.min(front, place.x(placed.foremost));
  const className = classes[kind] ?? 'outline';
  return {
    key,
    path,
    className,
    ...(className === 'ring' && { quantity: 'extension' }),
    half,
    left,
    right: rear,
    edges,
  };
}

/**
 * A thin lens: glass between two arcs, or hollowed by them, on the camera's side of the plane in which it stands, so that nothing is drawn in
 * front of what counts as foremost.
 */
export function thinLens(x: number, axisY: number, half: number, gathers: boolean): string {
  const thick = Math.min(10, Math.max(4, 0.16 * half));
  const bulge = gathers ? 2 * thick : -0.9 * thick;
  const rim = gathers ? 1 : thick;
  const [top, bottom] = [n(axisY - half), n(axisY + half)];
  return `M${n(x)} ${top}V${bottom}H${n(x + rim)}Q${n(x + rim + bulge)} ${n(axisY)} ${n(x + rim)} ${top}Z`;
}
