import { describe, expect, it } from 'vitest';
import { flowLayout, ribbonPath } from '../../src/charts/flow-layout.ts';

const flow = (label: string, value: number) => ({ label, value, colour: 'black' });
const thickness = ({ top, bottom }: { top: number; bottom: number }): number => bottom - top;

describe('flowLayout', () => {
  it('draws a balance that closes as high on both sides of the trunk', () => {
    const { incoming, outgoing, total } = flowLayout(
      flow('fuel', 100),
      [flow('brake', 30), flow('walls', 10), flow('exhaust', 60)],
      220,
      10,
      20,
    );
    expect(total).toBe(100);
    expect(thickness(incoming[0]!.atTrunk)).toBeCloseTo(200, 9);
    expect(outgoing.map(({ atTrunk }) => Math.round(thickness(atTrunk)))).toEqual([60, 20, 120]);
    expect(outgoing[0]!.atTrunk.top).toBeCloseTo(incoming[0]!.atTrunk.top, 9);
    expect(outgoing[2]!.atTrunk.bottom).toBeCloseTo(incoming[0]!.atTrunk.bottom, 9);
  });

  it('shows a balance that does not close: 90 of 100 leave a step of a tenth', () => {
    const { incoming, outgoing } = flowLayout(flow('fuel', 100), [flow('brake', 90)], 200, 10, 20);
    expect(thickness(outgoing[0]!.atTrunk) / thickness(incoming[0]!.atTrunk)).toBeCloseTo(0.9, 9);
  });

  it('lets a negative flow come in beside the source: 80 and 20 make 100', () => {
    const { incoming, outgoing, total } = flowLayout(
      flow('fuel', 80),
      [flow('brake', -20), flow('exhaust', 100)],
      210,
      10,
      20,
    );
    expect(total).toBe(100);
    expect(incoming.map(({ label, size }) => [label, size])).toEqual([
      ['fuel', 80],
      ['brake', 20],
    ]);
    expect(outgoing.map(({ label }) => label)).toEqual(['exhaust']);
  });

  it('keeps labels of thin flows apart and within the height', () => {
    const thin = Array.from({ length: 6 }, (_, i) => flow(`thin ${i}`, 0.01));
    const { outgoing } = flowLayout(flow('fuel', 100), [...thin, flow('exhaust', 99.94)], 240, 5, 20);
    const places = outgoing.map(({ labelY }) => labelY).sort((a, b) => a - b);
    for (let i = 1; i < places.length; i++) {
      expect(places[i]! - places[i - 1]!).toBeGreaterThanOrEqual(20 - 1e-9);
    }
    expect(places[0]!).toBeGreaterThanOrEqual(10);
    expect(places.at(-1)!).toBeLessThanOrEqual(230);
  });

  it('draws nothing of flows that are zero or missing', () => {
    const { incoming, outgoing, total } = flowLayout(flow('fuel', 0), [flow('brake', NaN)], 200, 10, 20);
    expect([incoming.length, outgoing.length, total]).toEqual([0, 0, 0]);
  });
});

describe('ribbonPath', () => {
  it('leaves and arrives level, as thick as it was told', () => {
    expect(ribbonPath(0, { top: 0, bottom: 10 }, 100, { top: 20, bottom: 30 })).toBe(
      'M0,0C50,0 50,20 100,20V30C50,30 50,10 0,10Z',
    );
  });
});
