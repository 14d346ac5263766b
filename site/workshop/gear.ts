import type { Catalogue } from './catalogue.ts';
import { lessonsIn, type Plan } from './plan.ts';

const forEach = ' for each';

/** All that a plan's lessons want brought, each thing once; one for each person is enough for the table, too. */
export function gearFor(plan: Plan, catalogue: Catalogue): readonly string[] {
  const all = new Set(lessonsIn(plan).flatMap((slug) => catalogue[slug]!.bring));
  return [...all].filter((thing) => !all.has(thing + forEach));
}
