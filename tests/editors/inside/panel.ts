/** The panel of drawings opens beside the session, once, and shows the session that it was asked for last. */
import { commands, TabInputWebview, window, type Tab } from 'vscode';
import expected from '../expected.json';
import { eventually, openSession, same, type Tests } from './session.ts';

export const panelTests: Tests = {
  'the drawings open beside the session, once': async () => {
    const { document } = await openSession();
    await commands.executeCommand(expected.panel.command);
    await eventually('the panel', () => panels().length > 0 || undefined);
    await window.showTextDocument(document);
    await commands.executeCommand(expected.panel.command);
    same('panels', panels().length, 1);
    same('its title', panels()[0]?.label, `Drawings of ${expected.session}`);
    same('beside the session', panels()[0]?.group === window.tabGroups.all[0], false);
  },
};

const panels = (): Tab[] =>
  window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(({ input }) => input instanceof TabInputWebview && input.viewType.endsWith('tribrach.drawings'));
