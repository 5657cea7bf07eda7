/** Emacs with eglot as an independent client of the protocol, in batch mode. */
import { resolve } from 'node:path';
import { runToEnd } from './child.mjs';

export async function testEmacs({ server, workspace, report }) {
  const { output, status } = await runToEnd(
    'emacs',
    ['--batch', '--eval', '(package-initialize)', '--load', resolve('tests/editors/emacs.el')],
    {
      limit: 90_000,
      cwd: workspace,
      env: {
        ...process.env,
        TRIBRACH_SERVER: server,
        TRIBRACH_EXPECTED: resolve('tests/editors/expected.json'),
      },
    },
  );
  const lines = output.split(/\r?\n/);
  for (const line of lines) report(line);
  if (!lines.includes('finished')) throw new Error(`Emacs ended early, status ${status}: ${output}`);
}
