import type { Plugin } from 'vite';

const text = String.raw`(?:String\.raw\x60[^\x60]*\x60|'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*")`;

/** What only the build and the tests read: the words of a formula, its outside checks and the ranges of its random ones; the words of a problem. */
const printed = [
  {
    file: /\.formula\.ts(?:\?|$)/,
    what: `^ {2}(?:(?:tex|says|source):\\s*${text}|sample: \\{[^}]*\\}|checkedBy: \\[[^\\]]*\\]),\\n`,
    left: '',
  },
  {
    file: /\/lessons\/[^/]+\/problems\.ts(?:\?|$)/,
    what: `\\b(question|hint|note|because):\\s*${text}(?=\\s*[,}])`,
    left: "$1: ''",
  },
] as const;

/** *code* of the file *id* with the texts that pages print left out; undefined where the file has none to leave behind. */
export function withoutPrintedText(code: string, id: string): string | undefined {
  const kind = printed.find(({ file }) => file.test(id));
  return kind && code.replace(new RegExp(kind.what, 'gm'), kind.left);
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
