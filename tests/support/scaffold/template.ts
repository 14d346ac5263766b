import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = join(import.meta.dirname, 'templates');

/**
 * The templates of one *kind*, `templates/<kind>/**`, filled in: path within it, without `.txt`, to text with each `{{mark}}` replaced.
 *
 * @throws Error for a mark that *marks* does not have
 */
export function filledTemplates(
  kind: string,
  marks: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const paths = globSync('**/*.txt', { cwd: join(folder, kind) });
  if (paths.length === 0) throw new Error(`no templates/${kind}/**/*.txt`);
  const texts = paths.sort().map((path) => {
    const text = readFileSync(join(folder, kind, path), 'utf8').replace(/\{\{(\w+)\}\}/g, (_, mark: string) => {
      if (marks[mark] === undefined) throw new Error(`templates/${kind}/${path}: nothing is called ${mark}`);
      return marks[mark];
    });
    return [path.replaceAll('\\', '/').replace(/\.txt$/, ''), text] as const;
  });
  return Object.fromEntries(texts);
}
