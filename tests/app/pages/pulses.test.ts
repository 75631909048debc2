import { describe, expect, it } from 'vitest';
import {
  dialRings,
  firing,
  landingsOf,
  pulsesSentence,
  ripples,
  torqueColumns,
} from '../../../src/app/pages/pulses.ts';
import type { Firing } from '../../../src/app/pages/pulses.ts';
import { turning } from '../../../src/sim/study/pulses/pulses.ts';
import { cylinderLabels } from '../../../src/app/cylinder-labels.ts';
import { toEngine } from '../../../src/design/to-engine.ts';
import { buildGeometry } from '../../../src/sim/geometry/build-geometry.ts';
import { preset, sound } from '../../design/designs.ts';
import { modelOf } from '../../helpers/engines.ts';
import { engine, geometry, labels, lovage, metric } from './solved.ts';

const read = (order: Firing, fires: boolean, torque: Parameters<typeof pulsesSentence>[2]): string =>
  pulsesSentence(order, fires, torque, metric)
    .map(({ text }) => text)
    .join('');
const order = firing(geometry.cylinders, labels);

describe('firing', () => {
  it('has gaps of seven true top dead centres that make one turn, even spacing 360/7°', () => {
    expect(order.gaps.reduce((sum, { gap_deg }) => sum + gap_deg, 0)).toBeCloseTo(360, 9);
    expect(order.even_deg).toBeCloseTo(360 / 7, 12);
    expect(order.least_deg).toBeLessThan(order.even_deg);
    expect(order.most_deg).toBeGreaterThan(order.even_deg);
  });

  it('follows the crank round: 7 fires before 1, 1 before 2', () => {
    expect(order.gaps.map(({ from, to }) => `${from}${to}`)).toEqual([
      '71',
      '12',
      '23',
      '34',
      '45',
      '56',
      '67',
    ]);
  });
});

describe('dialRings', () => {
  it('gives Angelica 14 a ring of seven for each of its two rows, angles within the turn', () => {
    const angelica = sound(buildGeometry(toEngine(preset('angelica-14'))));
    const rings = dialRings(angelica.cylinders, cylinderLabels(angelica), 8);
    expect(rings.map(({ label, events }) => [label, events.length])).toEqual([
      ['row A', 7],
      ['row B', 7],
    ]);
    expect(rings[1]!.events[1]).toMatchObject({ label: 'B2', selected: true });
    for (const { tdc_deg, exhaust_deg, transfer_deg } of rings.flatMap((ring) => ring.events)) {
      for (const angle of [tdc_deg, exhaust_deg, transfer_deg]) {
        expect(angle).toBeGreaterThanOrEqual(0);
        expect(angle).toBeLessThan(360);
      }
    }
  });
});

describe('torqueColumns', () => {
  it('adds up at every angle of the first turn: total = gas + inertia - blower - friction', () => {
    const { torque } = turning(modelOf(engine), lovage());
    const { angle_deg, gas, inertia, blower, total } = torqueColumns(torque);
    expect(angle_deg.at(-1)).toBeCloseTo(360, 9);
    total.forEach((value, i) => {
      expect(value).toBeCloseTo(gas[i]! + inertia[i]! - blower[i]! - torque.mean.friction, 9);
    });
  });
});

describe('landingsOf', () => {
  it('names every cylinder of Angelica 14 once, on the collector of its row, in the order of the turn', () => {
    const angelica = toEngine(preset('angelica-14'));
    const built = sound(buildGeometry(angelica));
    const landings = landingsOf({ engine: angelica, geometry: built }, cylinderLabels(built));
    expect(new Set(landings.map(({ label }) => label)).size).toBe(14);
    for (const { label, collector, exhaust_deg, transfer_deg } of landings) {
      expect(collector).toBe(label.startsWith('A') ? 0 : 1);
      const between = (((transfer_deg - exhaust_deg) % 360) + 360) % 360;
      expect(between).toBeGreaterThan(10);
      expect(between).toBeLessThan(25);
    }
    expect(landings[0]!.label).toBe('A1');
    expect(landings[1]!.label).toBe('B5');
  });
});

describe('ripples', () => {
  it('names inlet box, plenum and the one collector, each with its mean between its ends', () => {
    const rows = ripples(lovage());
    expect(rows.map(({ name }) => name)).toEqual(['inlet box', 'plenum', 'collector']);
    for (const { least, mean, most, swing } of rows) {
      expect(least).toBeLessThan(mean);
      expect(mean).toBeLessThan(most);
      expect(swing).toBeCloseTo(most - least, 6);
    }
  });
});

describe('pulsesSentence', () => {
  const torque = {
    mean: { gas: 12, blower: 1, friction: 1, total: 10 },
    peak: 16,
    least: 2,
    peakOverMean: 1.6 as number | null,
  };

  it('counts seven fires of Lovage 7, 46 to 55° apart, and a peak of 1.6 times the mean', () => {
    expect(read(order, true, torque)).toBe(
      'Seven fires a turn, 46 to 55° apart where even is 51.4°; torque peaks at 1.6 times its mean.',
    );
  });

  it('needs no gaps for one cylinder', () => {
    const one = { gaps: order.gaps.slice(0, 1), even_deg: 360, least_deg: 360, most_deg: 360 };
    expect(read(one, true, torque)).toBe('One fire a turn; torque peaks at 1.6 times its mean.');
  });

  it('says one gap where all are even, and tenths of a degree where whole ones would read alike', () => {
    const three = { gaps: order.gaps.slice(0, 3), even_deg: 120, least_deg: 120, most_deg: 120 };
    expect(read(three, true, null)).toBe('Three fires a turn, 120° apart.');
    expect(read({ ...three, least_deg: 119.7, most_deg: 120.3 }, true, null)).toContain(
      '119.7 to 120.3° apart',
    );
  });

  it('gives no ratio to a mean that is not positive, and speaks of compressions where nothing burns', () => {
    const text = read(order, false, { ...torque, peakOverMean: null, peak: 20, least: -25 });
    expect(text).toContain('Seven compressions a turn');
    expect(text).toContain('swings between −25 and 20\u00a0N\u00a0m: the crank must be driven');
    expect(text).not.toContain('times');
  });
});
