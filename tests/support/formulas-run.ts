import { Session, type Profiler } from 'node:inspector';

/**
 * The formula files whose functions ran while *run* did, however deep below it: paths from the repository's root.
 * The engine itself counts the calls, so that no formula has to be wrapped.
 */
export class CallCounter {
  readonly #session = new Session();

  constructor() {
    this.#session.connect();
    this.#post('Profiler.enable');
    this.#post('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
  }

  /** Throws what *run* throws. */
  formulasRun(run: () => unknown): ReadonlySet<string> {
    return this.formulasRunBy([run])[0]!;
  }

  /** The same for one after another: to be told of all that ran takes as long as hundreds of modules are loaded. Throws what they throw. */
  formulasRunBy(runs: readonly (() => unknown)[]): readonly ReadonlySet<string>[] {
    this.#taken();
    return runs.map((run) => {
      run();
      return this.#formulasTaken();
    });
  }

  /** Formula files that ran since it was last asked. */
  #formulasTaken(): ReadonlySet<string> {
    const found = new Set<string>();
    for (const { url, functions } of this.#taken()) {
      const path = /core\/[a-z-]+\/[a-z-]+\.formula\.ts/.exec(url)?.[0];
      // The nameless first entry is the module's own body.
      if (path && functions.some(({ functionName, ranges }) => functionName !== '' && (ranges[0]?.count ?? 0) > 0))
        found.add(path);
    }
    return found;
  }

  stop(): void {
    this.#post('Profiler.stopPreciseCoverage');
    this.#session.disconnect();
  }

  #taken(): readonly Profiler.ScriptCoverage[] {
    return (this.#post('Profiler.takePreciseCoverage') as Profiler.TakePreciseCoverageReturnType).result;
  }

  /** The inspector of one's own thread answers before it returns. */
  #post(method: string, parameters: object = {}): unknown {
    let answer: unknown;
    this.#session.post(method, parameters, (error, result) => {
      if (error) throw error;
      answer = result;
    });
    return answer;
  }
}
