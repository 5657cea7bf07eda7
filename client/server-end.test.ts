/** A server that has ended is started again; where that start fails silently, the person is told after a while, and once. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

const told: string[] = [];
vi.mock('vscode', () => ({
  window: { showErrorMessage: async (sentence: string) => void told.push(sentence) },
  commands: {},
}));
vi.mock('vscode-languageclient', () => ({
  CloseAction: { DoNotRestart: 1, Restart: 2 },
  ErrorAction: { Continue: 1, Shutdown: 2 },
  ErrorCodes: {},
  ResponseError: Error,
}));
const { startedAgain } = await import('./server-end.ts');

const LONG_ENOUGH = 60_000;

describe('a start that nobody asked for', () => {
  beforeEach(() => {
    told.length = 0;
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('is told of where it failed, in one sentence that says what to do', async () => {
    const { errorHandler } = startedAgain(() => true);
    errorHandler?.closed();
    expect(told).toEqual([]);
    await vi.advanceTimersByTimeAsync(LONG_ENOUGH);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/nothing is checked.*Reload the window/);
  });

  it('is not told of where it succeeded', async () => {
    const { errorHandler } = startedAgain(() => false);
    errorHandler?.closed();
    await vi.advanceTimersByTimeAsync(LONG_ENOUGH);
    expect(told).toEqual([]);
  });

  it('is told of once for several ends', async () => {
    const { errorHandler } = startedAgain(() => true);
    for (let times = 0; times < 3; times += 1) errorHandler?.closed();
    await vi.advanceTimersByTimeAsync(LONG_ENOUGH);
    expect(told).toHaveLength(1);
  });

  it('gives way to the sentence of a server that has ended too often', async () => {
    const { errorHandler } = startedAgain(() => true);
    for (let times = 0; times < 5; times += 1) errorHandler?.closed();
    await vi.advanceTimersByTimeAsync(LONG_ENOUGH);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/not started again by itself/);
  });
});
