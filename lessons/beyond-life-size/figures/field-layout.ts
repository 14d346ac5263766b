import type { SheetBox } from '#site/controls/workbench/workbench.ts';

/** Two frames of 3 : 2, beside each other where the sheet is wide, else below each other, each with a line of words under it. */
export function fieldLayout({ width, height, text, small }: SheetBox) {
  const gap = 0.8 * text;
  const line = 1.6 * text;
  const room = height - 2.2 * small - gap;
  const isWide = width > 1.25 * room;
  const columns = isWide ? 2 : 1;
  const rows = isWide ? 1 : 2;
  const widest = (width - (columns + 1) * gap) / columns;
  const highest = room / rows - line;
  const frame = Math.max(1, Math.min(widest, 1.5 * highest));
  const high = (2 / 3) * frame;
  const left = (width - columns * frame - (columns - 1) * gap) / 2;
  const top = gap + (room - rows * (high + line)) / 2;
  const panel = (index: number) => ({
    x: isWide ? left + index * (frame + gap) : left,
    y: isWide ? top : top + index * (high + line),
  });
  return { width: frame, height: high, panels: [panel(0), panel(1)] as const };
}

/** Of the spider's head, mm; all of it is drawn in millimetres, between its large eyes the middle. */
export const headWidth = 2.4;

const leg = (x: number, y: number, kneeX: number, kneeY: number, footX: number, footY: number) =>
  [-1, 1].map((side) => `M${side * x} ${y}L${side * kneeX} ${kneeY}L${side * footX} ${footY}`).join('');

const pair = (x: number, y: number, r: number) => [-1, 1].map((side) => ({ x: side * x, y, r }));

/** A jumping spider from the front. */
export const spider = {
  legs: [
    leg(1, 0.5, 2.4, -0.5, 3, 2.2),
    leg(1.1, 0.4, 3, -0.9, 4, 2.1),
    leg(1.1, 0.2, 3.4, -1.2, 4.8, 1.8),
    leg(1, 0, 3.2, -1.6, 5.2, 1.3),
  ].join(''),
  body: 'M-1.2 -.1C-1.25 -.7 -.8 -1 0 -1S1.25 -.7 1.2 -.1C1.2 .5 .8 .8 0 .8S-1.2 .5 -1.2 -.1Z',
  palps: leg(0.75, 0.65, 1, 1.1, 0.55, 1.75),
  fangs: 'M-.5 .62H-.05V1.45Q-.3 1.62 -.5 1.4ZM.5 .62H.05V1.45Q.3 1.62 .5 1.4Z',
  eyes: [...pair(0.36, 0.02, 0.32), ...pair(0.9, -0.1, 0.17), ...pair(0.98, -0.55, 0.06), ...pair(0.8, -0.78, 0.13)],
} as const;
