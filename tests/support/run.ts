import { spawn } from 'node:child_process';
import { delimiter, dirname, join, resolve } from 'node:path';

/** The repository's folder, whatever folder the program was started from. */
export const root = resolve(import.meta.dirname, '../..');

const installed = join(root, 'node_modules', '.bin');

/** What a program started from here sees: this same Node and the installed tools come first. */
export function environment(extra: Readonly<Record<string, string>> = {}): NodeJS.ProcessEnv {
  const path = [installed, dirname(process.execPath), process.env.PATH].join(delimiter);
  return { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', PATH: path, ...extra };
}

/**
 * Runs a program in the repository's folder, its output going straight through, and resolves to its exit code.
 * A program that cannot be started or is killed counts as 1.
 */
export function run(
  program: string,
  args: readonly string[],
  extra?: Readonly<Record<string, string>>,
): Promise<number> {
  return new Promise((done) => {
    const child = spawn(program, args, {
      cwd: root,
      env: environment(extra),
      stdio: ['ignore', 'inherit', 'inherit'],
      // Installed tools are .cmd files on Windows, which only a shell can start.
      shell: process.platform === 'win32',
    });
    child.on('error', (error) => {
      process.stderr.write(`${program} could not be started: ${error.message}\n`);
      done(1);
    });
    child.on('exit', (code) => done(code ?? 1));
  });
}
