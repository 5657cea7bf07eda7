/** Neovim as an independent client of the protocol: headless, with nothing but its own client. */
import { resolve } from 'node:path';
import { runToEnd } from './child.mjs';

export async function testNeovim({ server, workspace, report }) {
  const { output, status } = await runToEnd(
    'nvim',
    ['--headless', '-u', 'NONE', '-i', 'NONE', '-n', '-c', `luafile ${resolve('tests/editors/neovim.lua')}`],
    {
      limit: 60_000,
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
  if (!lines.includes('finished')) throw new Error(`Neovim ended early, status ${status}: ${output}`);
}
