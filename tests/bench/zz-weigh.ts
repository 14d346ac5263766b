import { readFileSync, existsSync } from 'node:fs';
import { join, dirname } from 'node:path';
import { gzipSync } from 'node:zlib';
import { dist, fileOf } from './built.ts';
import { builtBase } from '../support/built-base.ts';
const page = process.argv[2]!;
const html = readFileSync(fileOf(page), 'utf8');
const base = builtBase();
const named = (t: string, folder: string) => [...t.matchAll(/["'`]([^"'`\s]+\.js)["'`]/g)].flatMap(([, n]) => [n!.startsWith(base) ? join(dist, n!.slice(base.length)) : join(folder, n!), join(dist, n!)].filter((f) => existsSync(f)).slice(0, 1));
const st = (t: string) => [...t.matchAll(/\b(?:from|import)\s*["'`][^"'`]+["'`]/g)].join('\n');
const files = new Set(named(html, dirname(fileOf(page))));
let sum = 0;
for (const f of files) { const t = readFileSync(f, 'utf8'); const g = gzipSync(t, { level: 9 }).length; sum += g; console.log(g, t.length, f.slice(dist.length)); for (const n of named(st(t), dirname(f))) files.add(n); }
console.log(sum);
