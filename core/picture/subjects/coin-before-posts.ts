import type { Surface } from '../scene.ts';
import { bandLimit, painted, ramp, within } from './canvas.ts';
import { type Subject, type SceneOptions, subjectFrom } from './subject.ts';
import { grain } from './value-noise.ts';

/**
 * A flat coin on a stick in the sharp plane, and a row of posts behind it, as the entrance pupil sees them: lengths in mm on the sharp plane.
 *
 * What is δ behind the sharp plane is seen (u + δ)/u times as small as it is, and blurred as a place δ u/(u + δ) behind is by a pupil at
 * infinity: with both told so, a background at any distance fits on one grid.
 */
export interface CoinBeforePosts {
  /** Of the coin, from side to side */
  readonly coinWidth: number;
  /** From post to post, as wide as it looks in the sharp plane; 0 where that is finer than any picture */
  readonly postSpacing: number;
  /** From the sharp plane to the posts, for a pupil at infinity; 0 or above */
  readonly behind: number;
}

/** Share of the row's length that posts take. */
const postShare = 0.34;
/** Where a post has its middle, in shares of the spacing: no post right behind the stick. */
const firstPost = 0.5;

function posts({ postSpacing, coinWidth }: CoinBeforePosts, options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const [leaves, bark] = [grain(0.22 * coinWidth, pitch, seed), grain(0.03 * coinWidth, pitch, seed + 4)];
  // As a mean grey where the row is too fine for the picture.
  const fine = postSpacing > 0 ? bandLimit(postSpacing, pitch) : 0;
  return painted(options, (x, y, sample) => {
    const place = postSpacing > 0 ? x / postSpacing - firstPost : 0;
    const off = Math.abs(place - Math.round(place)) * postSpacing - (postShare * postSpacing) / 2;
    const isPost = fine * within(off, pitch) + (1 - fine) * postShare;
    const meadow = 0.75 + 0.5 * leaves(x, y);
    const wood = 0.9 + 0.2 * bark(x, 0.2 * y);
    sample.red = 0.05 * meadow * (1 - isPost) + 0.78 * wood * isPost;
    sample.green = 0.2 * meadow * (1 - isPost) + 0.7 * wood * isPost;
    sample.blue = 0.06 * meadow * (1 - isPost) + 0.55 * wood * isPost;
    sample.height = 0;
  });
}

/** Copper with a raised rim, beads inside it and a star; a dark stick holds it from below. */
function coin({ coinWidth, behind }: CoinBeforePosts, options: SceneOptions): Surface {
  const { pitch, seed } = options;
  const radius = coinWidth / 2;
  const scratches = grain(0.02 * coinWidth, pitch, seed + 8);
  return painted(options, (x, y, sample) => {
    sample.height = behind;
    const off = Math.hypot(x, y) / radius;
    const inCoin = within((off - 1) * radius, pitch);
    const inStick = y > 0 ? within(Math.abs(x) - 0.045 * radius, pitch) : 0;
    sample.coverage = Math.max(inCoin, inStick);
    if (sample.coverage === 0) return;
    if (inCoin === 0) {
      sample.red = 0.07;
      sample.green = 0.06;
      sample.blue = 0.05;
      return;
    }
    const turn = Math.atan2(y, x);
    const beads = 0.5 + 0.5 * Math.cos(48 * turn);
    const rim = ramp(0.9, 0.93, off);
    const bead = beads * ramp(0.05, 0.02, Math.abs(off - 0.82));
    const star = ramp(0.05, -0.05, off - 0.38 - 0.2 * Math.cos(5 * turn + Math.PI / 2));
    const slope = 0.5 + 0.5 * Math.cos(turn + 2.2);
    const shade = 0.42 + 0.3 * rim * slope + 0.35 * bead + 0.4 * star * (0.6 + 0.4 * slope) + 0.06 * scratches(x, y);
    sample.red = 0.95 * shade;
    sample.green = 0.52 * shade;
    sample.blue = 0.26 * shade;
  });
}

/** The two as something to photograph, its deepest place the posts. */
export function coinBeforePosts(given: CoinBeforePosts): Subject {
  return subjectFrom({
    slug: 'coin-before-posts',
    name: 'Coin before a row of posts',
    width: given.coinWidth,
    height: given.coinWidth,
    depth: given.behind,
    says: 'A coin on a stick; behind it a row of pale posts before a meadow.',
    surfaces: (options) => [coin(given, options), posts(given, options)],
  });
}
