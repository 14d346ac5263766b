import { createHash } from 'node:crypto';

const policy = /(<meta http-equiv="content-security-policy" content=")([^"]*)"/;
const inline = (kind: 'script' | 'style') =>
  new RegExp(`<${kind}\\b(?![^>]*\\b(?:src=|type="application/json"))[^>]*>(.+?)</${kind}>`, 'gs');

/**
 * The page *html* with a content policy that names the scripts and styles that stand in it, and no others: the framework names some of its own on
 * every page.
 */
export function withOwnHashes(html: string): string {
  const hashes = (kind: 'script' | 'style') =>
    [...html.matchAll(inline(kind))].map(
      ([, text = '']) => ` 'sha256-${createHash('sha256').update(text).digest('base64')}'`,
    );
  return html.replace(policy, (_, start: string, directives: string) => {
    const bare = directives.replace(/ 'sha(?:256|384|512)-[^']*'/g, '');
    const own = bare.replace(/\b(script|style)-src 'self'/g, (directive, kind: 'script' | 'style') =>
      [directive, ...hashes(kind)].join(''),
    );
    return `${start}${own}"`;
  });
}
