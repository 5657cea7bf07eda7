import { createToken, CstParser, Lexer } from 'chevrotain';
import { expect, test } from 'vitest';
import { LineParser } from './parser.ts';
import { lexerOf } from './tokens.ts';

test('tokens and rules stand the library’s own validation, which is left out at each start', () => {
  expect(() => lexerOf(true)).not.toThrow();
  expect(lexerOf(true).lexerDefinitionErrors).toEqual([]);
  expect(() => new LineParser(true)).not.toThrow();
});

test('that validation finds faults', () => {
  expect(() => new Lexer([createToken({ name: 'Anchored', pattern: /a$/ })])).toThrow(/Errors detected/);
  const open = createToken({ name: 'Open', pattern: /a/ });
  class Twice extends CstParser {
    constructor() {
      super([open]);
      this.performSelfAnalysis();
    }
    rule = this.RULE('rule', () => {
      this.CONSUME(open);
      this.CONSUME(open);
    });
  }
  expect(() => new Twice()).toThrow(/appears more than once/);
});
