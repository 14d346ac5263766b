import katex from 'katex';

/** What KaTeX reads a formula into: only what takes room. Its types leave the reader out. */
interface Piece {
  readonly type: string;
  readonly text?: string;
  readonly name?: string;
  readonly body?: Piece | readonly (Piece | readonly Piece[])[];
  readonly base?: Piece | null;
  readonly sup?: Piece | null;
  readonly sub?: Piece | null;
  readonly numer?: Piece;
  readonly denom?: Piece;
}
const { __parse: pieces } = katex as unknown as { __parse: (tex: string, options: object) => readonly Piece[] };

const relations = new Set(['=', '<', '>', '\\le', '\\ge', '\\approx']);
const operators = new Set(['+', '-', '\\times', '\\cdot']);

/** About how wide a displayed formula will be, in em of its own type: on the safe side, so that it can be set to fit its column. */
export function widthOf(tex: string): number {
  return widthOfAll(pieces(tex, { displayMode: true, strict: 'ignore', trust: true }));
}

function widthOfAll(body: Piece['body'] | null): number {
  if (body === undefined || body === null) return 0;
  if (!('length' in body)) return widthOfPiece(body);
  return body.reduce((sum, part) => sum + ('type' in part ? widthOfPiece(part) : widthOfAll(part)), 0);
}

function widthOfPiece(piece: Piece): number {
  const { type, text = '', name = '', body, base, sup, sub, numer, denom } = piece;
  if (type === 'atom') return relations.has(text) ? 1.35 : operators.has(text) ? 1.25 : 0.45;
  if (type === 'mathord') return text === 'm' ? 0.88 : 0.62;
  if (type === 'textord') return 0.5;
  if (type === 'op' && name !== '') return 0.5 * (name.length - 1) + 0.17;
  if (type === 'spacing' || type === 'kern') return 0.25;
  if (type === 'genfrac') return 0.24 + Math.max(widthOfAll(numer), widthOfAll(denom));
  if (type === 'supsub') return widthOfAll(base) + 0.05 + 0.7 * Math.max(widthOfAll(sup), widthOfAll(sub));
  if (type === 'leftright') return 1.2 + widthOfAll(body);
  if (type === 'sqrt') return 1 + widthOfAll(body);
  if (type === 'array') return Math.max(...(body as readonly (readonly Piece[])[]).map(widthOfAll));
  return widthOfAll(body);
}
