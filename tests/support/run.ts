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

interface Ended {
  readonly code: number;
  /** What it printed, on both channels in the order of printing; '' where that went straight through. */
  readonly output: string;
}

/**
 * Runs a program in the repository's folder, its output going straight through, and resolves to its exit code.
 * A program that cannot be started or is killed counts as 1.
 */
export async function run(
  program: string,
  args: readonly string[],
  extra?: Readonly<Record<string, string>>,
): Promise<number> {
  return (await ended(program, args, 'inherit', extra)).code;
}

/** The same with the output kept back, for programs that run side by side. */
export function runQuietly(
  program: string,
  args: readonly string[],
  extra?: Readonly<Record<string, string>>,
): Promise<Ended> {
  return ended(program, args, 'pipe', extra);
}

function ended(
  program: string,
  args: readonly string[],
  output: 'inherit' | 'pipe',
  extra?: Readonly<Record<string, string>>,
): Promise<Ended> {
  return new Promise((done) => {
    const chunks: Buffer[] = [];
    const child = spawn(program, args, {
      cwd: root,
      env: environment(extra),
      stdio: ['ignore', output, output],
      // Installed tools are .cmd files on Windows, which only a shell can start.
      shell: process.platform === 'win32',
    });
    for (const channel of [child.stdout, child.stderr]) channel?.on('data', (chunk: Buffer) => chunks.push(chunk));
    const end = (code: number) => done({ code, output: Buffer.concat(chunks).toString('utf8') });
    child.on('error', (error) => {
      process.stderr.write(`${program} could not be started: ${error.message}\n`);
      end(1);
    });
    // Not at its exit: what it printed last may still be on its way.
    child.on('close', (code) => end(code ?? 1));
  });
}
