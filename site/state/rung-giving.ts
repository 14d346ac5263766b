/**
 * The rung whose answer comes nearest to *wanted*: what a hand means that drags what follows from a slider, where only chain or engine says what does.
 *
 * @param ladder from least to most
 * @param answerAt a rung's answer; Infinity where it has none
 * @param from where answers get less along the ladder and then more again: on which side of the least the rung is to lie, as this value does.
 *   On either where left out.
 */
export function rungGiving(
  ladder: readonly number[],
  answerAt: (rung: number) => number,
  wanted: number,
  from?: number,
): number {
  const answers = ladder.map(answerAt);
  const turn = answers.indexOf(Math.min(...answers));
  const isMeant = (index: number) => from === undefined || (from <= ladder[turn]! ? index <= turn : index >= turn);
  const off = (index: number) => (isMeant(index) ? Math.abs(answers[index]! - wanted) : Infinity);
  return ladder[answers.reduce((best, _, index) => (off(index) < off(best) ? index : best), turn)]!;
}
