/** What a client asks out of turn is refused with the code that the protocol has for it; notices are dropped. */
import type { Message, MessageStrategy } from 'vscode-languageserver';
import { describe, expect, it } from 'vitest';
import { inTurn } from './lifecycle.ts';

const said = (strategy: MessageStrategy, method: string, id: number | null = 1) => {
  const passed: { method?: string; params?: { code: number } }[] = [];
  const message = { jsonrpc: '2.0', method, ...(id === null ? {} : { id }) } as unknown as Message;
  void strategy.handleMessage(message, (next) => void passed.push(next as never));
  const [next] = passed;
  return next === undefined ? 'dropped' : next.method === method ? 'passed' : next.params?.code;
};

describe('a conversation', () => {
  it('begins with initialize, which comes once, and after shutdown nothing but exit is heard', () => {
    const strategy = inTurn();
    expect(said(strategy, 'textDocument/hover')).toBe(-32002);
    expect(said(strategy, 'shutdown')).toBe(-32002);
    expect(said(strategy, 'textDocument/didOpen', null)).toBe('dropped');
    expect(said(strategy, 'initialize')).toBe('passed');
    expect(said(strategy, 'initialize')).toBe(-32600);
    expect(said(strategy, 'initialized', null)).toBe('passed');
    expect(said(strategy, 'textDocument/hover')).toBe('passed');
    expect(said(strategy, 'shutdown')).toBe('passed');
    expect(said(strategy, 'textDocument/hover')).toBe(-32600);
    expect(said(strategy, 'initialize')).toBe(-32600);
    expect(said(strategy, 'textDocument/didChange', null)).toBe('dropped');
    expect(said(strategy, 'exit', null)).toBe('passed');
  });
});
