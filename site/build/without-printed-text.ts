import type { Plugin } from 'vite';

/** What is printed into the page at build: the words of a formula, and those of a problem. */
const printed = [
  { file: /\.formula\.ts(?:\?|$)/, keys: 'tex|says|source' },
  { file: /\/lessons\/[^/]+\/problems\.ts(?:\?|$)/, keys: 'question|hint|note|because' },
] as const;

const text = String.raw`(?:String\.raw\x60[^\x60]*\x60|'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*")`;

/** *code* of the file *id* with the texts that pages print emptied; undefined where the file has none to leave behind. */
export function withoutPrintedText(code: string, id: string): string | undefined {
  const kind = printed.find(({ file }) => file.test(id));
  return kind && code.replace(new RegExp(`\\b(${kind.keys}):\\s*${text}(?=\\s*[,}])`, 'g'), "$1: ''");
}

/** Vite plugin: what was printed into the page at build does not travel to the browser a second time. */
export function leavePrintedTextBehind(): Plugin {
  return {
    name: 'leave-printed-text-behind',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    transform(code, id) {
      const bare = withoutPrintedText(code, id);
      return bare === undefined ? undefined : { code: bare, map: null };
    },
  };
}
