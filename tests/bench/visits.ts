/** What first visits bring, request by request: for finding what to make lighter. */
import { builtPages, lessonPages } from './built.ts';
import { firstVisit, type FirstVisit } from './first-visit.ts';
import { onBuiltSite } from './on-built-site.ts';
import { table } from './table.ts';

const kinds = { HTML: 'Document', JavaScript: 'Script', CSS: 'Stylesheet', fonts: 'Font' };
const head = [...Object.keys(kinds), 'others', 'all', 'requests'];

const kilobytes = (bytes: number) => (bytes / 1000).toFixed(1);

function row({ received, total, requests }: FirstVisit): string[] {
  const of = (kind: string) => received.reduce((sum, one) => sum + (one.kind === kind ? one.bytes : 0), 0);
  const known = Object.values(kinds).map(of);
  const others = total - known.reduce((sum, bytes) => sum + bytes, 0);
  return [...[...known, others, total].map(kilobytes), String(requests)];
}

/**
 * First visits of the built lessons, a line each, in kilobytes; where *wanted* names parts of paths, of such pages, and below it every request of
 * theirs with its bytes.
 */
export function visits(wanted: readonly string[]): Promise<string> {
  const pages =
    wanted.length === 0
      ? lessonPages(builtPages())
      : builtPages().filter((page) => wanted.some((part) => page.includes(part)));
  return onBuiltSite(async (browser, address) => {
    const found: [page: string, visit: FirstVisit][] = [];
    for (const page of pages) found.push([page, await firstVisit(browser, address + page)]);
    const all = table(
      ['page', ...head],
      1,
      found.map(([page, visit]) => [page, ...row(visit)]),
    );
    const requests = found.map(([page, { received }]) => {
      const rows = received.map((one) => [one.address.replace(address, '/'), one.kind, String(one.bytes)]);
      return `/${page}\n\n${table(['request', 'kind', 'bytes'], 2, rows)}`;
    });
    return [all, ...(wanted.length === 0 ? [] : requests), ''].join('\n\n');
  });
}
