import type { Rule } from 'eslint';

/** Calls that are done when they return: of the language, of a process, of what a test listens with. */
const immediate =
  /^(?:on|once|push|set|add|delete|clear|kill|close|write|end|mkdirSync|writeFileSync|rmSync|assign|observe|disconnect|listen|unref|exit|throw|use|serve|stop|cpSync|withRules|setTimeout)$/;

/** Assertions on a value that is at hand; those on a page wait for it and give a promise. */
const onValues =
  /^to(?:Be|Equal|StrictEqual|Match|Contain|ContainEqual|Throw|BeDefined|BeUndefined|BeNull|BeNaN|BeTruthy|BeFalsy|HaveLength|BeCloseTo|Be(?:Greater|Less)Than(?:OrEqual)?)$/;

interface Call {
  readonly type: string;
  readonly callee: { readonly type: string; readonly name?: string; readonly property?: { readonly name?: string } };
}

type Node = Rule.Node & { readonly async?: boolean; readonly callee?: Call['callee'] };

const nameOf = (callee: Call['callee']) => (callee.type === 'Identifier' ? callee.name : callee.property?.name) ?? '';

/** The function in which a node stands waits for promises: it is async, or a test's own, and runs here and not in the page. */
function waits(node: Node): boolean {
  let at: Node | null = node;
  while (at && !/Function/.test(at.type)) at = at.parent as Node | null;
  if (!at) return false;
  const around = at.parent as Node | null;
  const taker = around?.type === 'CallExpression' ? nameOf(around.callee!) : '';
  return !/^evaluate/.test(taker) && (at.async === true || taker === 'test');
}

/**
 * In a function that waits, a call that stands by itself is waited for, or known to be done when it returns: an assertion that nobody waits
 * for cannot fail. By names alone, so that a file is linted by itself; the types would say more and take half of the linter's time.
 */
export const awaited: Rule.RuleModule = {
  meta: { type: 'problem', schema: [], messages: { floating: 'Await this: nobody would notice its failure.' } },
  create: (context) => ({
    ExpressionStatement(statement) {
      const call = statement.expression as unknown as Call;
      if (call.type !== 'CallExpression' || !waits(statement as Node)) return;
      const name = nameOf(call.callee);
      if (immediate.test(name) || onValues.test(name)) return;
      context.report({ node: statement, messageId: 'floating' });
    },
  }),
};
