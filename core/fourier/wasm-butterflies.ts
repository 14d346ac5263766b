import type { Radix } from './fft-plan.ts';
import {
  add,
  type Code,
  counted,
  fourfold,
  get,
  i32,
  load,
  loadFourfold,
  loopWhile,
  mul,
  name,
  plus,
  section,
  set,
  sized,
  store,
  sub,
  times,
  unsigned,
  v128,
  whole,
} from './wasm-code.ts';

/** A complex vector: where its two halves are. */
type Complex = readonly [re: Code, im: Code];

/** Keeps a value in a local of its own, and gives the code that reads it. */
type Keep = (value: Code) => Code;

const sum = ([a, b]: Complex, [c, d]: Complex): Complex => [add(a, c), add(b, d)];
const difference = ([a, b]: Complex, [c, d]: Complex): Complex => [sub(a, c), sub(b, d)];
const scaled = ([a, b]: Complex, by: Code): Complex => [mul(a, by), mul(b, by)];
/** Times −i. */
const timesMinusI = ([a, b]: Complex, keep: Keep): Complex => [b, keep(sub(keep(fourfold(0)), a))];

/** The transforms of 2, 3, 4 and 5 numbers, as in `butterflies.ts`: statements for what is used twice are put down by *keep*. */
const transforms: Readonly<
  Record<Radix, (x: readonly Complex[], keepBoth: (value: Complex) => Complex, keep: Keep) => Complex[]>
> = {
  2: ([a, b]) => [sum(a!, b!), difference(a!, b!)],
  3: ([a, b, c], keepBoth, keep) => {
    const both = keepBoth(sum(b!, c!));
    const turn = keepBoth(timesMinusI(keepBoth(scaled(difference(b!, c!), fourfold(Math.sqrt(3) / 2))), keep));
    const middle = keepBoth(difference(a!, scaled(both, fourfold(0.5))));
    return [sum(a!, both), sum(middle, turn), difference(middle, turn)];
  },
  4: ([a, b, c, d], keepBoth, keep) => {
    const even = keepBoth(sum(a!, c!));
    const odd = keepBoth(sum(b!, d!));
    const apart = keepBoth(difference(a!, c!));
    const turn = keepBoth(timesMinusI(keepBoth(difference(b!, d!)), keep));
    return [sum(even, odd), sum(apart, turn), difference(even, odd), difference(apart, turn)];
  },
  5: ([a, b, c, d, e], keepBoth, keep) => {
    const [cos1, sin1, cos2, sin2] = [1, 2].flatMap((fifths) => [
      fourfold(Math.cos((2 * Math.PI * fifths) / 5)),
      fourfold(Math.sin((2 * Math.PI * fifths) / 5)),
    ]) as [Code, Code, Code, Code];
    const outer = keepBoth(sum(b!, e!));
    const inner = keepBoth(sum(c!, d!));
    const outerTurn = keepBoth(timesMinusI(keepBoth(difference(b!, e!)), keep));
    const innerTurn = keepBoth(timesMinusI(keepBoth(difference(c!, d!)), keep));
    const first = keepBoth(sum(a!, sum(scaled(outer, cos1), scaled(inner, cos2))));
    const second = keepBoth(sum(a!, sum(scaled(outer, cos2), scaled(inner, cos1))));
    const firstTurn = keepBoth(sum(scaled(outerTurn, sin1), scaled(innerTurn, sin2)));
    const secondTurn = keepBoth(difference(scaled(outerTurn, sin2), scaled(innerTurn, sin1)));
    return [
      sum(a!, sum(outer, inner)),
      sum(first, firstTurn),
      sum(second, secondTurn),
      difference(second, secondTurn),
      difference(first, firstTurn),
    ];
  },
};

/** What a pass is given: addresses in bytes of where it reads and writes and of its twiddles, the number of parts, the stride in bytes. */
const [re, im, otherRe, otherIm, twiddles, parts, stride] = [0, 1, 2, 3, 4, 5, 6] as const;
const [apart, end, last] = [7, 8, 9] as const;
const firstVector = 10;

/** One pass, four numbers at a time; the stride has to be a multiple of 16 bytes. Reads straight on from part to part. */
function pass(radix: Radix): Code {
  let vectors = firstVector;
  let statements: Code = [];
  const keep: Keep = (value) => {
    statements = [...statements, ...set(vectors, value)];
    return get(vectors++);
  };
  const keepBoth = ([a, b]: Complex): Complex => [keep(a), keep(b)];
  const taken = () => {
    const code = statements;
    statements = [];
    return code;
  };
  const count = Array.from({ length: radix }, (_, j) => j);
  const from = (address: number, j: number, step: number) =>
    j === 0 ? get(address) : plus(get(address), times(get(step), whole(j)));
  const onwards = (address: number, by: Code) => set(address, plus(get(address), by));

  const turns = count
    .slice(1)
    .map((j): Complex => [
      keep(loadFourfold(get(twiddles), 8 * (j - 1))),
      keep(loadFourfold(get(twiddles), 8 * (j - 1) + 4)),
    ]);
  const readTwiddles = taken();
  const read = count.map((j) => keepBoth([load(from(re, j, apart)), load(from(im, j, apart))]));
  const results = transforms[radix](read, keepBoth, keep).map(keepBoth);
  const writes = results.flatMap(([x, y], j): Code => {
    const turn = turns[j - 1];
    const [u, v] = turn ? [sub(mul(x, turn[0]), mul(y, turn[1])), add(mul(y, turn[0]), mul(x, turn[1]))] : [x, y];
    return [...store(from(otherRe, j, stride), u), ...store(from(otherIm, j, stride), v)];
  });
  const inner = [
    ...taken(),
    ...writes,
    ...[re, im, otherRe, otherIm].flatMap((address) => onwards(address, whole(16))),
  ];
  const skipped = times(get(stride), whole(radix - 1));
  const body = [
    ...set(apart, times(get(parts), get(stride))),
    ...set(last, plus(get(re), get(apart))),
    ...loopWhile(get(re), get(last), [
      ...readTwiddles,
      ...onwards(twiddles, whole(8 * (radix - 1))),
      ...set(end, plus(get(re), get(stride))),
      ...loopWhile(get(re), get(end), inner),
      ...onwards(otherRe, skipped),
      ...onwards(otherIm, skipped),
    ]),
  ];
  const locals = counted([
    [3, i32],
    [...unsigned(vectors - firstVector), v128],
  ]);
  return sized([...locals, ...body, 0x0b]);
}

export const radices = [2, 3, 4, 5] as const;

/** A module of one pass for each radix, named by it, that works in the memory it is given as `room.memory`. */
export function butterflyModule(): Uint8Array<ArrayBuffer> {
  const type = [0x60, ...counted(new Array<Code>(7).fill([i32])), 0];
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 1, 0, 0, 0],
    ...section(1, counted([type])),
    ...section(2, counted([[...name('room'), ...name('memory'), 2, 0, 1]])),
    ...section(3, counted(radices.map(() => [0]))),
    ...section(7, counted(radices.map((radix, index) => [...name(`${radix}`), 0, index]))),
    ...section(10, counted(radices.map(pass))),
  ]);
}
