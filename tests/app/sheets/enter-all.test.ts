import { describe, expect, it } from 'vitest';
import { enter, enterAll, freshDraft, turnInto } from '../../../src/app/sheets/draft.ts';
import { setValues } from '../../../src/design/set-value.ts';
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

describe('turnInto', () => {
  it('takes a design made of this one, keeps what was typed where it still holds, and drops it where not', () => {
    const typed = enter(enter(draft, 'plenum.volume_cc', '1.2 l'), 'crank.rows[0].throw_deg', '10 deg');
    const made = setValues(typed.design, [{ path: 'crank.rows[0].throw_deg', text: '20' }]);
    const turned = turnInto(typed, made);
    if (!turned.ok) throw new Error('must be taken');
    expect(turned.value.texts).toEqual({ 'plenum.volume_cc': '1.2 l' });
    expect(turned.value.design.crank.rows[0]!.throw_deg).toBe(20);
    expect(turned.value.presetId).toBeNull();
  });

  it('passes on what is wrong with a design that cannot be', () => {
    const faults = [{ path: 'crank', message: 'no' }];
    expect(turnInto(draft, { ok: false, faults })).toEqual({ ok: false, faults });
  });
});
