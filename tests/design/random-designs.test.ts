import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FIELDS } from '../../src/design/fields.ts';
import type { Field } from '../../src/design/fields.ts';
import { readPath } from '../../src/design/path.ts';
import { validate } from '../../src/design/validate.ts';
import { isLeftOff, preset } from './designs.ts';

/** Free of combinations and of geometry: any value in their range makes a valid design. */
const FREE = FIELDS.filter(
  ({ path, kind, otherwise }) =>
    (kind === 'number' || kind === 'integer') &&
    otherwise === null &&
    /^(blower|plenum\.(passages|inletBox|wall)|exhaust|fuel|cooling|surroundings)\b/.test(path) &&
    !/Gap|tipDiameter|gears/.test(path) &&
    !isLeftOff(path),
);
const NUMBERS = FIELDS.filter(
  ({ kind, path }) => kind === 'number' && !/corrections/.test(path) && !isLeftOff(path),
);

const within = ({ min, max, kind }: Field) =>
  kind === 'integer'
    ? fc.integer({ min: min!, max: max! })
    : fc.double({ min: min!, max: max!, noNaN: true }).map((value) => value + 0);

function put(data: unknown, path: string, value: unknown): void {
  const steps = readPath(path.replace(/\[\]/g, '[0]'))!;
  const holder = steps
    .slice(0, -1)
    .reduce<Record<string | number, unknown>>(
      (at, step) => at[step] as Record<string | number, unknown>,
      data as Record<string | number, unknown>,
    );
  holder[steps.at(-1)!] = value;
}

describe('validate', () => {
  it('accepts any values in their ranges where nothing ties them together', () => {
    const values = fc.tuple(...FREE.map(within));
    fc.assert(
      fc.property(values, (drawn) => {
        const data = structuredClone(preset('caraway-1'));
        FREE.forEach((field, i) => put(data, field.path, drawn[i]));
        const outcome = validate(data);
        expect(outcome.ok ? [] : outcome.faults).toEqual([]);
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  it('reports a corrupted value at its own path, and nothing else than what speaks of it', () => {
    const corruption = fc.oneof(
      fc.constantFrom<(field: Field) => unknown>(
        ({ max }) => max! * 1.001 + 1,
        ({ min }) => min! - Math.abs(min!) * 0.001 - 1,
        () => Infinity,
        () => NaN,
        () => 'seven',
        () => null,
        () => [1],
        () => ({}),
        () => true,
      ),
    );
    fc.assert(
      fc.property(fc.constantFrom(...NUMBERS), corruption, (field, corrupt) => {
        const data = structuredClone(preset('lovage-7'));
        put(data, field.path, corrupt(field));
        const outcome = validate(data);
        const paths = outcome.ok ? [] : outcome.faults.map(({ path }) => path);
        expect(paths).toContain(field.path.replace(/\[\]/g, '[0]'));
        expect(
          paths.filter((path) => !path.startsWith('windows.') && path !== field.path.replace(/\[\]/g, '[0]')),
        ).toEqual([]);
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it('reports an unknown key wherever it stands', () => {
    const groups = [
      '',
      'crank',
      'crank.rows[0]',
      'windows.transfer[1]',
      'plenum.relief',
      'fuel.burning',
      'exhaust.collectors[0].wall',
    ];
    const key = fc.stringMatching(/^[a-z]{3,12}_xx$/);
    fc.assert(
      fc.property(fc.constantFrom(...groups), key, (group, name) => {
        const data = structuredClone(preset('lovage-7'));
        const path = group === '' ? name : `${group}.${name}`;
        put(data, path, 1);
        const outcome = validate(data);
        expect(outcome.ok ? [] : outcome.faults.map((fault) => fault.path)).toEqual([path]);
      }),
      { numRuns: 50, seed: 13 },
    );
  });
});
