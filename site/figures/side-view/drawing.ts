import type { Box } from '../sheet/boxes.ts';
import { thinGlass } from './glass-of-chain.ts';
import { principalPlanes, pupilsOf } from './marks-of-chain.ts';
import { outlineOf, type Outline } from './outlines.ts';
import { raysOf } from './rays-of-chain.ts';
import type { Lettered, Stroke } from './shapes.ts';
import type { SheetPlace } from './sheet-place.ts';
import type { SideViewShown } from './shown.ts';
import type { SideViewChain } from './side-view.ts';

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

const none = { strokes: [], lettered: [] };

export function drawChain(chain: SideViewChain, shown: SideViewShown, place: SheetPlace): ChainDrawing {
  const { positions } = chain;
  const { sharpPlane, field, sensor, solved } = positions;
  const outlines = positions.parts.map((part, at) => outlineOf(part, place, `part ${at}`));
  const planes = principalPlanes(chain, shown, outlines, place);
  const pupils = shown.pupils ? pupilsOf(chain, place) : none;
  const circle = shown.about?.circleAround(chain, place) ?? none;
  const isOnSheet = sharpPlane !== null && place.subjectX > 0 && (solved.sharpPlane === 'in front' || sharpPlane > 0);
  const sharp = isOnSheet ? { x: place.subjectX, ...place.half(field!.width / 2) } : null;
  const onSensor = place.half(sensor.width / 2);
  return {
    outlines,
    strokes: [
      ...thinGlass(chain, outlines, place),
      ...(shown.glass?.surfaces(chain, place) ?? []),
      ...planes.strokes,
      ...raysOf(chain, shown, place),
      ...pupils.strokes,
      ...(shown.about?.hiddenSky(chain, place) ?? []),
      ...circle.strokes,
      ...endsOf(onSensor, sharp, place),
    ],
    lettered: [...circle.lettered, ...planes.lettered, ...pupils.lettered, ...namedEnds(chain, outlines, place)],
    sharp,
    sensor: onSensor,
  };
}

/** Sensor, break of the axis, and the sharp plane with the arrows of one that is higher than the sheet. */
function endsOf(sensor: ChainDrawing['sensor'], sharp: ChainDrawing['sharp'], place: SheetPlace): Stroke[] {
  const { sensorX, axisY, breakX } = place;
  const upright = (x: number, half: number) => `M${x} ${axisY - half}v${2 * half}`;
  const strokes: Stroke[] = [
    { key: 'sensor', className: 'sensor', quantity: 'sensor-width', path: upright(sensorX, sensor.half) },
  ];
  const wave = 'l6 12l-6 6l6 12';
  if (breakX !== null) {
    const path = `M${breakX - 8} ${axisY - 16}${wave}M${breakX + 4} ${axisY - 16}${wave}`;
    strokes.push({ key: 'break', className: 'break', path });
  }
  if (sharp) {
    const { x, half, cut } = sharp;
    const of = 'subject';
    strokes.push({ key: 'sharp', className: 'sharp-plane', quantity: 'field-width', path: upright(x, half), of });
    const arrows = `M${x - 5} ${axisY - half + 9}l5 -9l5 9M${x - 5} ${axisY + half - 9}l5 9l5 -9`;
    if (cut) strokes.push({ key: 'sharp, cut', className: 'ray', path: arrows, of });
  }
  return strokes;
}

/** Names beside the ends of parts, on the side away from the part. */
function namedEnds({ ends = [] }: SideViewChain, outlines: readonly Outline[], place: SheetPlace): Lettered[] {
  return ends.map(({ at, name, part }) => {
    const { left, right, half } = outlines[part]!;
    const x = place.x(at);
    return { key: `end ${name}`, letters: [name], x, half: 0.82 * half, isLeft: x < (left + right) / 2, isHigh: true };
  });
}

/** What an outline takes of the sheet. */
export function boxOf({ left, right, half }: Outline, axisY: number): Box {
  return { left, right, top: axisY - half, bottom: axisY + half };
}
