import { stageCommand, type StageCommand } from '#site/stage/keys.ts';

/** What a key means in an evening: what it does in a lesson's projected view, and a few things more. */
export type RunCommand =
  | StageCommand
  | { readonly kind: 'hand'; readonly option: number }
  | { readonly kind: 'hand-back' | 'jump' | 'notes' | 'phones' };

const own: Readonly<Record<string, RunCommand>> = {
  Backspace: { kind: 'hand-back' },
  j: { kind: 'jump' },
  n: { kind: 'notes' },
  p: { kind: 'phones' },
};

/**
 * What a key means. A digit counts a hand for one of *options* while a question for them is open; behind J, and where nothing is counted, it is of
 * the step to jump to.
 */
export function runCommand(event: KeyboardEvent, options: number, isJumping: boolean): RunCommand | undefined {
  const { key, ctrlKey, altKey, metaKey, target } = event;
  if ((target as Element | null)?.closest?.('input, textarea, select')) return undefined;
  const command = stageCommand(event);
  if (command?.kind === 'digit' && options > 0 && !isJumping) {
    const option = Number(command.digit) - 1;
    return option >= 0 && option < options ? { kind: 'hand', option } : undefined;
  }
  return command ?? (ctrlKey || altKey || metaKey ? undefined : (own[key.toLowerCase()] ?? own[key]));
}
