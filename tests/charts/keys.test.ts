import { describe, expect, it } from 'vitest';
import { curveKey } from '../../src/charts/keys.ts';

describe('curveKey', () => {
  it('is dashed for a dashed curve and a line for any other', () => {
    const marks = [{ dashed: true }, { dashed: false }, {}].map(
      (each) => curveKey({ label: 'supply', colour: 'var(--fresh)', ...each }).mark,
    );
    expect(marks).toEqual(['dashed', 'line', 'line']);
  });
});
