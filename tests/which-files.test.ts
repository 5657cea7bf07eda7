/** Which files the built server reads for an editor: none where the folder is not trusted, and those of each folder that is open. */
import { beforeAll, describe, expect, it } from 'vitest';
import { folderWith } from './command-line-run.ts';
import { buildProgram, startClient, type Client } from './language-client.ts';

const marks = `mark PM-14 "brass bolt, pier deck"
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
`;
/** With the grid of its positions: marks of another file have none from the session. */
const control = `job "Control"
  grid        EPSG:3763
${marks}`;
const day = `job "Breakwater"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
use "marks.trib"
setup BASE on PM-14 at 07:50
`;

const opened = (client: Client, uri: string, text: string) =>
  client.notify('textDocument/didOpen', {
    textDocument: { uri, languageId: 'tribrach', version: 1, text },
  });
const messages = async (client: Client, uri: string) =>
  (await client.findings(uri, 1)).map(({ message }) => message).join('\n');
/** An answer to this comes after everything that was said before it. */
const settled = (client: Client, uri: string) =>
  client.request('textDocument/documentSymbol', { textDocument: { uri } });

beforeAll(buildProgram);

describe('in a folder that is not trusted', () => {
  it('no file is read, and the finding says why and what to do', async () => {
    const folder = folderWith({ 'marks.trib': marks, 'day.trib': day });
    const client = await startClient(folder.path(), {}, { trusted: false });
    try {
      await opened(client, client.uri('day.trib'), day);
      expect(await messages(client, client.uri('day.trib'))).toMatch(/not trusted.*trust the folder/);
      expect(await client.request('workspace/symbol', { query: 'PM-14' })).toEqual([]);
    } finally {
      client.kill();
      folder.remove();
    }
  });

  it('a text that is open counts all the same', async () => {
    const folder = folderWith({ 'day.trib': day });
    const client = await startClient(folder.path(), {}, { trusted: false });
    try {
      await opened(client, client.uri('marks.trib'), marks);
      await opened(client, client.uri('day.trib'), day);
      expect(await messages(client, client.uri('day.trib'))).not.toContain('trust');
    } finally {
      client.kill();
      folder.remove();
    }
  });

  it('with trust, the same file is read', async () => {
    const folder = folderWith({ 'marks.trib': marks, 'day.trib': day });
    const client = await startClient(folder.path(), {}, { trusted: true });
    try {
      await opened(client, client.uri('day.trib'), day);
      expect(await messages(client, client.uri('day.trib'))).not.toContain('trust');
      expect(await client.request('workspace/symbol', { query: 'PM-14' })).not.toEqual([]);
    } finally {
      client.kill();
      folder.remove();
    }
  });
});

describe('with several folders', () => {
  it('a folder that is opened later lets its files be read, and its sessions be found', async () => {
    const first = folderWith({});
    const jobs = folderWith({ 'jobs/day.trib': '', 'control/marks.trib': control });
    const text = day.replace('marks.trib', '../control/marks.trib');
    const client = await startClient(first.path(), { workspace: { workspaceFolders: true } });
    const uri = `file://${jobs.path('jobs/day.trib')}`;
    try {
      await opened(client, uri, text);
      expect(await messages(client, uri)).toContain('marks.trib');
      const folders = { added: [{ uri: `file://${jobs.path()}`, name: 'control' }], removed: [] };
      await client.notify('workspace/didChangeWorkspaceFolders', { event: folders });
      await settled(client, uri);
      await expect.poll(() => messages(client, uri)).not.toContain('marks.trib');
      expect(await client.request('workspace/symbol', { query: 'PM-14' })).not.toEqual([]);
    } finally {
      client.kill();
      first.remove();
      jobs.remove();
    }
  });
});

describe('a session that does not lie on the disk', () => {
  it('has its files from the editor, and a text that was never saved has none', async () => {
    const folder = folderWith({});
    const client = await startClient(folder.path(), {}, {});
    try {
      await opened(client, 'memory:/jobs/day.trib', day);
      await opened(client, 'untitled:Untitled-1', day);
      await expect.poll(() => client.asked).toContain('tribrach/readFile');
      expect(await messages(client, 'untitled:Untitled-1')).toContain('before the session is saved');
    } finally {
      client.kill();
      folder.remove();
    }
  });
});
