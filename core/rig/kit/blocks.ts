import { backsOf, type Backs } from './back.ts';
import { frontsOf, type Front } from './front.ts';
import type { Case, Judgement } from './case.ts';
import { judge } from './judge.ts';
import { kindsOf, ofPart } from './kinds.ts';
import type { KitCamera, KitRow, KitSubject } from './kit.ts';
import { mountWalk, walkOf } from './walk.ts';

/** Chains with the same camera and front, one for each back; what is alike in length is judged once. */
export interface Block {
  readonly camera: KitCamera;
  readonly front: Front;
  readonly backs: Backs;
  /** Number of its first chain, and of its first judgement. */
  readonly first: number;
  readonly judged: number;
}

/** All chains of a kit, in an order that only the names of its parts decide. */
export function blocksOf(kit: readonly KitRow[]): readonly Block[] {
  const kinds = kindsOf(kit);
  const mounts = new Map<string, { fronts: readonly Front[]; backs: Backs }>();
  const blocks: Block[] = [];
  let first = 0;
  let judged = 0;
  for (const { row: camera } of ofPart(kinds, 'camera')) {
    const known = mounts.get(camera.mount);
    const { fronts, backs } = known ?? { fronts: frontsOf(kinds, camera.mount), backs: backsOf(kinds, camera.mount) };
    if (!known) mounts.set(camera.mount, { fronts, backs });
    for (const front of fronts) {
      blocks.push({ camera, front, backs, first, judged });
      first += backs.all.length;
      judged += backs.lengths.length;
    }
  }
  return blocks;
}

/** Judges each length of each block once. */
export function judgeAll(blocks: readonly Block[], subject: KitSubject) {
  const last = blocks.at(-1);
  const count = last ? last.judged + last.backs.lengths.length : 0;
  const codes = new Uint8Array(count);
  const merits = new Float64Array(count);
  const focusMagnifications = new Float64Array(count);
  const fNumbers = new Float64Array(count);
  const rooms = new Float64Array(count);
  const effectiveFNumbers = new Float64Array(count);
  const magnifications = new Float64Array(count);
  const found: Judgement = {
    verdict: 0,
    focusMagnification: 0,
    fNumber: 0,
    effectiveFNumber: 0,
    magnification: 0,
    merit: 0,
    room: 0,
  };
  for (const { camera, front, backs, judged } of blocks) {
    const walk = walkOf(front);
    const { lens } = front;
    const filling = camera.sensorWidth / subject.subjectWidth;
    const one: Case = { walk, camera, lens, stopsDown: false, subject, filling };
    const reversing = front.reversingRing?.extension ?? 0;
    const byItself = lens.lens.apertureControl === 'lens';
    for (let index = 0; index < backs.lengths.length; index++) {
      const back = backs.lengths[index]!;
      mountWalk(walk, camera, back, reversing);
      one.stopsDown = byItself || (back.contacts && !walk.reversed);
      judge(one, found);
      codes[judged + index] = found.verdict;
      merits[judged + index] = found.merit;
      focusMagnifications[judged + index] = found.focusMagnification;
      fNumbers[judged + index] = found.fNumber;
      rooms[judged + index] = found.room;
      effectiveFNumbers[judged + index] = found.effectiveFNumber;
      magnifications[judged + index] = found.magnification;
    }
  }
  return { codes, merits, focusMagnifications, fNumbers, effectiveFNumbers, magnifications, rooms };
}
