/**
 * The few words of WebAssembly that the transforms need: each function gives the bytes of one expression, operands before what is done to them.
 *
 * Source: WebAssembly Core Specification 2.0, chapter 5, binary format (from memory).
 */
export type Code = readonly number[];

/** A whole number, seven bits a byte, the lowest first (LEB128, unsigned). */
export function unsigned(value: number): Code {
  return value < 128 ? [value] : [(value & 127) | 128, ...unsigned(value >>> 7)];
}

/** What has a length before it: vectors, sections, bodies. */
export const counted = (parts: readonly Code[]): Code => [...unsigned(parts.length), ...parts.flat()];
export const sized = (bytes: Code): Code => [...unsigned(bytes.length), ...bytes];
export const section = (id: number, content: Code): Code => [id, ...sized(content)];
export const name = (text: string): Code => sized(Array.from(text, (letter) => letter.charCodeAt(0)));

export const i32 = 0x7f;
export const v128 = 0x7b;

export const get = (local: number): Code => [0x20, ...unsigned(local)];
export const set = (local: number, value: Code): Code => [...value, 0x21, ...unsigned(local)];
/** A whole number below 64. */
export const whole = (value: number): Code => [0x41, value];
export const plus = (a: Code, b: Code): Code => [...a, ...b, 0x6a];
export const times = (a: Code, b: Code): Code => [...a, ...b, 0x6c];
/** Runs *body* and again as long as *a* < *b* afterwards, both addresses. */
export const loopWhile = (a: Code, b: Code, body: Code): Code => [
  ...[0x03, 0x40, ...body],
  ...[...a, ...b, 0x49, 0x0d, 0x00, 0x0b],
];

const vector = (operation: number): Code => [0xfd, ...unsigned(operation)];
/** Four neighbouring numbers of 32 bits, from an address that is a multiple of 4. */
export const load = (address: Code): Code => [...address, ...vector(0x00), 2, 0];
export const store = (address: Code, value: Code): Code => [...address, ...value, ...vector(0x0b), 2, 0];
/** One number, *offset* bytes behind an address, four times. */
export const loadFourfold = (address: Code, offset: number): Code => [
  ...address,
  ...vector(0x09),
  2,
  ...unsigned(offset),
];
export const fourfold = (value: number): Code => [
  0x43,
  ...new Uint8Array(Float32Array.of(value).buffer),
  ...vector(0x13),
];
export const add = (a: Code, b: Code): Code => [...a, ...b, ...vector(0xe4)];
export const sub = (a: Code, b: Code): Code => [...a, ...b, ...vector(0xe5)];
export const mul = (a: Code, b: Code): Code => [...a, ...b, ...vector(0xe6)];
