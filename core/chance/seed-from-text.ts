/**
 * A whole number from 0 to 2³² − 1 for a text, the same wherever it is computed: FNV-1a at 32 bits, over the text's UTF-16 units.
 *
 * Source: Fowler, Noll, Vo and Eastlake, The FNV Non-Cryptographic Hash Algorithm (draft-eastlake-fnv).
 *
 * @example seedFromText('a') // 0xe40c292c
 */
export function seedFromText(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}
