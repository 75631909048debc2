import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { runBatch } from '../../../src/cli/batch/run-batch.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'umbel-batch-'));

function study(name: string, lines: readonly (object | string)[]): string {
  const path = join(folder, name);
  writeFileSync(
    path,
    lines.map((line) => `${typeof line === 'string' ? line : JSON.stringify(line)}\n`).join(''),
  );
  return path;
}

const linesOf = (path: string): string[] =>
  existsSync(path)
    ? readFileSync(path, 'utf8')
        .split('\n')
        .filter((line) => line !== '')
    : [];

/** A process of its own, without npm between: a kill meets the program itself. */
function batch(...argv: string[]) {
  const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', 'batch', ...argv], {
    cwd: root,
  });
  let said = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => (said += text));
  const ended = new Promise<{ code: number | null; said: string }>((resolve) =>
    child.on('close', (code) => resolve({ code, said })),
  );
  return { child, ended };
}

async function refused(...argv: string[]): Promise<string> {
  let said = '';
  const code = await runBatch(argv, { out: () => undefined, err: (text) => (said += text) });
  expect(code).toBe(2);
  return said;
}

describe('batch', () => {
  it('gives, in parts of which one is killed and goes on, every answer of the undivided study once and to the bit', async () => {
    const count = 20;
    const lines = Array.from({ length: count }, (_, index) => ({
      name: `gap ${index}`,
      design: index % 2 === 0 ? 'caraway-1' : 'dill-3',
      set: { 'blower.tipGap_mm': 0.03 + 0.002 * index },
      speed_rpm: 3000 + 100 * index,
    }));
    const path = study('spread.jsonl', [...lines, 'not a line']);
    const parts = [1, 2].map((part) => join(folder, `spread.answers.${part}-of-2.jsonl`));
    const other = batch(path, '--shard', '1/2', '--jobs', '2');
    const killed = batch(path, '--shard', '2/2', '--jobs', '1');
    while (linesOf(parts[1]!).length < 3) await new Promise((resolve) => setTimeout(resolve, 5));
    killed.child.kill('SIGKILL');
    expect((await killed.ended).code).toBeNull();
    const had = linesOf(parts[1]!).length;
    expect(had).toBeLessThan(count / 2);

    const [resumed, first] = await Promise.all([
      batch(path, '--shard', '2/2', '--jobs', '1').ended,
      other.ended,
    ]);
    expect(resumed.said).toMatch(
      new RegExp(`^${had} lines were answered before; going on\n10 lines answered`),
    );
    expect([first.code, resumed.code]).toEqual([1, 0]);
    expect(first.said).toContain('11 lines answered');
    expect(first.said).toContain('10 solved, 0 without an answer, 1 at fault');

    const whole = await batch(path, '--jobs', '2').ended;
    expect(whole.code).toBe(1);
    const undivided = linesOf(join(folder, 'spread.answers.jsonl'));
    expect(undivided).toHaveLength(count + 1);
    expect(parts.flatMap(linesOf).sort()).toEqual([...undivided].sort());
  });

  it('says that names are double before it answers anything', async () => {
    const path = study('double.jsonl', [
      { name: 'a' },
      { name: 'b' },
      { name: 'a' },
      'x',
      { name: 'line 4' },
    ]);
    expect(await refused(path)).toBe(
      `${path}, line 3, name: Name is “a”, which line 1 has already; allowed: a text of its own for each line\n` +
        `${path}, line 5, name: Name is “line 4”, which line 4 has already; allowed: a text of its own for each line\n`,
    );
    expect(existsSync(join(folder, 'double.answers.jsonl'))).toBe(false);
  });

  it('refuses a study that is not there, is a folder or holds nothing, without a stack trace', async () => {
    expect(await refused(join(folder, 'nothing.jsonl'))).toMatch(/^ENOENT.*nothing\.jsonl'\n$/);
    expect(await refused(folder, '--out', join(folder, 'out'))).toContain('is not a file');
    expect(await refused(study('empty.jsonl', ['', '  ']))).toContain('holds no line');
    expect(await refused(study('fine.jsonl', [{ name: 'a' }]), '--out', join(folder, 'no/such'))).toMatch(
      /^ENOENT/,
    );
  });
});
