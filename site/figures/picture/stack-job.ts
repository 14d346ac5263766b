/** Several frames of one job, as plain data. Depths are counted from the deepest place of the subject, mm towards the camera. */
export interface StackJob {
  /** Between the sharp planes of neighbouring frames, mm on the subject; where the steps differ, one for each frame but the last. */
  readonly frameStep: number | readonly number[];
  readonly frameCount: number;
  /** Height of the first frame's sharp plane; the others follow, deeper and deeper. */
  readonly firstHeight: number;
  /** How the sharp plane is moved. */
  readonly by: 'rail' | 'focus-ring';
  /** Of the lens, where it is moved by itself. */
  readonly focalLength: number;
  /** How frames are brought to one scale before they are merged. */
  readonly scale: 'known' | 'estimated' | 'uncorrected';
  /** Frames that are missing, counted from 0. */
  readonly lost: readonly number[];
  /** How many are taken at all, from the first on; all where left out. */
  readonly taken?: number;
  /** One frame alone is wanted, counted from 0, instead of the merged picture. */
  readonly only?: number;
}
