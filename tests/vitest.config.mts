import { defineConfig } from 'vitest/config';

// The command line and the gate read the counts from a file; anybody else wants the summary to come last.
const countsFile = process.env.WITNESSMARK_TEST_COUNTS;

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['**/node_modules/**', '**/dist/**', '**/.cache/**'],
    passWithNoTests: false,
    reporters: countsFile === undefined ? ['default'] : ['default', ['json', { outputFile: countsFile }]],
    // Two workers: more only get in each other's way where there are two processors.
    maxWorkers: 2,
    // What modules keep is remembered by object and never wrong for another test; loading them anew for each file is most
    // of the time that the tests take.
    isolate: false,
    pool: 'threads',
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
