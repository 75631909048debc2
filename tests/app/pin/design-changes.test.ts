import { describe, expect, it } from 'vitest';
import { changesText, designChanges } from '../../../src/app/pin/design-changes.ts';
import { setValues } from '../../../src/design/set-value.ts';
import { preset, sound } from '../../design/designs.ts';

const lovage = preset('lovage-7');
const changed = (...texts: [string, string][]) =>
  sound(
    setValues(
      lovage,
      texts.map(([path, text]) => ({ path, text })),
    ),
  );

describe('designChanges', () => {
  it('names the fields that differ, with their units, and no others', () => {
    const changes = designChanges(
      lovage,
      changed(['cylinder.bore_mm', '42'], ['blower.gears[0].driven', '20']),
    );
    expect(changes).toEqual([
      { label: 'bore', from: '40 mm', to: '42 mm' },
      { label: expect.stringMatching(/teeth/) as string, from: '18', to: '20' },
    ]);
  });

  it('finds nothing between a design and itself, nor in its name', () => {
    expect(designChanges(lovage, lovage)).toEqual([]);
    expect(designChanges(lovage, { ...lovage, name: 'Other' })).toEqual([]);
  });
});

describe('changesText', () => {
  it('tells three and counts the rest', () => {
    const change = (label: string) => ({ label, from: '1', to: '2' });
    expect(changesText(['bore', 'stroke', 'rod', 'width', 'top'].map(change))).toBe(
      'bore 2, stroke 2, rod 2 and 2 more',
    );
  });
});
