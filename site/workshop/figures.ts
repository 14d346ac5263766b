import { figures } from 'virtual:figures';

/** Fetches the figure of a lesson. Rejects where the network does not give it. */
export async function figureOf(lesson: string) {
  return (await figures[lesson]!()).figure;
}
