import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const umbel = (...argv: string[]) =>
  spawnSync('npm', ['run', '-s', 'umbel', '--', ...argv], { cwd: root, encoding: 'utf8' });

describe('npm run -s umbel', () => {
  it('writes nothing but one JSON object to standard output, and leaves 0', () => {
    const { status, stdout, stderr } = umbel('geometry', 'presets/parsley-5.json', '--json');
    expect([status, stderr]).toEqual([0, '']);
    expect(JSON.parse(stdout).cylinders).toHaveLength(5);
  });

  it('leaves 2 for a value out of range, with the message and no stack trace on standard error', () => {
    const { status, stdout, stderr } = umbel('point', 'lovage-7', '--speed', '6000', '--set', 'lambda=9');
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toBe('fuel.lambda: Mixture: λ is 9; allowed 0.5 to 2\n');
  });
});
