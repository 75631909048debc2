import { describe, expect, it } from 'vitest';
import { FIELDS } from '../../../src/design/fields.ts';
import {
  addItem,
  clearCorrection,
  designValue,
  enter,
  freshDraft,
  removeItem,
  reset,
  setFitted,
  whyHeld,
} from '../../../src/app/sheets/draft.ts';
import type { Draft } from '../../../src/app/sheets/draft.ts';
import { isLeftOff, preset, sound } from '../../design/designs.ts';

const lovage = freshDraft(preset('lovage-7'), 'lovage-7');
const angelica = freshDraft(preset('angelica-14'), 'angelica-14');
const why = (draft: Draft, path: string): string => (whyHeld(draft).get(path) ?? []).join(' ');

describe('enter', () => {
  it('takes “2 in” for a bore of 50.8 mm and keeps the words', () => {
    const draft = enter(lovage, 'cylinder.bore_mm', '2 in');
    expect(draft.design.cylinder.bore_mm).toBe(50.8);
    expect(draft.texts).toEqual({ 'cylinder.bore_mm': '2 in' });
    expect(draft.held).toEqual({});
    expect(draft.presetId).toBeNull();
  });

  it.each([
    ['-3', 'Bore is −3 mm; allowed 15 to 150 mm'],
    ['abc', '“abc” does not begin with a number; allowed 15 to 150 mm'],
    ['9e9', 'Bore is 9\u202f×\u202f10⁹ mm; allowed 15 to 150 mm'],
    ['', 'nothing is typed; the default is 40 mm; allowed 15 to 150 mm'],
    ['2 furlong', '“furlong” is not a unit known here; use mm, cm, in, m, ft, µm; allowed 15 to 150 mm'],
  ])('holds “%s” in the bore, leaves the design and says: %s', (text, message) => {
    const draft = enter(lovage, 'cylinder.bore_mm', text);
    expect(draft.design).toBe(lovage.design);
    expect(draft.held).toEqual({ 'cylinder.bore_mm': text });
    expect(why(draft, 'cylinder.bore_mm')).toBe(message);
  });

  it('uses two values that only fit together as soon as both are typed, while a faulty third still waits', () => {
    const seven = enter(lovage, 'crank.rows[0].axes_deg', '0; 51; 103; 154; 206; 257; 309');
    const faulty = enter(seven, 'cylinder.bore_mm', 'abc');
    const few = enter(faulty, 'crank.rows[0].cylinders', '5');
    expect(few.design).toBe(seven.design);
    expect(why(few, 'crank.rows[0].cylinders')).toContain('row A has 5 cylinders and needs as many');
    const five = enter(few, 'crank.rows[0].axes_deg', '0; 72; 144; 216; 288');
    expect(five.design.crank.rows).toMatchObject([{ cylinders: 5, axes_deg: [0, 72, 144, 216, 288] }]);
    expect(five.held).toEqual({ 'cylinder.bore_mm': 'abc' });
  });

  it('leaves a value out that may be left out when its field is emptied', () => {
    const typed = enter(lovage, 'blower.displacement_cc', '110');
    expect(typed.design.blower.displacement_cc).toBe(110);
    const emptied = enter(typed, 'blower.displacement_cc', '');
    expect(emptied.design.blower.displacement_cc).toBeUndefined();
  });

  it('puts a typed depth of the top edge in place of the angle, and the angle back in place of the depth', () => {
    const depth = enter(lovage, 'windows.exhaust[0].top_mm', '1 1/16 in');
    expect(depth.design.windows.exhaust[0]).toMatchObject({ top_mm: 26.9875 });
    expect(depth.design.windows.exhaust[0]!.opens_degATDC).toBeUndefined();
    const angle = enter(depth, 'windows.exhaust[0].opens_degATDC', '99');
    expect(angle.design.windows.exhaust[0]!.top_mm).toBeUndefined();
    expect(angle.texts).toEqual({ 'windows.exhaust[0].opens_degATDC': '99' });
  });

  it('makes the correction of a cylinder by its name', () => {
    const draft = enter(lovage, 'crank.corrections[A3].barrel_mm', '0,4');
    expect(draft.design.crank.corrections).toEqual([{ cylinder: 'A3', barrel_mm: 0.4 }]);
    expect(designValue(draft.design, 'crank.corrections[A3].barrel_mm')).toBe(0.4);
  });

  it('says at the field what its value breaks elsewhere: fewer cylinders than a correction needs', () => {
    const corrected = enter(lovage, 'crank.corrections[A7].barrel_mm', '0.4');
    const draft = enter(corrected, 'crank.rows[0].cylinders', '5');
    expect(draft.design).toBe(corrected.design);
    expect(why(draft, 'crank.rows[0].cylinders')).toContain('there is no cylinder A7; allowed: A1 to A5');
  });
});

