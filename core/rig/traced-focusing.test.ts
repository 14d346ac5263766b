import { expect, test } from 'vitest';
import { runQuietly } from '#tests/support/run.ts';

// In a program of its own: here some other test has loaded what traces.
test('a lens that is focused by its prescription is refused where nothing that traces was loaded, and traced where it was', async () => {
  const { code, output } = await runQuietly('node', [
    '--input-type=module',
    '--eval',
    `const { tracing } = await import('./core/rig/traced-focusing.ts');
    try { tracing(); } catch ({ message }) { console.log(message); }
    await import('./core/rig/prescription-in-use.ts');
    console.log(typeof tracing().closest);`,
  ]);
  expect(output.trim().split('\n')).toEqual([
    'A lens is focused by its prescription: import prescription-in-use.ts, which traces it.',
    'function',
  ]);
  expect(code).toBe(0);
});
