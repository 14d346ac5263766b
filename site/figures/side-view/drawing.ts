import { constructionRays, rayThrough, type RayPath } from '#core/rig/ray-paths.ts';
import type { ElementPoints, PlacedPupil, PrincipalPoints } from '#core/rig/element-points.ts';
import type { Box } from '../sheet/boxes.ts';
import { outlineOf, thinLens, type Outline } from './outlines.ts';
import { clippedPath, coneOnSheet, glassRayOnSheet, rayOnSheet } from './rays-on-sheet.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewChain, SideViewShown } from './side-view.ts';

/** A line or a ground on the sheet. */
export interface Stroke {
  readonly key: string;
  readonly path: string;
  readonly className: string;
  readonly quantity?: string;
}

/** A point whose letter is to stand beside it. */
export interface Lettered {
  readonly key: string;
  readonly letters: readonly string[];
  readonly x: number;
  /** How far from the axis its mark reaches, pixels. */
  readonly half: number;
  /** The side on which its letter keeps clear of its neighbour's. */
  readonly isLeft: boolean;
  readonly quantity?: string;
}

/** Everything of one chain that has a shape. */
export interface ChainDrawing {
  readonly outlines: readonly Outline[];
  /** In the order of painting, over the outlines. */
  readonly strokes: readonly Stroke[];
  readonly lettered: readonly Lettered[];
  /** Half height of the sharp plane, pixels; null where it is not on the sheet. */
  readonly sharp: { readonly x: number; readonly half: number; readonly cut: boolean } | null;
  readonly sensor: { readonly half: number; readonly cut: boolean };
}

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

function principalPlanes(chain: SideViewChain, shown: SideViewShown, outlines: readonly Outline[], place: SheetPlace) {
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
  place: SheetPlace,
): { strokes: Stroke[]; lettered: Lettered[] } {
  const x = pupil ? place.x(pupil.at) : NaN;
  if (!pupil || !isShown(x, place)) return { strokes: [], lettered: [] };
  const { half, cut } = place.half(pupil.diameter / 2);
  const quantity = key === 'entrance-pupil' ? { quantity: key } : {};
  const reach = Math.min(half + 16, place.axisY - place.top);
  const at = x.toFixed(1);
  const path = `M${at} ${place.axisY - half}V${place.axisY - reach}M${at} ${place.axisY + half}V${place.axisY + reach}`;
  return {
    strokes: cut ? [] : [{ key, path, className: isVirtual ? 'pupil virtual' : 'pupil', ...quantity }],
    lettered: cut ? [] : [{ key, letters: words, x, half: reach, isLeft: key === 'entrance-pupil', ...quantity }],
  };
}

function pupilsOf({ positions }: SideViewChain, place: SheetPlace) {
  const { entrancePupil, exitPupil, foremost, elements } = positions;
  const lastGlass = Math.min(...elements.map(({ points }) => points?.rearPrincipal ?? Infinity));
  const entrance = pupilStroke(
    'entrance-pupil',
    ['entrance pupil', 'D'],
    entrancePupil,
    (entrancePupil?.at ?? 0) < foremost,
    place,
  );
  const exit = pupilStroke('exit-pupil', ['exit pupil', 'D′'], exitPupil, (exitPupil?.at ?? 0) > lastGlass, place);
  return { strokes: [...entrance.strokes, ...exit.strokes], lettered: [...entrance.lettered, ...exit.lettered] };
}

/** How much of the height that sensor and sheet allow the point of the ruler's rays takes. */
const pointHeight = 0.8;

/** Where the ruler's rays start: as high as field, sensor and sheet allow, mm. */
function objectHeight({ positions }: SideViewChain, place: SheetPlace): number {
  const room = (place.axisY - place.top) / place.pixelsPerMillimetre;
  const { field, sensor, signedMagnification, parts } = positions;
  if (!field) return 0.7 * Math.min(room, parts.at(-1)!.radius);
  const onSensor = Math.min(sensor.width / 2, room) / Math.max(Math.abs(signedMagnification!), 1e-6);
  return pointHeight * Math.min(field.width / 2, room, onSensor);
}

