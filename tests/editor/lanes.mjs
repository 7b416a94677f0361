// What the scenarios run in: the editor on Node, the one in nothing but a browser, and a browser with our pages alone.
import { join } from 'node:path';
import { editorHome, installExtension, startCodeServer } from './codeServer.mjs';
import { editorLane } from './lane.mjs';
import { PageBench } from './pageBench.mjs';
import { setUpEditor, setUpWebEditor } from './setup.mjs';
import { startWebEditor, WebWorkbench } from './webEditor.mjs';
import { Workbench } from './workbench.mjs';

/**
 * By name: what installs the editor, what starts it with a packed extension and a folder, its window, and the file of its
 * scenarios.
 */
export const lanes = {
  pages: {
    setUp: () => ({ browser: editorLane().browser }),
    scenarios: 'tests/editor/pageScenarios.mjs',
    Workbench: PageBench,
    start: async () => ({ origin: 'about:blank', stop() {} }),
  },
  desktop: {
    setUp: setUpEditor,
    scenarios: 'tests/editor/scenarios.mjs',
    hasHistory: true,
    Workbench,
    start(lane, { vsix, scratch }) {
      const home = editorHome(lane, join(scratch, 'home'));
      installExtension(lane, home, vsix);
      return startCodeServer(lane, home);
    },
  },
  web: {
    setUp: setUpWebEditor,
    scenarios: 'tests/editor/webScenarios.mjs',
    Workbench: WebWorkbench,
    start: startWebEditor,
  },
};
