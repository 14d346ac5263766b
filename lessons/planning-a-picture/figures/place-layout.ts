import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { levelPitch } from '#site/figures/dimension/stack.ts';
import { fittingScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';

/** Lengths along the axis from the subject, mm. */
export interface Place {
  /** From the rim of the lens; none where the sharp plane is inside. */
  readonly workingDistance: number;
  /** That subject and light ask for. */
  readonly wanted: number;
  readonly flashDistance: number;
  readonly sourceSize: number;
}

/** Of the front of the lens, mm: as large as that of the club's macro lens. */
const halfRim = 32;
/** The light stands above the axis of the lens by so much, seen from the subject. */
const lean = Math.PI / 3;

/** Pixels: the lens on the left, the subject on the right, the light obliquely above; all to one scale. */
export function placeLayout(place: Place, box: SheetBox, held?: DrawingScale) {
  const { width, height, text, small } = box;
  const top = 1.8 * text;
  /** Below it two dimensions, the title, and the rule. */
  const foot = 4 * text + (2 * levelPitch + 0.6) * small;
  const bottom = height - foot;
  const [left, right] = [5, width - 2.2 * text];
  const lens = Math.max(0, place.workingDistance);
  const light = { along: place.flashDistance * Math.cos(lean), up: place.flashDistance * Math.sin(lean) };
  const half = place.sourceSize / 2;
  // Past three times what else is drawn, what is wanted is said in words alone.
  const others = Math.max(lens, light.along + half * Math.sin(lean));
  const wantedShown = place.wanted <= 2.5 * others;
  const along = Math.max(others, wantedShown ? place.wanted : 0) * 1.25;
  const across = light.up + half * Math.cos(lean) + Math.min(halfRim, lens + light.up);
  /** Millimetres to a pixel. */
  const [acrossEach, alongEach] = [across / (bottom - top), along / (right - left)];
  const scale = held ?? fittingScale(box, 1 / Math.max(acrossEach, alongEach));
  const pixels = scale.pixelsPerMillimetre;
  const axisY = bottom - Math.min(Math.max(10, halfRim * pixels), 0.3 * (bottom - top));
  const x = (distance: number) => Math.max(left, right - distance * pixels);
  const y = (up: number) => Math.max(top - 4, axisY - up * pixels);
  const end = (sign: number) => ({
    x: x(light.along + sign * half * Math.sin(lean)),
    y: y(light.up - sign * half * Math.cos(lean)),
  });
  const [one, other] = [end(1), end(-1)];
  const rimX = x(lens);
  const rimHalf = Math.min(halfRim * pixels, 0.32 * (bottom - top));
  return {
    top,
    bottom,
    scale,
    axisY,
    subjectX: right,
    rimX,
    isInside: place.workingDistance <= 0,
    lens: `M${rimX} ${axisY - rimHalf}H0M${rimX} ${axisY + rimHalf}H0M${rimX} ${axisY - rimHalf}V${axisY + rimHalf}`,
    wantedX: wantedShown ? x(place.wanted) : undefined,
    light: { x: x(light.along), y: y(light.up), one, other },
    beam: `M${right} ${axisY}L${one.x} ${one.y}L${other.x} ${other.y}z`,
    source: `M${one.x} ${one.y}L${other.x} ${other.y}`,
    /** Along the light's own way, mm: away from the subject. */
    farther: (moved: { x: number; y: number }) => (-moved.x * Math.cos(lean) - moved.y * Math.sin(lean)) / pixels,
  };
}
