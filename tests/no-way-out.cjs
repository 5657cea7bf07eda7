/* eslint-disable @typescript-eslint/no-require-imports, no-undef -- required into a process before its program starts */
/** Whatever would speak to a network or start another program throws instead, and leaves word in the file that WAY_OUT_LOG names. */
const { appendFileSync } = require('node:fs');

const log = process.env.WAY_OUT_LOG;

function trap(owner, names) {
  for (const name of names)
    Object.defineProperty(owner, name, {
      configurable: true,
      value: () => {
        appendFileSync(log, `${name}\n`);
        throw new Error(`${name} would lead out of here`);
      },
    });
}

trap(require('node:net').Socket.prototype, ['connect']);
trap(require('node:net').Server.prototype, ['listen']);
trap(require('node:dgram'), ['createSocket']);
trap(require('node:tls'), ['connect']);
trap(require('node:http'), ['request', 'get']);
trap(require('node:https'), ['request', 'get']);
trap(require('node:http2'), ['connect']);
const dns = require('node:dns');
for (const resolver of [dns, dns.promises])
  trap(resolver, ['lookup', 'lookupService', 'resolve', 'resolve4', 'resolve6', 'resolveAny', 'reverse']);
trap(globalThis, ['fetch', 'WebSocket', 'EventSource']);
trap(require('node:child_process'), [
  ...['spawn', 'spawnSync', 'exec', 'execSync', 'execFile', 'execFileSync', 'fork'],
]);
