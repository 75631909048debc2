/**
 * Runs every vitest project and closes with one line, "N passed, N failed", added up from vitest's own JSON reports.
 * A file that fails outside its tests, and a project that leaves no report, count as one failure each.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findBrowser } from './find-browser.ts';

interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string }[];
  }[];
}

interface Tally {
  readonly passed: number;
  readonly failed: number;
}

function tally(file: string, exitCode: number | null): Tally {
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const report = JSON.parse(readFileSync(file, 'utf8')) as Report;
  const failedOutsideTests = report.testResults.filter(
    (result) =>
      result.status === 'failed' && !result.assertionResults.some((test) => test.status === 'failed'),
  ).length;
  const failed = report.numFailedTests + failedOutsideTests;
  return { passed: report.numPassedTests, failed: failed === 0 && exitCode !== 0 ? 1 : failed };
}

function runProject(project: string, folder: string, environment: NodeJS.ProcessEnv): Tally {
  const file = join(folder, `${project}.json`);
  const args = ['node_modules/vitest/vitest.mjs', 'run', '--project', project];
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const run = spawnSync(process.execPath, [...args, ...reporters], {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: environment,
  });
  return tally(file, run.status);
}

const folder = mkdtempSync(join(tmpdir(), 'umbel-tests-'));
const tallies: Tally[] = [runProject('unit', folder, process.env)];
try {
  tallies.push(runProject('browser', folder, { ...process.env, UMBEL_BROWSER: findBrowser() }));
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  tallies.push({ passed: 0, failed: 1 });
}
rmSync(folder, { recursive: true, force: true });

const passed = tallies.reduce((sum, each) => sum + each.passed, 0);
const failed = tallies.reduce((sum, each) => sum + each.failed, 0);
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
