import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { chanceFrom } from '#core/chance/chance-from.ts';
import { root } from '../support/run.ts';

/** A piece of code at the top of its file: a function, most often. */
interface Piece {
  readonly file: string;
  readonly first: number;
  readonly last: number;
}

const holdsCode = (statement: ts.Statement): boolean =>
  !ts.isImportDeclaration(statement) &&
  !ts.isExportDeclaration(statement) &&
  !ts.isInterfaceDeclaration(statement) &&
  !ts.isTypeAliasDeclaration(statement);

function piecesOf(file: string): readonly Piece[] {
  const source = ts.createSourceFile(file, readFileSync(join(root, file), 'utf8'), ts.ScriptTarget.Latest);
  const lineOf = (position: number): number => source.getLineAndCharacterOfPosition(position).line + 1;
  return source.statements
    .filter(holdsCode)
    .map((statement) => ({ file, first: lineOf(statement.getStart(source)), last: lineOf(statement.end) }));
}

/**
 * Part so many of a topic's code, as ranges of lines: every function is in one part, whole, and which is chance. Each part has as many long and short ones
 * as any other, so that one part is a fair sample of the topic. The same code, the same parts.
 *
 * @param part from 1 to `of`
 */
export function linesOfPart(topic: string, part: number, of: number): readonly string[] {
  const files = globSync(`core/${topic}/**/*.ts`, { cwd: root }).filter((file) => !file.endsWith('.test.ts'));
  const pieces = files.sort().flatMap(piecesOf);
  const byLength = pieces.sort((one, other) => other.last - other.first - (one.last - one.first));
  const chance = chanceFrom(of);
  const drawn: Piece[] = [];
  for (let at = 0; at < byLength.length; at += of) {
    const alike = byLength.slice(at, at + of);
    // Every part is as likely for each, in the last and incomplete round as well.
    const places = Array.from({ length: of }, (_, place) => ({ place, draw: chance() }))
      .sort((one, other) => one.draw - other.draw)
      .map(({ place }) => place);
    alike.forEach((piece, index) => {
      if (places[index] === part - 1) drawn.push(piece);
    });
  }
  return drawn.map(({ file, first, last }) => `${file}:${first}-${last}`);
}

/** True of lines of a file that are in one of these ranges, or where these are no ranges of lines. */
export function liesIn(ranges: readonly string[], file: string, first: number, last: number): boolean {
  return ranges.some((range) => {
    const [, inFile, from, to] = /^(.*):(\d+)-(\d+)$/.exec(range) ?? [];
    return inFile === undefined || (inFile === file && first >= Number(from) && last <= Number(to));
  });
}
