import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDefinitions } from '../../../src/app/definitions/read-definitions.ts';

const document = readFileSync('docs/conventions.md', 'utf8');
const definitions = readDefinitions(document);

describe('readDefinitions', () => {
  it('gives the delivery ratio its words, its equation, its symbols and its source, as the document has them', () => {
    const found = definitions.get('deliveryRatio')!;
    expect(found.name).toBe('delivery ratio δ');
    expect(found.formula).toContain('(ρ_a V_s)');
    expect(found.symbols.map(({ symbol }) => symbol)).toEqual(['V_s', 'air', 'ρ_a']);
    expect(found.per).toBe('cylinder, engine');
    expect(found.source).toContain('SAE J604');
    expect(document).toContain(found.formula);
  });

  it('explains a symbol only where it stands in the formula: f and χ in the charging efficiency, no N', () => {
    const symbols = definitions.get('chargingEfficiency')!.symbols.map(({ symbol }) => symbol);
    expect(symbols).toEqual(expect.arrayContaining(['V_s', 'ρ_a', 'χ', 'f', 'trapped']));
    expect(symbols).not.toContain('N');
    // The unit N m is not the speed N.
    expect(definitions.get('gasTorque')!.symbols.map(({ symbol }) => symbol)).toEqual(['p_a']);
  });

  it('takes rows that define several figures at once', () => {
    expect(definitions.get('airFlow')!.formula).toBe(definitions.get('fuelFlow')!.formula);
    expect(definitions.get('residuals.change')!.name).toBe('change');
  });

  it('knows a formula and a source for each', () => {
    expect(definitions.size).toBeGreaterThan(40);
    for (const { id, formula, source } of definitions.values()) {
      expect(formula, id).not.toBe('');
      if (!id.startsWith('residuals') && !['cycles', 'preliminary', 'mass', 'species', 'energy'].includes(id))
        expect(source, id).not.toBe('');
    }
  });

  it('defines every term that the page lets a reader ask about', () => {
    const files = readdirSync('src/app', { recursive: true, encoding: 'utf8' }).filter((name) =>
      /\.(svelte|ts)$/.test(name),
    );
    const asked = files.flatMap((name) =>
      [
        ...readFileSync(`src/app/${name}`, 'utf8').matchAll(/\bterm: (?:[^,\n]*\? )?'(\w+)'(?: : '(\w+)')?/g),
      ].flatMap(([, one, other]) => [one!, ...(other ? [other] : [])]),
    );
    expect(new Set(asked).size).toBeGreaterThan(15);
    expect([...new Set(asked)].filter((term) => !definitions.has(term))).toEqual([]);
  });
});
