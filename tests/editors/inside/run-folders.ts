/** What the extension host calls for a workspace of two folders. */
import { folderTests } from './folders.ts';
import { runAll } from './suite.ts';

export const run = (): Promise<void> => runAll(folderTests);