describe('reset', () => {
  it('returns every number and choice of Lovage 7 outside its lists to the default of its field', () => {
    for (const field of FIELDS) {
      if (field.path.includes('[') || field.kind === 'text' || isLeftOff(field.path)) continue;
      const outcome = reset(lovage, field.path);
      // A default that does not fit the rest of this design is refused, not half taken.
      if (!outcome.ok) continue;
      expect(designValue(outcome.value.design, field.path) ?? null, field.path).toEqual(field.default);
    }
  });

  it('drops a held text', () => {
    const draft = sound(reset(enter(lovage, 'cylinder.bore_mm', 'abc'), 'cylinder.bore_mm'));
    expect(draft.held).toEqual({});
    expect(draft.design.cylinder.bore_mm).toBe(40);
  });
});

describe('addItem and removeItem', () => {
  it('add a gear stage like the last one, and move what was typed for a later stage up when one is taken out', () => {
    const two = sound(addItem(enter(lovage, 'blower.gears[0].driver', '20'), 'blower.gears'));
    expect(two.design.blower.gears.map(({ driver }) => driver)).toEqual([20, 20]);
    const typed = enter(enter(two, 'blower.gears[1].driver', '24'), 'blower.gears[1].driven', 'x');
    const one = sound(removeItem(typed, 'blower.gears', 0));
    expect(one.design.blower.gears.map(({ driver }) => driver)).toEqual([24]);
    expect(one.texts).toEqual({ 'blower.gears[0].driver': '24' });
    expect(one.held).toEqual({ 'blower.gears[0].driven': 'x' });
  });

  it('refuse to take out a collector that a row still uses, and change nothing', () => {
    const count = angelica.design.exhaust.collectors.length;
    expect(count).toBeGreaterThan(1);
    const outcome = removeItem(angelica, 'exhaust.collectors', count - 1);
    expect(outcome.ok).toBe(false);
  });

  it('take a row out with the corrections of its cylinders, and rename those of the rows behind it', () => {
    const corrected = enter(
      enter(angelica, 'crank.corrections[A2].barrel_mm', '0.1'),
      'crank.corrections[B3].barrel_mm',
      '0.2',
    );
    const draft = sound(removeItem(corrected, 'crank.rows', 0));
    expect(draft.design.crank.rows).toHaveLength(1);
    expect(draft.design.crank.corrections).toMatchObject([{ cylinder: 'A3', barrel_mm: 0.2 }]);
    expect(draft.texts).toEqual({ 'crank.corrections[A3].barrel_mm': '0.2' });
  });
});

describe('setFitted', () => {
  it('takes the relief valve off, and fits it again with its defaults', () => {
    const off = sound(setFitted(lovage, 'plenum.relief', false));
    expect(off.design.plenum.relief).toBeNull();
    const on = sound(setFitted(off, 'plenum.relief', true));
    expect(on.design.plenum.relief).toMatchObject({ bore_mm: 20 });
  });
});

describe('clearCorrection', () => {
  it('makes one cylinder like the others and leaves the corrections of another', () => {
    const both = enter(
      enter(lovage, 'crank.corrections[A2].barrel_mm', '0.1'),
      'crank.corrections[A3].spark_degBTDC',
      '22',
    );
    const draft = sound(clearCorrection(both, 'A2'));
    expect(draft.design.crank.corrections).toEqual([{ cylinder: 'A3', spark_degBTDC: 22 }]);
  });
});
