import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** A built site: the folder that holds it and the path under which it stands. */
export interface Built {
  readonly folder: string;
  readonly base: string;
}

/** Files of the site with this extension whose names stand in quotes in *text*, which lies in *folder*. */
export function filesNamed(text: string, extension: 'js' | 'css', folder: string, built: Built): string[] {
  const quoted = new RegExp(`["'\`]([^"'\`\\s]+\\.${extension})["'\`]`, 'g');
  return [...text.matchAll(quoted)].flatMap(([, name = '']) => {
    const candidates = name.startsWith(built.base)
      ? [join(built.folder, name.slice(built.base.length))]
      : [join(folder, name), join(built.folder, name)];
    return candidates.filter((file) => file.startsWith(built.folder) && existsSync(file)).slice(0, 1);
  });
}

/** All modules that can be reached from *start* by what *follow* leaves of a module's text, by file. */
export function reachable(
  start: Iterable<string>,
  built: Built,
  follow: (text: string) => string = (text) => text,
): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  const files = new Set(start);
  for (const file of files) {
    const text = readFileSync(file, 'utf8');
    texts.set(file, text);
    for (const next of filesNamed(follow(text), 'js', dirname(file), built)) files.add(next);
  }
  return texts;
}
