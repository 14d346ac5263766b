/** The version in which kits are written. */
export const currentVersion = 1;

/** What makes a kit of one version into one of the next, by the version that it is of. */
export type Upgrades = Readonly<Record<number, (old: Readonly<Record<string, unknown>>) => Record<string, unknown>>>;

/** None so far: there has been one version. */
const upgrades: Upgrades = {};

/** A kit of *version* brought up to the present one, step by step. It is checked afterwards, as any is. */
export function upgraded(
  data: Readonly<Record<string, unknown>>,
  version: number,
  steps: Upgrades = upgrades,
  to: number = currentVersion,
): Readonly<Record<string, unknown>> {
  let kit = data;
  for (let at = version; at < to; at++) kit = { ...steps[at]!(kit), version: at + 1 };
  return kit;
}
