import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { drawingScale, steadyScale, type DrawingScale } from '#site/figures/scale/drawing-scale.ts';

/** An edge above the background in focus, mm; no band where the edge would be inside the lens. */
export interface EdgeState {
  readonly edgeHeight: number;
  readonly entrancePupil: number;
  readonly entrancePupilDistance: number;
  readonly band: number | undefined;
  /** The band that an everyday aperture leaves: the scale across is chosen for this one. */
  readonly usualBand: number;
  /** From one frame's sharp plane to the next, mm, where there is a stack. */
  readonly frameStep: number | undefined;
}

export interface EdgeScales {
  readonly along: DrawingScale;
  readonly across: DrawingScale;
}

/** Sharp planes closer than this are not drawn, pixels. */
const closest = 3;

/** A stroke of the drawing: its line type, the quantity it shows, its path. */
export type Stroke = readonly [line: string, quantity: string | undefined, path: string];

export interface Label {
  readonly name: string | undefined;
  readonly words: string;
  readonly x: number;
  readonly y: number;
}

/**
 * Where everything stands on the sheet, pixels. The background is the fixed line on the left, the edge stands before it on the axis, the lens
 * is to the right; heights count from *top*. Cones are slender, so heights have a scale of their own. Scales that are *held* while the hand drags stay.
 */
export function edgeLayout(state: EdgeState, box: SheetBox, held?: EdgeScales) {
  const { text, small, width } = box;
  const top = 2.4 * text;
  const height = Math.max(5 * text, box.height - top - 4.4 * text - 1.7 * small);
  const middle = height / 2;
  const groundX = Math.max(0.2 * width, 7.2 * small);
  const room = width - groundX;
  const along = held?.along ?? drawingScale(state.edgeHeight, 0.42 * room);
  const band = state.band ?? state.usualBand;
  const across = held?.across ?? steadyScale(state.usualBand, band, height, 0.45);
  const edgeX = groundX + state.edgeHeight * along.pixelsPerMillimetre;
  const pupil = groundX + state.entrancePupilDistance * along.pixelsPerMillimetre;
  const isPupilFar = pupil > width - text;
  const pupilX = isPupilFar ? width - 0.6 * text : pupil;
  const endX = isPupilFar ? width - 1.8 * text : pupil;
  const halfBand = (band / 2) * across.pixelsPerMillimetre;
  const halfPupil = (state.entrancePupil / 2) * across.pixelsPerMillimetre;
  /** How far from the axis the rays through edge and rim are at *x*, before the edge. */
  const rim = (x: number) => (halfBand * (x - edgeX)) / (edgeX - groundX);
  /** How far the cone of the ground's point on the axis has opened at *x*. */
  const cone = (x: number) => (halfPupil * (x - groundX)) / (pupil - groundX);
  // Taken hold of where the upper ray leaves the sheet, or at its right end.
  const gripX = Math.min(endX - 14, edgeX + ((edgeX - groundX) * (middle - 16)) / halfBand);
  const thick = Math.min(0.3 * (edgeX - groundX), 1.4 * text);
  const opening = Math.min(isPupilFar ? rim(endX) : halfPupil, 0.9 * middle);
  const zigzag = `M${endX} ${middle - 16}l6 12l-6 6l6 12`;
  const between = (state.frameStep ?? Infinity) * along.pixelsPerMillimetre;
  // Too close to be told apart they are none.
  const planes = between < closest ? 0 : Math.floor((edgeX - groundX) / between);
  const rays: Stroke[] = [
    ['free', undefined, `M${groundX} ${middle}H${endX}V${middle + cone(endX)}z`],
    ['blocked', undefined, `M${groundX} ${middle}H${edgeX}V${middle - cone(edgeX)}z`],
    ['rim', undefined, `M${groundX} ${middle + halfBand}L${endX} ${middle - rim(endX)}`],
    ['rim', undefined, `M${groundX} ${middle - halfBand}L${endX} ${middle + rim(endX)}`],
  ];
  return {
    along,
    across,
    top,
    height,
    middle,
    groundX,
    edgeX,
    pupilX,
    halfBand: Math.min(halfBand, middle),
    /** How many sharp planes of other frames are drawn between background and edge. */
    planes,
    grip: { x: gripX, y: middle - rim(gripX), half: rim(gripX) },
    plate: [['plate', undefined, `M${edgeX} ${middle}V0h${-thick}V${middle - thick}z`]] satisfies Stroke[],
    strokes: [
      ['axis', undefined, `M4 ${middle}H${width}`],
      ...(state.band === undefined ? [] : rays),
      [
        'planes',
        'frame-step',
        Array.from({ length: planes }, (_, at) => `M${groundX + (at + 1) * between} 0V${height}`).join(''),
      ],
      ['ground', undefined, `M${groundX} 0V${height}`],
      ...(state.band === undefined
        ? []
        : ([['band', 'hidden-band', `M${groundX} ${middle - halfBand}V${middle + halfBand}`]] satisfies Stroke[])),
      ['pupil', 'entrance-pupil', `M${pupilX} 0V${middle - opening}M${pupilX} ${middle + opening}V${height}`],
      ['break', undefined, isPupilFar ? zigzag : ''],
    ] satisfies Stroke[],
  };
}
