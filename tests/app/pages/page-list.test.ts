import { describe, expect, it } from 'vitest';
import { pageOf, pages } from '../../../src/app/pages/page-list.ts';

describe('pageOf', () => {
  it('finds each of the six pages by its address', () => {
    expect(pages.map(({ id }) => pageOf(`#${id}`))).toEqual([
      'air',
      'pulses',
      'breathing',
      'heat',
      'output',
      'fit',
    ]);
  });

  it('opens Air for an address that names no page', () => {
    expect([pageOf(''), pageOf('#nowhere'), pageOf('#Air')]).toEqual(['air', 'air', 'air']);
  });
});
