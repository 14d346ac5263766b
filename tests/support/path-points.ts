/** Every point that an SVG path of straight lines and quadratic curves goes by, control points included. */
export function pathPoints(path: string): { x: number; y: number }[] {
  const points: { x: number; y: number }[] = [];
  let [x, y] = [0, 0];
  for (const [, command = '', rest = ''] of path.matchAll(/([MLHVQZmlhvqz])([^MLHVQZmlhvqz]*)/g)) {
    const numbers = rest.match(/-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?|NaN|-?Infinity/g)?.map(Number) ?? [];
    const isRelative = command === command.toLowerCase();
    const kind = command.toUpperCase();
    const take = (across: number | undefined, up: number | undefined) => {
      [x, y] = [across ?? x, up ?? y];
      points.push({ x, y });
    };
    if (kind === 'H') for (const number of numbers) take(isRelative ? x + number : number, undefined);
    else if (kind === 'V') for (const number of numbers) take(undefined, isRelative ? y + number : number);
    else {
      for (let index = 0; index + 1 < numbers.length; index += 2) {
        const [across, up] = [numbers[index]!, numbers[index + 1]!];
        take(isRelative ? x + across : across, isRelative ? y + up : up);
      }
    }
  }
  return points;
}
