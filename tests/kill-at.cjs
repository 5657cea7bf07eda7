/* eslint-disable @typescript-eslint/no-require-imports, no-undef -- required into a process before its program starts */
/** Kills its own process by SIGKILL at the step towards the disk whose number KILL_AT says; of a write, half has been done. */
const fs = require('node:fs');

let left = Number(process.env.KILL_AT);

function before(name, counts, half) {
  const step = fs[name];
  fs[name] = (...words) => {
    if (counts(words) && --left === 0) {
      half?.(step, words);
      process.kill(process.pid, 'SIGKILL');
      for (;;);
    }
    return step(...words);
  };
}

const always = () => true;
for (const name of [
  'renameSync',
  'linkSync',
  'fsyncSync',
  'fchmodSync',
  'rmSync',
  'mkdirSync',
  'mkdtempSync',
])
  before(name, always);
before('openSync', ([, flags]) => /[wa]/.test(String(flags)));
before(
  'writeSync',
  ([descriptor]) => descriptor > 2,
  (write, [descriptor, bytes, from = 0]) =>
    write(descriptor, bytes, from, Math.floor((bytes.length - from) / 2)),
);
before('writeFileSync', always, (write, [path, text, options]) =>
  write(path, text.slice(0, Math.floor(text.length / 2)), options),
);
