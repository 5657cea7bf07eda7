/** A server without a disk finds sessions that nobody has opened: the editor lists and reads them, and is asked again when files change. */
import { describe, expect, it } from 'vitest';
import { clientDisk } from './client-sessions.ts';
import { openSessions } from './open-sessions.ts';

function editor(texts: Record<string, string>) {
  const asked: string[] = [];
  const disk = clientDisk(async (method, { address }: { address?: string }) => {
    asked.push(`${method} ${address ?? ''}`);
    await new Promise((resolve) => setTimeout(resolve, 1));
    if (method === 'tribrach/sessionFiles')
      return Object.keys(texts).filter((name) => name.startsWith(`${address ?? ''}/`));
    const text = texts[address ?? ''];
    return text === undefined
      ? { refused: 'there is no such file' }
      : { bytes: new TextEncoder().encode(text) };
  }, false);
  const sessions = openSessions(
    {
      filesFor: () => disk.files,
      sessionsBelow: disk.sessionsBelow,
      reading: disk.reading,
      later: (task, milliseconds) => void setTimeout(task, milliseconds),
      now: () => performance.now(),
    },
    { eager: false, changed: () => undefined, othersChanged: () => undefined },
  );
  sessions.setFolders(['memfs://jobs']);
  return { asked, sessions, texts };
}

const texts = () => ({
  'memfs://jobs/a%20day.trib': 'use "../elsewhere/marks.trib"\n',
  'memfs://jobs/b.trib': 'mark B\n',
  'memfs://elsewhere/marks.trib': 'mark A\n',
});

describe('sessions that an editor lists', () => {
  it('are found with the files that they use, each asked for once', async () => {
    const { asked, sessions } = editor(texts());
    const found = await sessions.everySession();
    expect(found.map(({ document }) => document.path).sort()).toEqual([
      'memfs://elsewhere/marks.trib',
      'memfs://jobs/a day.trib',
      'memfs://jobs/b.trib',
    ]);
    expect(await sessions.paths()).toEqual(['memfs://jobs/a day.trib', 'memfs://jobs/b.trib']);
    expect(new Set(asked).size).toBe(asked.length);
    expect(asked).toHaveLength(4);
  });

  it('are listed anew when files have come or gone', async () => {
    const { sessions, texts: known } = editor(texts());
    await sessions.everySession();
    known['memfs://jobs/c.trib'] = 'mark C\n';
    sessions.filesChanged(['memfs://jobs/c.trib']);
    expect(await sessions.paths()).toContain('memfs://jobs/c.trib');
  });

  it('are none where the editor does not answer', async () => {
    const disk = clientDisk(() => Promise.reject(new Error('unknown request')), true);
    disk.sessionsBelow('memfs://jobs');
    await disk.reading.all();
    expect(disk.reading.pending()).toBe(false);
    expect(disk.sessionsBelow('memfs://jobs')).toEqual([]);
  });
});
