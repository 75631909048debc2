import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FIELDS, HOLDERS, fieldAt } from '../../src/design/fields.ts';
import { publishedSchema } from '../../src/design/json-schema.ts';
import { remarks } from '../../src/design/remarks.ts';
import { SCAVENGING_BY_LAYOUT } from '../../src/design/scavenging-layouts.ts';
import { FUELS } from '../../src/sim/gas/fuels.ts';
import { preset } from './designs.ts';

describe('publishedSchema', () => {
  it('is what stands in docs/design-schema.json: run npm run schema after a change', () => {
    const committed = readFileSync(new URL('../../docs/design-schema.json', import.meta.url), 'utf8');
    expect(committed).toBe(publishedSchema());
  });
});

describe('FIELDS', () => {
  it('gives every field a label and a source, and every number a range that holds its default and what is plausible', () => {
    for (const field of FIELDS) {
      expect(field.label, field.path).not.toBe(field.path);
      if (field.path === 'version') continue;
      expect(field.source, field.path).not.toBe('');
      if (field.kind !== 'number' && field.kind !== 'integer' && field.kind !== 'list') continue;
      const { min, max, plausible, default: fallback, otherwise } = field;
      const [low, high] = plausible!;
      expect(min! <= low && low < high && high <= max!, field.path).toBe(true);
      if (typeof fallback === 'number') expect(fallback >= low && fallback <= high, field.path).toBe(true);
      else if (Array.isArray(fallback))
        expect(
          fallback.every((each) => each >= low && each <= high),
          field.path,
        ).toBe(true);
      else expect(otherwise, field.path).not.toBeNull();
    }
  });

  it('names no sibling that is not there', () => {
    for (const { path, key, insteadOf } of FIELDS) {
      if (insteadOf !== null) expect(fieldAt(path.replace(key, insteadOf))?.insteadOf).toBe(key);
    }
  });

  it('has the parts in the order of the page', () => {
    expect([...new Set(FIELDS.map((field) => field.partLabel))].filter((label) => label !== '')).toEqual([
      'Crank and rods',
      'Cylinder',
      'Windows',
      'Blower and drive',
      'Plenum and passages',
      'Exhaust',
      'Fuel and spark',
      'Cooling',
      'Surroundings',
      'What is wanted',
    ]);
  });

  it('offers the fuels that the model knows, and no others', () => {
    expect(fieldAt('fuel.kind')!.choices).toEqual(Object.keys(FUELS));
  });

  it('states in words the shares that each layout sets', () => {
    for (const key of ['displacedShare', 'shortCircuitShare'] as const) {
      const { otherwise } = fieldAt(`windows.scavenging.${key}`)!;
      for (const [layout, shares] of Object.entries(SCAVENGING_BY_LAYOUT)) {
        expect(otherwise).toContain(`${layout} ${shares[key]}`);
      }
    }
  });
});

describe('HOLDERS', () => {
  it('knows which groups may be off and which lists go by name', () => {
    expect(HOLDERS.filter(({ nullable }) => nullable).map(({ path }) => path)).toEqual([
      'crank.crankcase',
      'windows.exhaustTable',
      'windows.transferTable',
      'blower.secondStage',
      'blower.secondStage.cooler',
      'plenum.relief',
      'plenum.bypass',
      'fuel.blend',
      'fuel.restrictor',
      'fuel.venturi',
      'fuel.arrester',
    ]);
    expect(HOLDERS.filter(({ keyedBy }) => keyedBy !== null).map(({ path }) => path)).toEqual([
      'crank.corrections',
    ]);
  });
});

describe('remarks', () => {
  it('finds nothing unusual in Lovage 7, and an unusual mixture and window where there are some', () => {
    const design = preset('lovage-7');
    expect(remarks(design)).toEqual([]);
    const odd = structuredClone(design);
    odd.fuel.lambda = 1.6;
    odd.windows.transfer[1]!.corner_mm = 9;
    expect(remarks(odd).map(({ path }) => path)).toEqual(['windows.transfer[1].corner_mm', 'fuel.lambda']);
  });

  it('says that a fuel blended with itself changes nothing', () => {
    const odd = structuredClone(preset('lovage-7'));
    odd.fuel.blend = { kind: 'petrol', share: 0.2 };
    expect(remarks(odd).map(({ message }) => message)).toEqual([
      'The second fuel is petrol, as the first is: the blend changes nothing',
    ]);
  });
});
