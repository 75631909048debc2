import { describe, expect, it } from 'vitest';
import { migrate } from '../../src/design/migrate.ts';
import type { Migration } from '../../src/design/migrate.ts';

/** Made-up history: version 2 renamed the title, version 3 put the bore into a group. */
const HISTORY: Record<number, Migration> = {
  1: ({ title, ...rest }) => ({ ...rest, name: title }),
  2: ({ bore_mm, ...rest }) => ({ ...rest, cylinder: { bore_mm } }),
};

const said = (data: unknown, present = 3) => {
  const outcome = migrate(data, HISTORY, present);
  return outcome.ok ? outcome.value : outcome.faults[0]!.message;
};

describe('migrate', () => {
  it('brings a file two versions old to the present one, step by step', () => {
    const wanted = { version: 3, name: 'Old', cylinder: { bore_mm: 40 } };
    expect(said({ version: 1, title: 'Old', bore_mm: 40 })).toEqual(wanted);
    expect(said({ version: 2, name: 'Old', bore_mm: 40 })).toEqual(wanted);
    expect(said(wanted)).toEqual(wanted);
  });

  it('says that a newer file wants a newer program', () => {
    expect(said({ version: 4 })).toMatch(/version 4, newer than this program, which reads up to 3/);
  });

  it('refuses a file without a version, or with one that is no whole number from 1', () => {
    expect(said({})).toMatch(/missing/);
    for (const version of ['1', 0, 1.5, null])
      expect(said({ version })).toMatch(/allowed: a whole number, 1 to 3/);
  });

  it('says when no step leads on from an old version', () => {
    expect(migrate({ version: 1 }, {}, 2)).toMatchObject({ ok: false, faults: [{ path: 'version' }] });
  });
});
