import { describe, expect, test } from 'vitest';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { CheckedDocuments } from '../../server/src/lsp/checkedDocuments';
import { CheckQueue } from '../../server/src/lsp/checkQueue';
import type { Host } from '../../server/src/lsp/host';
import { MemoryFiles } from '../support/memoryFiles';

/** A queue whose turns and pauses end when the test says so. */
function queueByHand() {
  const turns: (() => void)[] = [];
  const pauses: (() => void)[] = [];
  const checked: string[] = [];
  const host = {
    nextTurn: () => new Promise<void>((resolve) => turns.push(resolve)),
    pause: () => new Promise<void>((resolve) => pauses.push(resolve)),
  } as unknown as Host;
  let isDone = false;
  const queue = new CheckQueue(host, {
    check: async (uri) => void checked.push(uri),
    done: () => {
      isDone = true;
    },
    hear: (work) => work(),
  });
  const settle = async () => {
    for (let i = 0; i < 20; i++) await Promise.resolve();
  };
  const turn = async () => {
    turns.shift()?.();
    await settle();
  };
  const pause = async () => {
    pauses.shift()?.();
    await settle();
  };
  return { queue, checked, turn, pause, isDone: () => isDone };
}

describe('documents that wait to be checked', () => {
  test('are checked once for all keys that have arrived', async () => {
    const { queue, checked, turn, isDone } = queueByHand();
    for (let key = 0; key < 3; key++) {
      queue.add('open', true);
      queue.run();
    }
    expect(checked).toEqual([]);
    await turn();
    expect(checked).toEqual(['open']);
    await turn();
    expect([checked, isDone()]).toEqual([['open'], true]);
  });

  test('come after what is open, and wait while somebody types', async () => {
    const { queue, checked, turn, pause } = queueByHand();
    queue.add('closed', false);
    queue.add('open', true);
    queue.typed();
    queue.run();
    await turn();
    await turn();
    expect(checked).toEqual(['open']);
    queue.add('open', true);
    queue.typed();
    queue.run();
    await turn();
    await turn();
    expect(checked).toEqual(['open', 'open']);
    await pause();
    await turn();
    await pause();
    await turn();
    expect(checked).toEqual(['open', 'open', 'closed']);
  });
});

test('a document whose text moves on while files are read is checked as it is then, and once', async () => {
  const { procedure } = EXAMPLE_PATHS;
  const { files } = inStep('- tighten: cap-nut\n  torque: 45');
  const uri = `${MemoryFiles.ROOT}/${procedure}`;
  let open: () => void = () => {};
  const gate = new Promise<void>((resolve) => {
    open = resolve;
  });
  const disk = new MemoryFiles(files);
  const source = { read: (one: string) => gate.then(() => disk.read(one)) };
  const workspace = new Workspace([MemoryFiles.ROOT]);
  const documents = new CheckedDocuments(workspace, source, { today: () => '2026-10-12', prepare: async () => {} });
  workspace.set(uri, { is: 'text', text: files[procedure] ?? '' });
  const early = documents.of(uri);
  const newer = (files[procedure] ?? '').replace('45', '4.6 ± 0.3 N·m');
  workspace.set(uri, { is: 'text', text: newer });
  const late = documents.of(uri);
  open();
  const checked = await early;
  expect(checked?.document.text).toBe(newer);
  expect(checked?.result.findings.map((one) => one.rule)).not.toContain('torque-unit-missing');
  expect(await late).toBe(checked);
});
