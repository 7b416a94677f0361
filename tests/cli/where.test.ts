import { expect, test } from 'vitest';
import { ran } from '../support/captureTerminal';

const where = (...args: string[]) => ran('where', ...args);

test('a tool is found in every procedure that uses it, step by step with the builds', async () => {
  const { code, out } = await where('torque-wrench-10', 'sample-procedures/procedures');
  expect(code).toBe(0);
  expect(out).toMatch(
    /^tool torque-wrench-10 \(torque wrench 2–10 N·m\) sample-procedures\/stores\/bay-2\.stores\.yaml:\d+\n/,
  );
  expect(out).toContain('  procedure OP-410 sample-procedures/procedures/v4-major.procedure.yaml\n');
  expect(out).toMatch(/ {4}line \d+: step fit-compressor-nut\n/);
  expect(out).toMatch(/\n {2}3 documents, \d+ steps\n$/);
});

test('a part is found by its id, and by its number', async () => {
  const byId = await where(
    'part/compressor-nut',
    'sample-procedures/procedures/v4-major.procedure.yaml',
    '--format',
    'json',
  );
  const [part] = JSON.parse(byId.out);
  expect(part.name).toBe('part compressor-nut (compressor nut)');
  expect(part.users.map((one: { document: string }) => one.document)).toEqual(
    expect.arrayContaining(['OP-410', 'K-V4-M']),
  );
});

test('a kit is found by its number: who links to it', async () => {
  const { out } = await where('K-V4-M', 'sample-procedures/procedures');
  expect(out).toMatch(/^kit K-V4-M .*v4-major\.kit\.yaml:1\n {2}procedure OP-410 /);
});

test('what nobody declares is told with what may have been meant', async () => {
  const { code, err } = await where('torque-wrench-11', 'sample-procedures/procedures');
  expect([code, err]).toEqual([
    2,
    'witnessmark: Nothing is called torque-wrench-11; did you mean torque-wrench-10 or torque-wrench-50\n',
  ]);
});

test('nothing to look for is refused in one line', async () => {
  expect((await where()).err).toBe('witnessmark: Say what to look for: an id, a number or a file name\n');
});
