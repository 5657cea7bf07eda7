/** What the extension host calls for one folder: every test but those that need several. */
import { findingTests } from './findings.ts';
import { firstMinutesTests } from './first-minutes.ts';
import { inlayTests } from './inlays.ts';
import { languageTests } from './language.ts';
import { pageTests } from './pages.ts';
import { panelTests } from './panel.ts';
import { renameTests } from './renames.ts';
import { sampleTests } from './samples.ts';
import { serverTests } from './server.ts';
import { runAll } from './suite.ts';
import { writingTests } from './writing.ts';

const tests = {
  ...languageTests,
  ...findingTests,
  ...inlayTests,
  ...renameTests,
  ...pageTests,
  ...panelTests,
  ...writingTests,
  ...firstMinutesTests,
  ...sampleTests,
  ...serverTests,
};

export const run = (): Promise<void> => runAll(tests);
