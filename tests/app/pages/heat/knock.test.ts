import { describe, expect, it } from 'vitest';
import { knockColumns, knockSentence } from '../../../../src/app/pages/heat/knock.ts';
import type { SolvedPoint } from '../../../../src/sim/index.ts';
import { labels, lovage, metric } from '../solved.ts';

const needing = (octane: number, ...needed: number[]): SolvedPoint => ({
  ...lovage(),
  engine: { ...lovage().engine, octane, knockMargin: octane - Math.max(...needed) },
  cylinders: needed.map((octaneNeeded, i) => ({
    ...lovage().cylinders[i]!,
    knock: { octaneNeeded, integral: (octaneNeeded / octane) ** 3.402, endGasTemperature: 1000 },
  })),
});

describe('knockSentence', () => {
  it('names the cylinder that needs most, and how far below the fuel it stays', () => {
    expect(knockSentence(needing(90, 81, 85, 83), labels, metric)).toMatch(
      /^Cylinder 2 comes nearest: its end gas reaches 727\s°C and needs 85, 5\.0 below what the fuel counts as\. Engines/,
    );
  });

  it('says when the fuel does not suffice', () => {
    expect(knockSentence(needing(90, 97, 85), labels, metric)).toMatch(
      /Cylinder 1 .* needs 97, 7\.0 above what the fuel counts as/,
    );
  });

  it('says where the law is extrapolated', () => {
    expect(knockSentence(needing(90, 60), labels, metric)).toMatch(/Below 80 the law is extrapolated/);
  });

  it('has nothing to say of an engine that does not burn', () => {
    const cold: SolvedPoint = {
      ...lovage(),
      engine: { ...lovage().engine, knockMargin: null },
      cylinders: lovage().cylinders.map((each) => ({ ...each, knock: null })),
    };
    expect(knockColumns(cold)).toBeNull();
    expect(knockSentence(cold, labels, metric)).toBe('');
  });
});
