import { describe, expect, it } from 'vitest';
import { harmonicBars } from '../../../../src/app/pages/pulses/harmonic-bars.ts';
import {
  bearingColumns,
  counterweightText,
  rodColumns,
  shaftColumns,
  shakingColumns,
} from '../../../../src/app/pages/pulses/load-tables.ts';
import { pulses } from '../../../../src/sim/study/pulses/pulses.ts';
import type { Harmonic } from '../../../../src/sim/study/pulses/harmonics.ts';
import { modelOf } from '../../../helpers/engines.ts';
import { engine, labels, lovage, metric, workshop } from '../solved.ts';

const found = pulses(modelOf(engine), lovage());
const orders = (...amplitudes: readonly (readonly [number, number])[]): Harmonic[] =>
  amplitudes.map(([order, amplitude]) => ({ order, amplitude, phase: 0 }));

describe('harmonicBars', () => {
  it('ends where nothing is to be seen, and leaves out broken orders that are not', () => {
    const total = orders([0.5, 0.001], [1, 4], [1.5, 2], [2, 0.001], [2.5, 0.001], [3, 1], [3.5, 0], [4, 0]);
    const none = total.map((each) => ({ ...each, amplitude: 0 }));
    const bars = harmonicBars({ total, gas: total, inertia: none, blower: none });
    expect(bars.names).toEqual(['1', '1.5', '2', '3']);
    expect(bars.total).toEqual([4, 2, 0.001, 1]);
    expect(bars.strongest).toBe(0);
  });

  it('shows Lovage 7 strongest at order 7', () => {
    const bars = harmonicBars(found.harmonics);
    expect(bars.names[bars.strongest]).toBe('7');
  });
});

describe('load tables', () => {
  it('give every rod a line, the master none for a knuckle pin', () => {
    const columns = rodColumns(found.loads, labels, metric);
    expect(columns[0]!.values).toEqual(labels);
    const knuckles = columns.find(({ heading }) => heading.startsWith('knuckle pin'))!;
    expect(Array.from(knuckles.values as Float64Array, Number.isFinite)).toEqual([
      false,
      ...Array.from({ length: 6 }, () => true),
    ]);
  });

  it('give forces in the reader’s unit', () => {
    const [newton, pound] = [metric, workshop].map(
      (units) => bearingColumns(found, units)[1]!.values[0] as number,
    );
    expect(newton! / pound!).toBeCloseTo(4.4482216, 6);
    expect(bearingColumns(found, workshop)[1]!.heading).toBe('peak, lbf');
  });

  it('say whether a shaft reverses, and leave out teeth where there are none', () => {
    const [names, output, blower] = shaftColumns(found, metric, 2).map(({ values }) => values as string[]);
    const line = (name: string) => names!.findIndex((each) => each.startsWith(name));
    expect(output![line('reverses')]).toBe('no');
    expect(blower![line('reverses')]).toBe('yes');
    expect(output![line('teeth')]).toBe('–');
    expect(Number(blower![line('teeth')])).toBeGreaterThan(0);
  });

  it('tell moments only where there are several rows, and the counterweight in words', () => {
    expect(shakingColumns(found, 1, metric)).toHaveLength(3);
    expect(shakingColumns(found, 2, metric)).toHaveLength(5);
    expect(counterweightText(found)).toMatch(/^Counterweight: [\d ]+\u00a0g\u00a0mm opposite its pin/);
  });
});
