// The browser that shows the editor: a fresh profile each time, and no way out of this machine.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1 , EXCLUDE localhost , EXCLUDE *.localhost',
];

// Without these the frames of a webview, which come from another origin, cannot keep what they need.
const preferences = { profile: { cookie_controls_mode: 0, block_third_party_cookies: false } };

/** Opens the browser with one page; `close()` ends it. */
export async function openBrowser(lane, profile) {
  mkdirSync(join(profile, 'Default'), { recursive: true });
  writeFileSync(join(profile, 'Default', 'Preferences'), JSON.stringify(preferences));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: lane.browser,
    args: [...flags, ...(lane.flags ?? [])],
    viewport: { width: 1600, height: 1000 },
  });
  const page = context.pages()[0] ?? (await context.newPage());
  return { page, close: () => context.close() };
}
