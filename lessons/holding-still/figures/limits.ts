import { printNumber, printQuantity } from '#core/quantity/print.ts';
import type { SheetBox } from '#site/controls/workbench/workbench.ts';
import { plotFrame } from '#site/figures/plot/frame.ts';
import { curvePath, logSamples } from '#site/figures/plot/plot.ts';
import { around, type Box } from '#site/figures/sheet/boxes.ts';
import { placeLabels, type Spot, type Wanted } from '#site/figures/sheet/labels.ts';

/** Longest times, s, by what moves: at any magnification. */
export interface LimitsGiven {
  readonly magnification: number;
  readonly exposureTime: number;
  readonly circleOfConfusion: number;
  /** Engraved: what the rule of thumb goes by, mm. */
  readonly engraved: number;
  /** Undefined where the lens has no such focus. */
  readonly slowest: number | undefined;
  readonly curves: readonly {
    readonly name: 'shake-rate' | 'sideways-speed' | 'subject-speed' | 'exposure-time';
    readonly word: string;
    readonly timeAt: (magnification: number) => number | undefined;
  }[];
}

export const magnifications = [0.02, 20] as const;
/** Up to here the times have to be on the sheet; beyond, they may leave it. */
const usual = 5;

const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
/** Decades as cameras write them, where there is room for that. */
function tick(time: number): string {
  const power = Math.round(Math.log10(time));
  if (power > -5 && power < 5) return printNumber('exposure-time', time, { exact: true }).number;
  return `10${power < 0 ? '⁻' : ''}${[...String(Math.abs(power))].map((digit) => superscripts[Number(digit)]).join('')}`;
}

/** Whole decades that hold the time that is set, the rule and the longest times of all together, and no more of the others than that. */
export function decadesOf({ exposureTime, engraved, curves }: LimitsGiven, samples: readonly number[]) {
  const together = curves.at(-1)!;
  const all = [
    exposureTime,
    1 / engraved,
    ...samples.filter((at) => at <= usual).flatMap((at) => together.timeAt(at) ?? []),
  ];
  const decade = (value: number, round: (log: number) => number) => 10 ** round(Math.log10(value));
  return [decade(Math.min(...all) / 1.5, Math.floor), decade(Math.max(...all) * 1.5, Math.ceil)] as const;
}

/** The curves, the rule as a dashed line, the time that is set as a level, and the words at them. */
export function limitsLayout(given: LimitsGiven, box: SheetBox) {
  const { magnification, exposureTime, engraved, slowest, curves, circleOfConfusion } = given;
  const { text, small } = box;
  const samples = logSamples(magnifications[0], magnifications[1], 61);
  const frame = plotFrame(
    {
      x: {
        scale: 'log',
        domain: magnifications,
        title: 'magnification m',
        format: (at) => printQuantity('magnification', at),
      },
      y: {
        scale: 'log',
        domain: decadesOf(given, samples),
        title: `longest time for ${printQuantity('circle-of-confusion', circleOfConfusion)}, s`,
        format: tick,
      },
      foot: 1.9 * small,
    },
    box,
  );
  const { x, y, left, right, top, bottom } = frame;
  const inside = (at: number) => Math.min(bottom, Math.max(top, at));
  const lines = curves.map(({ name, word, timeAt }) => {
    const points = samples.map((at) => {
      const time = timeAt(at);
      const place = time === undefined ? NaN : y.at(time);
      return [at, place >= top - 1 && place <= bottom + 1 ? time! : NaN] as const;
    });
    const seen = points.filter(([, time]) => !Number.isNaN(time));
    return { name, word, seen, path: curvePath(points, x.at, y.at) };
  });
  const here = {
    x: x.at(magnification),
    y: slowest === undefined ? bottom : inside(y.at(slowest)),
  };
  const isOff = slowest !== undefined && inside(y.at(slowest)) !== y.at(slowest);
  const level = { x: left + 20, y: inside(y.at(exposureTime)) };
  const rule = inside(y.at(1 / engraved));
  const crossed: Box[] = [
    ...lines.flatMap(({ seen }) => seen.map(([at, time]) => around(x.at(at), y.at(time), 3))),
    { left, right, top: rule - 1, bottom: rule + 1 },
    { left, right, top: level.y - 1, bottom: level.y + 1 },
  ];
  const beside = (atX: number, atY: number): Spot[] =>
    [-0.6, 1.4, -1.9, 2.7, -3.2, 4].flatMap((down): Spot[] => [
      { x: atX + 18, y: atY + down * text, anchor: 'start' },
      { x: atX - 18, y: atY + down * text, anchor: 'end' },
    ]);
  const along = (seen: (typeof lines)[number]['seen']): Spot[] =>
    [0.85, 0.7, 0.55, 0.4, 0.25, 0.1, 0.95].flatMap((part): Spot[] => {
      const point = seen[Math.floor(part * (seen.length - 1))];
      if (!point) return [];
      const [atX, atY] = [x.at(point[0]), y.at(point[1])];
      return [-0.5, 1.2].flatMap((down): Spot[] => [
        { x: atX + 4, y: atY + down * text, anchor: down < 0 ? 'start' : 'end' },
      ]);
    });
  const wanted: Wanted[] = [
    {
      key: 'here',
      texts:
        slowest === undefined
          ? ['no such focus']
          : isOff
            ? [`longest ${printQuantity('exposure-time', slowest)}, off the sheet`, 'off the sheet']
            : [`longest ${printQuantity('exposure-time', slowest)}`],
      size: text,
      spots: beside(here.x, here.y),
      quantity: 'exposure-time',
    },
    {
      key: 'level',
      texts: [`set ${printQuantity('exposure-time', exposureTime)}`],
      size: text,
      spots: [-0.5, 1.2].flatMap((down): Spot[] => [
        { x: level.x + 16, y: level.y + down * text, anchor: 'start' },
        { x: right - 4, y: level.y + down * text, anchor: 'end' },
      ]),
      quantity: 'exposure-time',
    },
    {
      key: 'rule',
      texts: [`rule 1/f, ${printQuantity('exposure-time', 1 / engraved)}`, 'rule 1/f'],
      size: text,
      spots: [0.98, 0.6, 0.8, 0.4].flatMap((part): Spot[] =>
        [-0.4, 1.1].map((down) => ({ x: left + part * (right - left), y: rule + down * text, anchor: 'end' })),
      ),
      quantity: 'focal-length',
    },
    ...lines.map(({ name, word, seen }): Wanted => ({
      key: name,
      texts: [word],
      size: text,
      spots: along(seen),
      quantity: name,
    })),
  ];
  const taken = [around(here.x, here.y, 14), around(level.x, level.y, 14)];
  return {
    frame,
    lines,
    here,
    level,
    rule: `M${left} ${rule}H${right}`,
    set: `M${left} ${level.y}H${right}`,
    labels: placeLabels(wanted, taken, { left, top: top + 1, right, bottom: bottom - 2 }, crossed),
  };
}
