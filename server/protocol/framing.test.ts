/** Where the head of a message says no length, the connection ends with a reason; where it does, nothing is said. */
import { describe, expect, it } from 'vitest';
import { framingWatch } from './framing.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const message = (body: string) => `Content-Length: ${bytes(body).length}\r\n\r\n${body}`;

describe('the watch over the heads of messages', () => {
  it('is silent on messages, however they are cut', () => {
    const all = bytes(`${message('{"a":"é"}')}Content-Type: x\r\n${message('{}')}${message('')}`);
    for (const size of [1, 2, 7, 1000]) {
      const watch = framingWatch();
      for (let at = 0; at < all.length; at += size) expect(watch(all.subarray(at, at + size))).toBeNull();
    }
  });
  it.each([
    ['garbage', 'Content-Length: x1\r\n\r\n{}', /Content-Length "x1"/],
    ['a negative one', 'Content-Length: -5\r\n\r\n{}', /"-5"/],
    ['a huge one', 'Content-Length: 99999999999999\r\n\r\n', /at most 536870912/],
    ['one beyond all numbers', `Content-Length: ${'9'.repeat(400)}\r\n\r\n`, /at most/],
    ['none', 'Content-Type: x\r\n\r\n{}', /has no Content-Length/],
    ['no head that ends', 'x'.repeat(20_000), /its head does not end/],
  ])('says why where the length is %s', (_, text, reason) => {
    expect(framingWatch()(bytes(message('{}') + text))).toMatch(reason);
  });
});
