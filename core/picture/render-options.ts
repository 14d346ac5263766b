/** How finely a picture is rendered. */
export interface RenderOptions {
  /** In how many depths the scene is blurred at most, a whole number from 1; 24 if absent */
  readonly slices?: number;
  /**
   * Places of the grid per pixel, each way, a whole number from 1 to 8; 1 if absent. With 2 and a scene sampled as finely, patterns too
   * fine for the pixels come back as the false ones that a sensor records, at four times the time.
   */
  readonly oversampling?: number;
  /**
   * Heights of the sharp planes of several frames: each place is as sharp as in the frame whose plane is nearest to it. What a stack comes to
   * when it is merged without a fault, but for what edges hide, at the cost of one frame. The view's own sharp plane alone if absent.
   */
  readonly sharpAt?: readonly number[];
}

/** In how many depths a scene is blurred at most where nothing is said. */
export const usualSlices = 24;

/** Throws RangeError in words for numbers that are none. */
export function requireRenderOptions({ slices = usualSlices, oversampling = 1, sharpAt }: RenderOptions): void {
  requireFrom1('slices', slices, 1000);
  requireFrom1('places of the grid in a pixel', oversampling, 8);
  if (sharpAt && !(sharpAt.length > 0 && sharpAt.every(Number.isFinite)))
    throw new RangeError('the sharp planes lie at no heights; accepted: one finite height or more');
}

function requireFrom1(what: string, count: number, most: number): void {
  if (Number.isInteger(count) && count >= 1 && count <= most) return;
  throw new RangeError(`the number of ${what} is ${count}; accepted: a whole number from 1 to ${most}`);
}
