import { shareBehindCurtain } from '#core/exposure/shutter-with-flash.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { plotFrame } from '#site/figures/plot/frame.ts';
import { around } from '#site/figures/sheet/boxes.ts';
import { labelBox, placeLabels, type Wanted } from '#site/figures/sheet/labels.ts';

/** Times in s. */
export interface ShutterState {
  /** As set, be it too short for the flash. */
  readonly exposureTime: number;
  readonly syncSpeed: number;
  readonly flashDuration: number;
}

/** Three to two, as the sensors of the crate are about. */
const shape = 1.5;

/**
 * Time in milliseconds along, the picture from its lower to its upper edge upwards: the first curtain leaves at 0 and takes the sync time, the
 * second follows when the exposure time is over.
 */
export function shutterLayout(
  { exposureTime, syncSpeed, flashDuration }: ShutterState,
  words: { readonly time: string; readonly flash: string; readonly covered: string },
  box: SheetBox,
) {
  const end = 1000 * (Math.max(exposureTime, syncSpeed + flashDuration) + syncSpeed);
  const share = 0.66;
  const frame = plotFrame(
    {
      x: { scale: 'linear', domain: [0, end], title: 'ms', format: (at) => String(Number(at.toPrecision(6))) },
      y: {
        scale: 'linear',
        domain: [0, 1],
        title: 'up the picture',
        ticks: [0, 1],
        format: (at) => (at === 0 ? 'foot' : 'top'),
      },
      foot: 1.9 * box.small,
    },
    { ...box, width: share * box.width },
  );
  const x = (seconds: number) => Number(frame.x.at(1000 * seconds).toFixed(2));
  const { top, bottom, left, right } = frame;
  const [sync, set] = [x(syncSpeed), x(exposureTime)];
  const second = x(exposureTime + syncSpeed);
  const pulseEnd = Math.max(sync + 2, x(syncSpeed + flashDuration));
  const covered = shareBehindCurtain({ exposureTime, syncSpeed });
  const width = Math.max(20, box.width - right - 1.6 * box.text);
  const height = Math.min(width / shape, bottom - top);
  const picture = { x: right + 0.9 * box.text, y: top + (bottom - top - height) / 2, width, height };
  const band = { ...picture, y: picture.y + (1 - covered) * height, height: covered * height };
  const grip = { x: 0.5 * (set + second), y: 0.5 * (top + bottom) };
  const named = (key: string, text: string, spots: Wanted['spots'], quantity?: string): Wanted => ({
    key,
    texts: [text],
    size: box.text,
    spots,
    ...(quantity && { quantity }),
  });
  const beside = (at: number, ys: readonly number[]) =>
    ys.flatMap((y) => [
      { x: at + 6, y, anchor: 'start' as const },
      { x: at - 6, y, anchor: 'end' as const },
    ]);
  const rows = [0.12, 0.3, 0.5, 0.7, 0.9].map((part) => top + part * (bottom - top));
  const pictureMiddle = picture.x + width / 2;
  const labels = placeLabels(
    [
      named('flash', words.flash, beside(pulseEnd, rows), 'flash-duration'),
      named('open', `open ${words.time}`, [...beside(grip.x, rows), ...beside(sync, rows)], 'exposure-time'),
      {
        key: 'covered',
        texts: [words.covered],
        size: box.small,
        spots: [
          { x: pictureMiddle, y: picture.y - 0.5 * box.small, anchor: 'middle' },
          { x: box.width - 6, y: picture.y - 0.5 * box.small, anchor: 'end' },
        ],
      },
    ],
    [
      around(grip.x, grip.y, 14),
      ...frame.labels.map(({ text, size, x: at, y, anchor }) => labelBox(text, size, { x: at, y, anchor })),
      { left: picture.x, right: picture.x + width, top: picture.y, bottom: picture.y + height },
    ],
    { left: left + 2, top: 0, right: box.width - 2, bottom },
  );
  return {
    frame,
    labels,
    picture,
    band,
    grip,
    closed: `M${left} ${top}H${sync}L${left} ${bottom}zM${second} ${top}H${right}V${bottom}H${set}z`,
    open: `M${left} ${bottom}L${sync} ${top}H${second}L${set} ${bottom}z`,
    pulse: `M${sync} ${top}H${pulseEnd}V${bottom}H${sync}z`,
    /** How long so many pixels are. */
    seconds: (pixels: number) => (pixels * end) / 1000 / (right - left),
  };
}
