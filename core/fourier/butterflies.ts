import type { Radix, Stage } from './fft-plan.ts';
import type { Scratch } from './scratch.ts';

/**
 * One pass of a transform for each radix: part p and place q of the stride read `radix` numbers *parts* strides apart,
 * transform them, multiply number j by the twiddle p j and write them side by side.
 *
 * Sums are made in double precision and kept in single.
 */
export const butterflies: Readonly<Record<Radix, (scratch: Scratch, stage: Stage, stride: number) => void>> = {
  2: byTwo,
  3: byThree,
  4: byFour,
  5: byFive,
};

function byTwo({ re, im, otherRe, otherIm }: Scratch, { parts, twiddles }: Stage, stride: number): void {
  const apart = parts * stride;
  for (let part = 0; part < parts; part++) {
    const c1 = twiddles[2 * part]!;
    const s1 = twiddles[2 * part + 1]!;
    let to = 2 * part * stride;
    for (let a = part * stride, end = a + stride; a < end; a++, to++) {
      const x0 = re[a]!;
      const y0 = im[a]!;
      const x1 = re[a + apart]!;
      const y1 = im[a + apart]!;
      otherRe[to] = x0 + x1;
      otherIm[to] = y0 + y1;
      const x = x0 - x1;
      const y = y0 - y1;
      otherRe[to + stride] = c1 * x - s1 * y;
      otherIm[to + stride] = c1 * y + s1 * x;
    }
  }
}

const sixth = Math.sqrt(3) / 2;

function byThree({ re, im, otherRe, otherIm }: Scratch, { parts, twiddles }: Stage, stride: number): void {
  const apart = parts * stride;
  for (let part = 0; part < parts; part++) {
    const at = 4 * part;
    const c1 = twiddles[at]!;
    const s1 = twiddles[at + 1]!;
    const c2 = twiddles[at + 2]!;
    const s2 = twiddles[at + 3]!;
    let to = 3 * part * stride;
    for (let a = part * stride, end = a + stride; a < end; a++, to++) {
      const b = a + apart;
      const c = a + 2 * apart;
      const x0 = re[a]!;
      const y0 = im[a]!;
      const xSum = re[b]! + re[c]!;
      const ySum = im[b]! + im[c]!;
      const xTurn = sixth * (im[b]! - im[c]!);
      const yTurn = sixth * (re[c]! - re[b]!);
      otherRe[to] = x0 + xSum;
      otherIm[to] = y0 + ySum;
      const xMid = x0 - 0.5 * xSum;
      const yMid = y0 - 0.5 * ySum;
      const x1 = xMid + xTurn;
      const y1 = yMid + yTurn;
      const x2 = xMid - xTurn;
      const y2 = yMid - yTurn;
      otherRe[to + stride] = c1 * x1 - s1 * y1;
      otherIm[to + stride] = c1 * y1 + s1 * x1;
      otherRe[to + 2 * stride] = c2 * x2 - s2 * y2;
      otherIm[to + 2 * stride] = c2 * y2 + s2 * x2;
    }
  }
}

function byFour({ re, im, otherRe, otherIm }: Scratch, { parts, twiddles }: Stage, stride: number): void {
  const apart = parts * stride;
  for (let part = 0; part < parts; part++) {
    const at = 6 * part;
    const c1 = twiddles[at]!;
    const s1 = twiddles[at + 1]!;
    const c2 = twiddles[at + 2]!;
    const s2 = twiddles[at + 3]!;
    const c3 = twiddles[at + 4]!;
    const s3 = twiddles[at + 5]!;
    let to = 4 * part * stride;
    for (let a = part * stride, end = a + stride; a < end; a++, to++) {
      const b = a + apart;
      const c = a + 2 * apart;
      const d = a + 3 * apart;
      const x0 = re[a]!;
      const y0 = im[a]!;
      const x1 = re[b]!;
      const y1 = im[b]!;
      const x2 = re[c]!;
      const y2 = im[c]!;
      const x3 = re[d]!;
      const y3 = im[d]!;
      const xEven = x0 + x2;
      const yEven = y0 + y2;
      const xOdd = x1 + x3;
      const yOdd = y1 + y3;
      const xApart = x0 - x2;
      const yApart = y0 - y2;
      const xTurn = y1 - y3;
      const yTurn = x3 - x1;
      otherRe[to] = xEven + xOdd;
      otherIm[to] = yEven + yOdd;
      const u1 = xApart + xTurn;
      const v1 = yApart + yTurn;
      const u2 = xEven - xOdd;
      const v2 = yEven - yOdd;
      const u3 = xApart - xTurn;
      const v3 = yApart - yTurn;
      otherRe[to + stride] = c1 * u1 - s1 * v1;
      otherIm[to + stride] = c1 * v1 + s1 * u1;
      otherRe[to + 2 * stride] = c2 * u2 - s2 * v2;
      otherIm[to + 2 * stride] = c2 * v2 + s2 * u2;
      otherRe[to + 3 * stride] = c3 * u3 - s3 * v3;
      otherIm[to + 3 * stride] = c3 * v3 + s3 * u3;
    }
  }
}

