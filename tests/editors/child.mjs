/** Runs other programs under a time limit: a short one to its end, or a server for as long as it is needed. */
import { spawn } from 'node:child_process';
import { createServer } from 'node:net';

/** Resolves to `{ status, output }`; a program that is missing or too slow rejects with a sentence. */
export async function runToEnd(program, args, { limit, ...options }) {
  const child = spawn(program, args, { stdio: ['ignore', 'pipe', 'pipe'], ...options });
  let output = '';
  child.stdout.on('data', (data) => (output += data));
  child.stderr.on('data', (data) => (output += data));
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => {
      child.kill('SIGKILL');
      reject(new Error(`${program} was stopped after ${limit / 1000} s; it had written: ${output}`));
    }, limit);
    child.on('error', (error) => {
      clearTimeout(timer);
      reject(error.code === 'ENOENT' ? new Error(`${program} is not installed on this machine`) : error);
    });
    child.on('close', (status) => {
      clearTimeout(timer);
      resolve({ status, output });
    });
  });
}

/** Starts a server and resolves to a function that stops it, once its output matches `ready`. */
export async function startServer(program, args, { ready, limit, ...options }) {
  const child = spawn(program, args, { stdio: ['ignore', 'pipe', 'pipe'], detached: true, ...options });
  const stop = () => {
    try {
      process.kill(-child.pid, 'SIGKILL');
    } catch {
      // It has ended already.
    }
  };
  process.once('exit', stop);
  let output = '';
  await new Promise((resolve, reject) => {
    const fail = (why) => {
      stop();
      reject(new Error(`${program} ${why}; it had written: ${output}`));
    };
    const timer = setTimeout(() => fail(`did not start within ${limit / 1000} s`), limit);
    const listen = (data) => {
      output += data;
      if (!ready.test(output)) return;
      clearTimeout(timer);
      resolve();
    };
    child.stdout.on('data', listen);
    child.stderr.on('data', listen);
    child.on('error', () => fail('could not be started'));
    child.on('exit', (status) => fail(`ended with status ${status}`));
  });
  return stop;
}

export async function freePort() {
  const probe = createServer();
  await new Promise((resolve) => probe.listen(0, '127.0.0.1', resolve));
  const { port } = probe.address();
  await new Promise((resolve) => probe.close(resolve));
  return port;
}

/** The promise's value, or a rejection that says what took too long. */
export async function within(limit, what, promise) {
  let timer;
  const late = new Promise((_, reject) => {
    timer = setTimeout(() => reject(new Error(`${what} took longer than ${limit / 1000} s`)), limit);
  });
  return Promise.race([promise, late]).finally(() => clearTimeout(timer));
}
