import { describe, expect, it } from 'vitest';
import { markedText } from '../../../src/app/definitions/marked-text.ts';

describe('markedText', () => {
  it('lowers the index of ρ_a and V_s and keeps what is between', () => {
    expect(markedText('air / (ρ_a V_s)')).toEqual([
      { text: 'air / (ρ', kind: 'plain' },
      { text: 'a', kind: 'lowered' },
      { text: ' V', kind: 'plain' },
      { text: 's', kind: 'lowered' },
      { text: ')', kind: 'plain' },
    ]);
  });

  it('tells a title in _emphasis_ from an index, **strong** from plain', () => {
    expect(markedText('**CE**, _Engine Terms_, p_max')).toEqual([
      { text: 'CE', kind: 'strong' },
      { text: ', ', kind: 'plain' },
      { text: 'Engine Terms', kind: 'emphasis' },
      { text: ', p', kind: 'plain' },
      { text: 'max', kind: 'lowered' },
    ]);
  });
});
