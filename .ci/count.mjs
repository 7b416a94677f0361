// Adds up what ran and ends with the line "N passed, N failed"; a part that ended badly or left no counts is a failure.
//   node .ci/count.mjs TEST_COUNTS TEST_EXIT_CODE EDITOR_COUNTS EDITOR_EXIT_CODE
import { existsSync, readFileSync } from 'node:fs';
import process from 'node:process';

const [testCounts, testExit, editorCounts, editorExit] = process.argv.slice(2);

/** The counts of the test runner's own report; a file that could not even be loaded counts as one failed test. */
function fromTests(path) {
  if (!existsSync(path)) return { passed: 0, failed: 0 };
  const report = JSON.parse(readFileSync(path, 'utf8'));
  const unloaded = report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
  for (const file of report.testResults) {
    const passed = file.assertionResults.filter((result) => result.status === 'passed').length;
    console.log(`${file.name.replace(`${process.cwd()}/`, '')}: ${passed} of ${file.assertionResults.length} passed`);
  }
  return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded.length };
}

function fromEditor(path) {
  if (!existsSync(path)) return { passed: 0, failed: 0 };
  const { passed, failed, results } = JSON.parse(readFileSync(path, 'utf8'));
  for (const result of results) console.log(`editor, ${result.name}: ${result.passed ? 'passed' : 'FAILED'}`);
  return { passed, failed };
}

/** A part that ran nothing, or ended badly without naming a failed test (build, types, lint), failed as a whole. */
function whole(name, counts, exit) {
  const endedBadly = Number(exit) !== 0 && counts.failed === 0;
  if (!endedBadly && counts.passed + counts.failed > 0) return counts;
  console.log(`${name}: failed as a whole (exit code ${exit}, ${counts.passed} passed)`);
  return { passed: counts.passed, failed: counts.failed + 1 };
}

const parts = [whole('tests', fromTests(testCounts), testExit), whole('editor', fromEditor(editorCounts), editorExit)];
const passed = parts.reduce((sum, part) => sum + part.passed, 0);
const failed = parts.reduce((sum, part) => sum + part.failed, 0);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
