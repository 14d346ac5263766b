import fc from 'fast-check';
import { afterAll } from 'vitest';

// That a property does not hold is enough: the least case of it, looked for in hundreds of further ones, is read by nobody.
fc.configureGlobal({ endOnFailure: true, seed: 1 });

// Files share what they import, and what the next one imports first is read as it stands, without the change.
afterAll(() => {
  const { __stryker__: state } = globalThis as { __stryker__?: { activeMutant?: string | undefined } };
  if (state) state.activeMutant = undefined;
});
