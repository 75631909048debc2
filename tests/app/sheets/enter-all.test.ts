import { describe, expect, it } from 'vitest';
import { enter, enterAll, freshDraft } from '../../../src/app/sheets/draft.ts';
import { preset } from '../../design/designs.ts';

const draft = freshDraft(preset('lovage-7'), 'lovage-7');

describe('enterAll', () => {
  it('puts several values in as one step, and the design leaves its preset', () => {
    const changed = enterAll(draft, [
      { path: 'blower.gears[0].driver', text: '40' },
      { path: 'blower.gears[0].driven', text: '17' },
    ]);
    if (!changed.ok) throw new Error('must be taken');
    expect(changed.value.design.blower.gears[0]).toMatchObject({ driver: 40, driven: 17 });
    expect(changed.value.presetId).toBeNull();
    expect(draft.design.blower.gears[0]).toMatchObject({ driver: 36, driven: 18 });
  });

  it('takes none where one cannot be, and says which', () => {
    const changed = enterAll(draft, [
      { path: 'blower.gears[0].driver', text: '40' },
      { path: 'plenum.volume_cc', text: 'nothing' },
    ]);
    expect(changed.ok ? [] : changed.faults.map(({ path }) => path)).toEqual(['plenum.volume_cc']);
  });

  it('keeps what waits elsewhere, and drops what was typed at the same place', () => {
    const waiting = enter(enter(draft, 'cylinder.bore_mm', 'wide'), 'plenum.volume_cc', '1.2 l');
    const changed = enterAll(waiting, [{ path: 'plenum.volume_cc', text: '1500' }]);
    if (!changed.ok) throw new Error('must be taken');
    expect(changed.value.held).toEqual({ 'cylinder.bore_mm': 'wide' });
    expect(changed.value.texts['plenum.volume_cc']).toBeUndefined();
    expect(changed.value.design.plenum.volume_cc).toBe(1500);
  });
});
