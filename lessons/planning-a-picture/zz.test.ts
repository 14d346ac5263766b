import { it } from 'vitest';
import { bench } from '#lessons/planning-a-picture/bench.svelte.ts';
it('x', () => {
  for (const s of ['', '?chain=bag', '?chain=crate', '?chain=body-36,ring-36,close-up-4,lens-50&frame-fill=0.3', '?chain=body-36,ring-24,lens-50&frame-fill=0.3','?chain=body-36,lens-90,coupling-ring,lens-28:turned', '?chain=body-36,converter-2,ring-36,lens-50&frame-fill=0.3','?chain=foo', '?chain=foo,bar','?chain=body-36,bellows,lens-50','?chain=crate&subject=butterfly','?chain=bag&subject=butterfly','?chain=bag&subject=stamp&f-number=22']) {
    bench.read(s);
    console.log(s, bench.chosen('chain'), bench.notices.map((n) => n.text));
    console.log(Object.fromEntries(['magnification','chain.magnification','chain.focal-length','chain.f-number','set.f-number','chain.pupil-magnification','extension','working-distance','effective-f-number','depth-of-field','frame-count','slowest.exposure-time','finest.f-number','chain.working-distance','chain.effective-f-number'].map((n) => [n, bench.words(n as never)])));
  }
  const t = performance.now();
  bench.read('?chain=crate');
  for (let i = 0; i < 50; i++) { bench.set('frame-fill', 0.3 + i / 200); void bench.answers; }
  console.log('crate move', (performance.now() - t) / 50, 'ms');
});
