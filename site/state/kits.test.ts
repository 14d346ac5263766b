import { expect, it } from 'vitest';
import { requireKit } from '#core/rig/kit/require-kit.ts';
import { cameraRow, kits, wish, wishSlugs } from './kits.ts';
import type { LensSlug } from './crate.ts';
import { standsOut } from './stands-out.ts';

const rows = [...kits.crate.rows, ...wishSlugs.map(wish)];

it('has what stands out behind a flange as the glass has it', () => {
  for (const row of rows) {
    if (row.part === 'lens') expect(row.lens.rearProtrusion, row.id).toBe(standsOut(row.id as LensSlug));
  }
});

it('holds kits without a fault, alone and with the whole wish list', () => {
  for (const slug of Object.keys(kits) as (keyof typeof kits)[]) {
    const own = kits[slug].rows;
    const lacking = wishSlugs.map(wish).filter(({ id }) => own.every((row) => row.id !== id));
    expect(() => requireKit([cameraRow(36, 0.02), ...own, ...lacking])).not.toThrow();
  }
});
