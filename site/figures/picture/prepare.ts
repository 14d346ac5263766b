import type { Beside } from './display.ts';
import type { PictureJob } from './job.ts';

/** Has *job* made as a picture sheet will ask for it that begins with *beside* and is *arranged* so. */
export async function prepare(
  job: PictureJob | undefined,
  beside: Beside,
  arranged: string | undefined,
): Promise<void> {
  if (!job) return;
  // Where it cannot be fetched the sheet says so, when it is opened.
  const fetched = await import('./preparation.ts').catch(() => undefined);
  fetched?.preparation.want({ ...job, compare: beside === 'sharp' || arranged !== undefined });
}
