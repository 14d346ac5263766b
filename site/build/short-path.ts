/** How many numbers each command of a path takes; the coordinates among them are the last, in pairs, but of H and V. */
const takes: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7, z: 0 };
const token = /([a-z])|[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/gi;
/** Hundredths are counted whole, so that steps add up to where a path goes. */
const unit = 100;

interface Step {
  /** In lower case. */
  readonly command: string;
  /** Numbers that are no coordinates: those of an arc. */
  readonly shape: readonly number[];
  /** Coordinates in hundredths from where the step begins. */
  readonly by: readonly number[];
}

const written = (number: number) => String(number).replace(/^(-?)0\./, '$1.');

/** A path's data as steps from one point to the next; undefined where it is none. */
function stepsOf(data: string): Step[] | undefined {
  const tokens = data.match(token) ?? [];
  const steps: Step[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  let command = '';
  for (let at = 0; at < tokens.length;) {
    if (/^[a-z]$/i.test(tokens[at]!)) command = tokens[at++]!;
    // Pairs that follow a first point are lines.
    else command = command.replace('M', 'L').replace('m', 'l');
    const kind = command.toLowerCase();
    const count = takes[kind];
    const numbers = tokens.slice(at, at + (count ?? 0)).map(Number);
    if (count === undefined || numbers.length < count || numbers.some(Number.isNaN)) return undefined;
    if (count === 0 && at < tokens.length && !/^[a-z]$/i.test(tokens[at]!)) return undefined;
    at += count;
    const shape = kind === 'a' ? numbers.slice(0, 5) : [];
    const isRelative = command === kind;
    const by = numbers.slice(shape.length).map((number, index) => {
      const isAcross = kind === 'h' || (kind !== 'v' && index % 2 === 0);
      return Math.round(unit * number) - (isRelative ? 0 : isAcross ? x : y);
    });
    steps.push({ command: kind, shape, by });
    if (kind === 'z') [x, y] = [startX, startY];
    else if (kind === 'h') x += by[0]!;
    else if (kind === 'v') y += by[0]!;
    else {
      x += by.at(-2)!;
      y += by.at(-1)!;
    }
    if (kind === 'm') [startX, startY] = [x, y];
  }
  return steps;
}

/** A step across or down is written as one. */
function straight({ command, shape, by }: Step): Step {
  if (command !== 'l') return { command, shape, by };
  const [across = 0, down = 0] = by;
  if (down === 0) return { command: 'h', shape, by: [across] };
  return across === 0 ? { command: 'v', shape, by: [down] } : { command, shape, by };
}

/**
 * The path *data*, whose numbers have two decimals at most, in fewer bytes: every point from the one before it, which packs far better than where it is
 * on the sheet, and no sign more than it takes. It goes through the same points.
 */
export function shortPath(data: string): string {
  const steps = stepsOf(data);
  if (steps === undefined) return data;
  let text = '';
  let before = '';
  let last = '';
  for (const { command, shape, by } of steps.map(straight)) {
    const isGoingOn = command === before ? command !== 'z' && command !== 'm' : before === 'm' && command === 'l';
    if (!isGoingOn) {
      text += command;
      last = '';
    }
    for (const number of [...shape, ...by.map((one) => one / unit)].map(written)) {
      const isApart = last === '' || number.startsWith('-') || (number.startsWith('.') && last.includes('.'));
      text += isApart ? number : ` ${number}`;
      last = number;
    }
    before = command;
  }
  return text;
}