/** cos and sin of a fifth and of two fifths of a turn. */
const [cos1, sin1, cos2, sin2] = [1, 2].flatMap((fifths) => [
  Math.cos((2 * Math.PI * fifths) / 5),
  Math.sin((2 * Math.PI * fifths) / 5),
]) as [number, number, number, number];

function byFive({ re, im, otherRe, otherIm }: Scratch, { parts, twiddles }: Stage, stride: number): void {
  const apart = parts * stride;
  for (let part = 0; part < parts; part++) {
    const at = 8 * part;
    const c1 = twiddles[at]!;
    const s1 = twiddles[at + 1]!;
    const c2 = twiddles[at + 2]!;
    const s2 = twiddles[at + 3]!;
    const c3 = twiddles[at + 4]!;
    const s3 = twiddles[at + 5]!;
    const c4 = twiddles[at + 6]!;
    const s4 = twiddles[at + 7]!;
    let to = 5 * part * stride;
    for (let a = part * stride, end = a + stride; a < end; a++, to++) {
      const b = a + apart;
      const c = a + 2 * apart;
      const d = a + 3 * apart;
      const e = a + 4 * apart;
      const x0 = re[a]!;
      const y0 = im[a]!;
      const xOuter = re[b]! + re[e]!;
      const yOuter = im[b]! + im[e]!;
      const xOuterTurn = im[b]! - im[e]!;
      const yOuterTurn = re[e]! - re[b]!;
      const xInner = re[c]! + re[d]!;
      const yInner = im[c]! + im[d]!;
      const xInnerTurn = im[c]! - im[d]!;
      const yInnerTurn = re[d]! - re[c]!;
      otherRe[to] = x0 + xOuter + xInner;
      otherIm[to] = y0 + yOuter + yInner;
      const xA = x0 + cos1 * xOuter + cos2 * xInner;
      const yA = y0 + cos1 * yOuter + cos2 * yInner;
      const xB = x0 + cos2 * xOuter + cos1 * xInner;
      const yB = y0 + cos2 * yOuter + cos1 * yInner;
      const xATurn = sin1 * xOuterTurn + sin2 * xInnerTurn;
      const yATurn = sin1 * yOuterTurn + sin2 * yInnerTurn;
      const xBTurn = sin2 * xOuterTurn - sin1 * xInnerTurn;
      const yBTurn = sin2 * yOuterTurn - sin1 * yInnerTurn;
      const u1 = xA + xATurn;
      const v1 = yA + yATurn;
      const u4 = xA - xATurn;
      const v4 = yA - yATurn;
      const u2 = xB + xBTurn;
      const v2 = yB + yBTurn;
      const u3 = xB - xBTurn;
      const v3 = yB - yBTurn;
      otherRe[to + stride] = c1 * u1 - s1 * v1;
      otherIm[to + stride] = c1 * v1 + s1 * u1;
      otherRe[to + 2 * stride] = c2 * u2 - s2 * v2;
      otherIm[to + 2 * stride] = c2 * v2 + s2 * u2;
      otherRe[to + 3 * stride] = c3 * u3 - s3 * v3;
      otherIm[to + 3 * stride] = c3 * v3 + s3 * u3;
      otherRe[to + 4 * stride] = c4 * u4 - s4 * v4;
      otherIm[to + 4 * stride] = c4 * v4 + s4 * u4;
    }
  }
}
