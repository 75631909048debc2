import { describe, expect, it } from 'vitest';
import { firingOrder } from '../../../src/sim/geometry/firing-order.ts';
import { TURN, deg, mm } from '../../../src/sim/units.ts';
import { built, engineWith, evenRow, windowGroup } from './workshop.ts';

const intervals_deg = (angles: readonly number[]): number[] =>
  firingOrder(angles).map((one) => one.interval / deg);

describe('firingOrder', () => {
  it('gives a single cylinder one interval of 360°', () => {
    expect(firingOrder([0])).toEqual([{ index: 0, angle: 0, interval: TURN }]);
  });

  it('sorts by angle and counts each interval from the one before: 0, 90, 200° give 160, 90, 110', () => {
    const order = firingOrder([200 * deg, 0, 90 * deg]);
    expect(order.map((one) => one.index)).toEqual([1, 2, 0]);
    [160, 90, 110].forEach((interval, i) => expect(order[i]!.interval / deg).toBeCloseTo(interval, 10));
  });

  it('sets cylinders that fire together 0 apart, in the order given', () => {
    const order = firingOrder([0, Math.PI, 0]);
    expect(order.map((one) => one.index)).toEqual([0, 2, 1]);
    expect(order[1]!.interval).toBe(0);
  });

  it('shows the reference five-cylinder row firing unevenly: 73.98, 72.76, 66.51, 72.76, 73.98°', () => {
    // Differences of the top dead centres in tests/reference/articulated-a.csv.
    const row = engineWith({
      crankRadius: 20 * mm,
      masterRod: 90 * mm,
      knuckle: 20 * mm,
      rows: [evenRow({ count: 5, masterRod: 90 * mm, knuckle: 20 * mm })],
      exhaust: [windowGroup({ top: { kind: 'depth', depth: 24 * mm } })],
      transfer: [windowGroup({ top: { kind: 'depth', depth: 30 * mm } })],
    });
    const found = intervals_deg(built(row).cylinders.map((one) => one.tdc));
    [73.9843, 73.9843, 72.7594, 66.5126, 72.7594].forEach((interval, i) =>
      expect(Math.abs(found[i]! - interval)).toBeLessThan(2e-4),
    );
  });

  it('interleaves two rows of seven plain rods on opposed throws: 14 even intervals', () => {
    const rows = [0, 180].map((throw_deg) =>
      evenRow({ count: 7, masterRod: 95 * mm, knuckle: 0, throwAngle: throw_deg * deg }),
    );
    const found = intervals_deg(built(engineWith({ knuckle: 0, rows })).cylinders.map((one) => one.tdc));
    found.forEach((interval) => expect(interval).toBeCloseTo(360 / 14, 9));
  });
});