function raysOf(chain: SideViewChain, shown: SideViewShown, place: SheetPlace): Stroke[] {
  const { positions } = chain;
  const strokes: Stroke[] = [];
  const draw = (key: string, ray: RayPath, className: string, quantity?: string) => {
    const path = rayOnSheet(ray, place, positions.sharpPlane);
    if (path !== '') strokes.push({ key, path, className, ...(quantity && { quantity }) });
  };
  const through = (field: number, aperture: number) => rayThrough(positions, { field, aperture });
  for (const kind of shown.rays ?? []) {
    if (kind === 'cone') {
      const path = coneOnSheet(through(0, 1), through(0, -1), place, positions.sharpPlane);
      strokes.push({ key: 'cone', path, className: 'cone', quantity: 'effective-f-number' });
      for (const side of [1, -1]) draw(`marginal ${side}`, through(0, side), 'ray marginal', 'effective-f-number');
    } else if (kind === 'chief') {
      for (const side of [1, -1]) draw(`chief ${side}`, through(side, 0), 'ray chief');
    } else if (kind === 'edge') {
      for (const side of [1, -1]) draw(`edge ${side}`, through(1, side), 'ray');
    } else {
      const rays = constructionRays(positions, objectHeight(chain, place));
      const needed = positions.sharpPlane === null ? rays : rays.slice(0, 2);
      needed.forEach((ray, index) => draw(`construction ${index}`, ray, 'ray'));
    }
  }
  chain.glassRays?.forEach((ray, index) => {
    const path = glassRayOnSheet(ray, place);
    if (path !== '') strokes.push({ key: `exact ${index}`, path, className: ray.lost ? 'ray lost' : 'ray marginal' });
  });
  return strokes;
}

/** Glass as its surfaces, between each two that hold it; the stop as two strokes. */
function glassOf({ glass = [] }: SideViewChain, place: SheetPlace): Stroke[] {
  const window = { left: 4, right: place.width - 4, top: place.top, bottom: place.bottom };
  return glass.flatMap(({ part, surfaces, stop }) => {
    const pieces = surfaces.slice(0, -1).flatMap((surface, index): Stroke[] => {
      if (surface.index === 1) return [];
      const outline = [...surface.outline, ...surfaces[index + 1]!.outline.toReversed(), surface.outline[0]!];
      const path = clippedPath(
        outline.map(({ z, y }) => [place.x(z), place.y(y)] as const),
        window,
      );
      return [{ key: `glass ${part} ${index}`, path, className: 'glass' }];
    });
    const x = place.x(stop.at).toFixed(1);
    const { half } = place.half(stop.radius);
    const reach = Math.min(half + 10, place.axisY - place.top);
    const path = `M${x} ${place.axisY - half}V${place.axisY - reach}M${x} ${place.axisY + half}V${place.axisY + reach}`;
    return [...pieces, { key: `stop ${part}`, path, className: 'stop' }];
  });
}

/** Thin glass: close-up lenses, tube lenses and, faint, what a converter does. */
function thinGlass({ positions }: SideViewChain, outlines: readonly Outline[], place: SheetPlace): Stroke[] {
  return positions.elements.flatMap(({ part, points }): Stroke[] => {
    const kind = positions.parts[part]!.part.part;
    const half = 0.92 * outlines[part]!.half;
    if (kind === 'close-up lens' || kind === 'tube lens') {
      const gathers = (points?.focalLength ?? Infinity) > 0;
      return [
        {
          key: `thin ${part}`,
          path: thinLens(place.x(positions.parts[part]!.to), place.axisY, half, gathers),
          className: 'glass',
        },
      ];
    }
    if (!kind.startsWith('converter') || !points) return [];
    const x = place.x(points.rearPrincipal);
    return [{ key: `thin ${part}`, path: thinLens(x, place.axisY, 0.5 * half, false), className: 'glass' }];
  });
}

export function drawChain(chain: SideViewChain, shown: SideViewShown, place: SheetPlace): ChainDrawing {
  const { positions } = chain;
  const { sharpPlane, field, sensor, solved } = positions;
  const outlines = positions.parts.map((part) => outlineOf(part, place));
  const planes = principalPlanes(chain, shown, outlines, place);
  const pupils = shown.pupils ? pupilsOf(chain, place) : { strokes: [], lettered: [] };
  const isOnSheet = sharpPlane !== null && place.subjectX > 0 && (solved.sharpPlane === 'in front' || sharpPlane > 0);
  return {
    outlines,
    strokes: [
      ...thinGlass(chain, outlines, place),
      ...glassOf(chain, place),
      ...planes.strokes,
      ...raysOf(chain, shown, place),
      ...pupils.strokes,
    ],
    lettered: [...planes.lettered, ...pupils.lettered],
    sharp: isOnSheet ? { x: place.subjectX, ...place.half(field!.width / 2) } : null,
    sensor: place.half(sensor.width / 2),
  };
}

/** What an outline takes of the sheet. */
export function boxOf({ left, right, half }: Outline, axisY: number): Box {
  return { left, right, top: axisY - half, bottom: axisY + half };
}
