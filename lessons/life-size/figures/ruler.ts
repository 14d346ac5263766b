/** A ruler as one buys it: what its finest marks stand apart, and at what steps marks and numbers may be drawn. */
export interface Ruler {
  readonly unit: 'mm' | 'in';
  /** One unit, mm. */
  readonly worth: number;
  /** Marks in units of the ruler; coarser ones where the finest would run together. */
  readonly marks: readonly number[];
  readonly numbers: readonly number[];
}

/** Width of a printed mark, mm: about what ordinary rulers have (common practice, from memory). */
export const markWidth = 0.15;

export const rulers = {
  mm: {
    unit: 'mm',
    worth: 1,
    marks: [1, 5, 10, 50, 100, 500],
    numbers: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000],
  },
  in: {
    unit: 'in',
    worth: 25.4,
    marks: [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 5, 10],
    numbers: [1 / 4, 1 / 2, 1, 2, 5, 10, 20, 50],
  },
} as const satisfies Record<string, Ruler>;

/** The marks of a ruler that reaches *reach* pixels, zero at x = 0, hanging from its edge at y = 0. */
export function rulerMarks(ruler: Ruler, pixelsPerMillimetre: number, reach: number, text: number) {
  const pixels = ruler.worth * pixelsPerMillimetre;
  const firstApart = (steps: readonly number[], room: number) =>
    steps.find((step) => step * pixels >= room) ?? steps.at(-1)!;
  const fine = firstApart(ruler.marks, 3);
  const middle = ruler.marks[ruler.marks.indexOf(fine) + 1] ?? fine;
  const numbered = firstApart(ruler.numbers, 3.6 * text);
  const numbers: { readonly x: number; readonly label: string }[] = [];
  let path = '';
  const last = Math.floor(reach / (fine * pixels));
  for (let index = 0; index <= last; index++) {
    const at = index * fine;
    const x = at * pixels;
    const isNumbered = isMultiple(at, numbered);
    path += `M${x.toFixed(2)} 0v${(text * (isNumbered ? 0.95 : isMultiple(at, middle) ? 0.75 : 0.5)).toFixed(1)}`;
    if (isNumbered) numbers.push({ x, label: index === 0 ? `0 ${ruler.unit}` : quarters(at) });
  }
  return { path, numbers };
}

function isMultiple(value: number, step: number): boolean {
  return Math.abs(value / step - Math.round(value / step)) < 1e-9;
}

/** A number of units as rulers print it: whole, or with quarters. */
function quarters(value: number): string {
  return `${Math.floor(value) || ''} ${['', '1/4', '1/2', '3/4'][(4 * value) % 4]}`.trim();
}

/**
 * The share of a stretch of ruler, mm, that is ink: what one pixel sees of marks of which one begins at 0. A pixel averages what falls
 * on it; the lens is taken as perfect.
 */
export function inkShare({ marks, worth }: Ruler, from: number, to: number): number {
  const spacing = marks[0]! * worth;
  const inkUpTo = (at: number) => {
    const passed = Math.floor(at / spacing);
    return passed * markWidth + Math.min(at - passed * spacing, markWidth);
  };
  return (inkUpTo(to) - inkUpTo(from)) / (to - from);
}
