import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RowCylinder } from '../../../src/sim/engine.ts';
import { buildGeometry } from '../../../src/sim/geometry/build-geometry.ts';
import type { CylinderGeometry, GeometryInput } from '../../../src/sim/geometry/build-geometry.ts';
import { TURN, cc, deg, mm, mm2 } from '../../../src/sim/units.ts';
import { plausibleRow } from './plausible-row.ts';
import { referenceFive } from './reference-five.ts';
import { built, engineWith, evenRow, referenceRows, windowGroup } from './workshop.ts';
import { uniform } from './uniform.ts';

const top = (depth_mm: number) => ({ top: { kind: 'depth', depth: depth_mm * mm } }) as const;
const crownDepth = (cylinder: CylinderGeometry, crank: number): number => {
  cylinder.motion.evaluate(cylinder.tdc + cylinder.pinOffset);
  const highest = cylinder.motion.height;
  cylinder.motion.evaluate(crank + cylinder.pinOffset);
  return cylinder.depthAtTdc + highest - cylinder.motion.height;
};

describe('buildGeometry', () => {
  const reference = built(referenceFive());
  it.each(referenceRows('articulated-a.csv').map((row) => [row[0]!, row] as const))(
    'agrees with the reference for cylinder index %i: angles to 1e-3°, stroke to 1e-6 mm',
    (index, [, tdc, bdc, stroke, exhaustOpens, exhaustCloses, transferOpens, transferCloses]) => {
      const cylinder = reference.cylinders[index]!;
      const { exhaust, transfer } = cylinder;
      expect(Math.abs(cylinder.stroke / mm - stroke!)).toBeLessThan(1e-6);
      const pairs: [number, number][] = [
        [cylinder.tdc, tdc!],
        [cylinder.bdc, bdc!],
        [exhaust.opensAfterOwnTdc, exhaustOpens!],
        [exhaust.closesAfterOwnTdc, exhaustCloses!],
        [transfer.opensAfterOwnTdc, transferOpens!],
        [transfer.closesAfterOwnTdc, transferCloses!],
      ];
      for (const [found, expected] of pairs) expect(Math.abs(found / deg - expected)).toBeLessThan(1e-3);
    },
  );

  // Hand-worked for crank 25, rod 95 mm, ratio 8 on the master, decks at one height:
  // [cylinders, k_mm, index, bottom after own axis_deg, compression ratio].
  const sameDeck: [number, number, number, number | null, number][] = [
    [5, 24, 0, 180, 8],
    [5, 24, 1, 175.74, 7.16],
    [5, 24, 4, 184.26, 7.16],
    [5, 24, 2, 169.32, 7.75],
    [5, 24, 3, 190.68, 7.75],
    [7, 27, 2, null, 7.11],
    [7, 27, 3, null, 7.86],
    [3, 24, 1, 169.6, 7.41],
    [3, 24, 2, 190.4, 7.41],
  ];
  it.each(sameDeck)(
    'gives, of %i cylinders with k = %d mm at one barrel height, index %i its own bottom (%d°) and ratio (%d)',
    (count, knuckle_mm, index, bottom_deg, ratio) => {
      const cylinder = built(engineWith({ count, knuckle: knuckle_mm * mm })).cylinders[index]!;
      expect(Math.abs(cylinder.compressionRatio - ratio)).toBeLessThan(0.01);
      if (bottom_deg !== null) {
        const fromAxis = (cylinder.bdc / deg - (index * 360) / count + 360) % 360;
        expect(Math.abs(fromAxis - bottom_deg)).toBeLessThan(0.05);
      }
    },
  );

  // Hand-worked for the five at one height, edges 31 and 39 mm below the master's top, in degrees after the cylinder's own AXIS.
  const timing: [number, number, number, number, number][] = [
    [0, 96.2, 263.8, 117.0, 243.0],
    [2, 87.4, 273.1, 105.3, 250.5],
    [3, 86.9, 272.6, 109.5, 254.7],
  ];
  it.each(timing)(
    'times the windows of index %i of five at one height: exhaust %d to %d°, transfer %d to %d°',
    (index, ...expected) => {
      const { tdc, exhaust, transfer } = built(engineWith()).cylinders[index]!;
      const late = tdc / deg - index * 72;
      const found = [
        exhaust.opensAfterOwnTdc,
        exhaust.closesAfterOwnTdc,
        transfer.opensAfterOwnTdc,
        transfer.closesAfterOwnTdc,
      ];
      found.forEach((angle, i) => expect(Math.abs(angle / deg + late - expected[i]!)).toBeLessThan(0.06));
    },
  );

  it('shows transfer durations of one row apart by about 20° at one barrel height: 126 on the master, 145 on the third', () => {
    const open = built(engineWith()).cylinders.map(
      ({ transfer }) => (transfer.closesAfterOwnTdc - transfer.opensAfterOwnTdc) / deg,
    );
    expect(open[0]).toBeCloseTo(126, 0);
    expect(open[2]).toBeCloseTo(145, 0);
  });

  it('gives every plain-rod cylinder (k = 0) the same stroke, ratio and symmetric timing, an even spacing apart', () => {
    const { cylinders } = built(engineWith({ count: 7, knuckle: 0 }));
    for (const one of cylinders) {
      expect(Math.abs(one.stroke - 50 * mm)).toBeLessThan(1e-16);
      expect(one.compressionRatio).toBeCloseTo(8, 12);
      expect(one.exhaust.opensAfterOwnTdc + one.exhaust.closesAfterOwnTdc).toBeCloseTo(TURN, 12);
      expect(Math.abs(one.tdc - (one.cylinderIndex * TURN) / 7)).toBeLessThan(1e-12);
    }
  });

  it('tends to plain rods as k does to 0: timing of every cylinder within 1e-6 rad at k = 1 nm', () => {
    const plain = built(engineWith({ count: 7, knuckle: 0 })).cylinders;
    const nearly = built(engineWith({ count: 7, knuckle: 1e-9 })).cylinders;
    nearly.forEach((one, i) => {
      expect(Math.abs(one.tdc - plain[i]!.tdc)).toBeLessThan(1e-6);
      expect(Math.abs(one.exhaust.opensAfterOwnTdc - plain[i]!.exhaust.opensAfterOwnTdc)).toBeLessThan(1e-6);
      expect(Math.abs(one.stroke - plain[i]!.stroke)).toBeLessThan(1e-8);
    });
  });

  it('builds a single, a twin and a three: masters alike, the twin’s second stroke 2r too, the three’s longer', () => {
    const [single, twin, three] = [1, 2, 3].map((count) => built(engineWith({ count })).cylinders);
    expect([single!.length, twin!.length, three!.length]).toEqual([1, 2, 3]);
    for (const row of [single!, twin!, three!]) {
      expect(row[0]!.tdc).toBe(0);
      expect(row[0]!.bdc).toBeCloseTo(Math.PI, 14);
      expect(row[0]!.stroke / mm).toBeCloseTo(50, 12);
    }
    expect(twin![1]!.tdc).toBeCloseTo(Math.PI, 12);
    expect(twin![1]!.stroke / mm).toBeCloseTo(50, 12);
    expect(three![1]!.stroke / mm).toBeCloseTo(50.3915, 4);
  });

  it('puts crank angle 0 at the true top dead centre of cylinder 1 of row A when another cylinder is the master', () => {
    const rows = [evenRow({ count: 5, masterRod: 95 * mm, knuckle: 24 * mm, master: 2 })];
    const { cylinders } = built(engineWith({ rows }));
    expect(cylinders[0]!.tdc).toBe(0);
    expect(cylinders.map((one) => one.isMaster)).toEqual([false, false, true, false, false]);
    // The same row, counted from the master: index 2 of it is index 0 of the row with master 0, and so on round.
    const plain = built(engineWith()).cylinders;
    cylinders.forEach((one, i) => {
      const twin = plain[(i + 3) % 5]!;
      expect(one.stroke).toBeCloseTo(twin.stroke, 15);
      expect(one.transfer.opensAfterOwnTdc).toBeCloseTo(twin.transfer.opensAfterOwnTdc, 12);
      const apart = one.tdc - (twin.tdc - plain[3]!.tdc);
      expect(Math.abs(Math.sin(apart / 2))).toBeLessThan(1e-12);
    });
  });

  it('moves a row with its throw forwards in pin angle, so that it fires earlier, and with its stagger later', () => {
    const row = (throw_deg: number, stagger_deg: number) =>
      evenRow({
        count: 5,
        masterRod: 95 * mm,
        knuckle: 24 * mm,
        throwAngle: throw_deg * deg,
        staggerAngle: stagger_deg * deg,
      });
    const tdcOf = (rows: ReturnType<typeof row>[], index: number): number =>
      built(engineWith({ rows })).cylinders[index]!.tdc / deg;
    expect(tdcOf([row(0, 0), row(180, 0)], 5)).toBeCloseTo(180, 9);
    expect(tdcOf([row(0, 0), row(30, 0)], 5)).toBeCloseTo(330, 9);
    expect(tdcOf([row(0, 0), row(180, 36)], 5)).toBeCloseTo(216, 9);
    // Row A's own throw and stagger only say where the others stand from it.
    expect(tdcOf([row(50, 10), row(230, 46)], 0)).toBe(0);
    expect(tdcOf([row(50, 10), row(230, 46)], 5)).toBeCloseTo(216, 9);
    expect(tdcOf([row(50, 10), row(230, 46)], 1)).toBeCloseTo(74.7036651, 6);
  });

  it('numbers cylinders row by row, from 1 for people and from 0 for arrays', () => {
    const rows = [2, 3].map((count) => evenRow({ count, masterRod: 95 * mm, knuckle: 24 * mm }));
    const places = built(engineWith({ rows })).cylinders.map((one) => [
      one.index,
      one.row,
      one.number,
      one.rowIndex,
      one.cylinderIndex,
    ]);
    expect(places).toEqual([
      [0, 1, 1, 0, 0],
      [1, 1, 2, 0, 1],
      [2, 2, 1, 1, 0],
      [3, 2, 2, 1, 1],
      [4, 2, 3, 1, 2],
    ]);
  });

  it('sweeps bore area times stroke, and adds the cylinders', () => {
    const geometry = built(engineWith());
    expect(geometry.boreArea / mm2).toBeCloseTo(Math.PI * 22.5 ** 2, 9);
    expect(geometry.cylinders[0]!.sweptVolume / cc).toBeCloseTo(79.52, 2);
    const sum = geometry.cylinders.reduce((total, one) => total + one.sweptVolume, 0);
    expect(geometry.sweptVolume).toBe(sum);
  });

  it('counts the ratio from exhaust closing when asked: trapped 6 on the master, its full-stroke ratio then 9.06', () => {
    const cylinder = { compressionRatio: 6, compressionRatioFrom: 'exhaust closing' } as const;
    const [master] = built(engineWith({ cylinder })).cylinders;
    expect(master!.trappedCompressionRatio).toBeCloseTo(6, 12);
    // Vc = 31/5 mm of bore; 1 + 50/6.2.
    expect(master!.compressionRatio).toBeCloseTo(1 + 50 / 6.2, 10);
  });

  it('adds a raised barrel to the depth, the clearance and the window timing of its cylinder alone', () => {
    const raised = evenRow({
      count: 5,
      masterRod: 95 * mm,
      knuckle: 24 * mm,
      change: (_, j) => (j === 1 ? { barrelOffset: 0.5 * mm } : {}),
    });
    const before = built(engineWith());
    const after = built(engineWith({ rows: [raised] }));
    const gain = after.cylinders[1]!.clearanceVolume - before.cylinders[1]!.clearanceVolume;
    expect((after.cylinders[1]!.depthAtTdc - before.cylinders[1]!.depthAtTdc) / mm).toBeCloseTo(0.5, 12);
    expect(gain / (before.boreArea * 0.5 * mm)).toBeCloseTo(1, 9);
    expect(after.cylinders[1]!.exhaust.opensAfterOwnTdc).toBeLessThan(
      before.cylinders[1]!.exhaust.opensAfterOwnTdc,
    );
    expect(after.cylinders[2]!.clearanceVolume).toBe(before.cylinders[2]!.clearanceVolume);
  });

  it('restores equal top heights and nearly equal ratios when rods are longer by their deficit', () => {
    const longer = evenRow({
      count: 5,
      masterRod: 95 * mm,
      knuckle: 24 * mm,
      change: (plain, j) => ({ rodLength: plain.rodLength + [0, 0.98406, 0.3123, 0.3123, 0.98406][j]! * mm }),
    });
    for (const one of built(engineWith({ rows: [longer] })).cylinders) {
      expect(Math.abs(one.depthAtTdc)).toBeLessThan(1e-5);
      expect(Math.abs(one.compressionRatio - 8)).toBeLessThan(0.06);
    }
  });

  it('puts 0.5 cc into one head: its clearance volume grows by that and nothing else moves', () => {
    const row = (headVolume: number) =>
      evenRow({
        count: 5,
        masterRod: 95 * mm,
        knuckle: 24 * mm,
        change: (_, j) => (j === 3 ? { headVolume } : {}),
      });
    const before = built(engineWith({ rows: [row(0)] })).cylinders;
    const after = built(engineWith({ rows: [row(0.5 * cc)] })).cylinders;
    expect(after[3]!.clearanceVolume - before[3]!.clearanceVolume).toBeCloseTo(0.5 * cc, 18);
    expect(after[3]!.exhaust.opensAfterOwnTdc).toBe(before[3]!.exhaust.opensAfterOwnTdc);
    expect(after[2]!.clearanceVolume).toBe(before[2]!.clearanceVolume);
  });

  it('hangs a rod on a knuckle pin of its own radius as on a common one', () => {
    const own = evenRow({
      count: 5,
      masterRod: 95 * mm,
      knuckle: 24 * mm,
      change: (_, j) => (j === 2 ? { knuckleRadius: 25 * mm } : {}),
    });
    const common = evenRow({
      count: 5,
      masterRod: 95 * mm,
      knuckle: 25 * mm,
      change: () => ({ rodLength: 71 * mm }),
    });
    const one = built(engineWith({ rows: [own] })).cylinders;
    expect(one[2]!.stroke).toBe(built(engineWith({ rows: [common], knuckle: 25 * mm })).cylinders[2]!.stroke);
    expect(one[1]!.stroke).not.toBe(one[2]!.stroke);
  });

  it('moves an edge by its trim away from the deck: exhaust by 1 mm opens where a 1 mm lower window does', () => {
    const trimmed = evenRow({
      count: 5,
      masterRod: 95 * mm,
      knuckle: 24 * mm,
      change: (_, j) => (j === 2 ? { exhaustTrim: 1 * mm, transferTrim: -0.5 * mm } : {}),
    });
    const one = built(engineWith({ rows: [trimmed] })).cylinders[2]!;
    const lower = built(engineWith({ exhaust: [windowGroup(top(32))], transfer: [windowGroup(top(38.5))] }))
      .cylinders[2]!;
    expect(one.exhaust.opensAfterOwnTdc).toBeCloseTo(lower.exhaust.opensAfterOwnTdc, 12);
    expect(one.transfer.closesAfterOwnTdc).toBeCloseTo(lower.transfer.closesAfterOwnTdc, 12);
    expect(one.exhaust.area(45 * mm)).toBeCloseTo(lower.exhaust.area(45 * mm), 18);
  });

  it('opens a window typed as an angle at that angle of the master, at any deck clearance', () => {
    const angles = (opens_deg: number) =>
      windowGroup({ top: { kind: 'angle', opensAfterTdc: opens_deg * deg } });
    const geometry = built(
      engineWith({ exhaust: [angles(85)], transfer: [angles(115)], cylinder: { deckClearance: 1.5 * mm } }),
    );
    const master = geometry.cylinders[0]!;
    expect(Math.abs(master.exhaust.opensAfterOwnTdc - 85 * deg)).toBeLessThan(1e-12);
    expect(Math.abs(master.exhaust.closesAfterOwnTdc - 275 * deg)).toBeLessThan(1e-12);
    expect(Math.abs(master.transfer.opensAfterOwnTdc - 115 * deg)).toBeLessThan(1e-12);
  });

  it('stands the default floor flush with the master’s crown at bottom dead centre, so its window just opens fully', () => {
    const master = built(engineWith({ cylinder: { deckClearance: 1 * mm } })).cylinders[0]!;
    expect(master.exhaust.groups[0]!.floorDepth / mm).toBeCloseTo(51, 12);
    master.travel.evaluate(master.bdc);
    expect(
      master.exhaust.area(master.depthAtTdc + master.travel.value) / master.exhaust.fullArea,
    ).toBeCloseTo(1, 12);
  });

  it('sparks at its own top dead centre less its own advance', () => {
    const rows = [
      evenRow({
        count: 5,
        masterRod: 95 * mm,
        knuckle: 24 * mm,
        change: (_, j) => ({ sparkAdvance: (20 + j) * deg }),
      }),
    ];
    const { cylinders } = built(engineWith({ rows }));
    expect(cylinders[0]!.sparkAngle / deg).toBeCloseTo(340, 10);
    expect(cylinders[3]!.sparkAngle / deg).toBeCloseTo(cylinders[3]!.tdc / deg - 23, 10);
  });

  it('lists a kink wherever the crown passes an edge, the end of a corner or a floor it goes beyond', () => {
    const groups = {
      exhaust: [windowGroup({ ...top(31), cornerRadius: 2 * mm, floorDepth: 48 * mm })],
      transfer: [windowGroup({ ...top(39), floorDepth: 48 * mm })],
    };
    for (const one of built(engineWith(groups)).cylinders) {
      // Exhaust: 31, 33, 46, 48; transfer: 39 and the same 48; each down and up.
      expect(one.kinks).toHaveLength(10);
      const depths = one.kinks.map((angle) => crownDepth(one, angle) / mm).sort((a, b) => a - b);
      [31, 31, 33, 33, 39, 39, 46, 46, 48, 48].forEach((depth, i) =>
        expect(depths[i]).toBeCloseTo(depth, 10),
      );
    }
  });

  it('lists no kink at a floor that is only touched at bottom dead centre', () => {
    expect(built(engineWith({ count: 1 })).cylinders[0]!.kinks).toHaveLength(4);
  });

  it('keeps its promises for any plausible row: top highest, bottom lowest, windows open once, areas bounded, finite', () => {
    const anywhere = uniform(0, 1);
    const shapes = fc.record({
      row: plausibleRow,
      master: anywhere,
      exhaustShare: uniform(0.45, 0.7),
      gapShare: uniform(0.02, 0.2),
      corner: anywhere,
      crank: uniform(-10, 10),
    });
    fc.assert(
      fc.property(shapes, ({ row, master, exhaustShare, gapShare, corner, crank }) => {
        const stroke = 2 * row.crankRadius;
        const masterRod = row.crankRadius * row.rodOverRadius;
        const knuckle = masterRod * row.knuckleOverRod;
        const group = (share: number) =>
          windowGroup({
            count: 2,
            width: 0.25 * stroke,
            cornerRadius: 0.05 * stroke * corner,
            top: { kind: 'depth', depth: share * stroke },
          });
        const geometry = built(
          engineWith({
            crankRadius: row.crankRadius,
            masterRod,
            knuckle,
            rows: [
              evenRow({
                count: row.count,
                masterRod,
                knuckle,
                master: Math.floor(master * 0.999 * row.count),
              }),
            ],
            cylinder: { bore: stroke },
            exhaust: [group(exhaustShare)],
            transfer: [group(exhaustShare + gapShare)],
          }),
        );
        expect(geometry.cylinders[0]!.tdc).toBe(0);
        for (const one of geometry.cylinders) {
          const { exhaust, transfer, travel } = one;
          travel.evaluate(crank);
          expect(travel.value).toBeGreaterThan(-1e-11 * stroke);
          expect(travel.value).toBeLessThan(one.stroke * (1 + 1e-10));
          expect(one.stroke).toBeGreaterThan(0.95 * stroke);
          expect(one.clearanceVolume).toBeGreaterThan(0);
          expect(one.compressionRatio).toBeGreaterThan(one.trappedCompressionRatio);
          expect(one.trappedCompressionRatio).toBeGreaterThan(1);
          const events = [
            0,
            exhaust.opensAfterOwnTdc,
            transfer.opensAfterOwnTdc,
            transfer.closesAfterOwnTdc,
            exhaust.closesAfterOwnTdc,
            TURN,
          ];
          for (let i = 1; i < events.length; i++) expect(events[i]).toBeGreaterThan(events[i - 1]!);
          for (const window of [exhaust, transfer]) {
            for (const event of [window.opensAfterOwnTdc, window.closesAfterOwnTdc])
              expect(Math.abs(crownDepth(one, one.tdc + event) - window.topDepth)).toBeLessThan(
                1e-12 * stroke,
              );
            const depth = one.depthAtTdc + travel.value;
            expect(window.area(depth)).toBeGreaterThanOrEqual(0);
            expect(window.area(depth)).toBeLessThanOrEqual(window.fullArea);
            expect(window.area(depth + 0.01 * stroke)).toBeGreaterThanOrEqual(window.area(depth));
          }
          for (const angle of [one.tdc, one.bdc, one.sparkAngle, ...one.kinks]) {
            expect(angle).toBeGreaterThanOrEqual(0);
            expect(angle).toBeLessThan(TURN);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('buildGeometry, given a design that cannot be built,', () => {
  type Change = (engine: GeometryInput) => GeometryInput;
  const faultsOf = (engine: GeometryInput) => {
    const outcome = buildGeometry(engine);
    return outcome.ok ? [] : outcome.faults;
  };
  const train =
    (change: Partial<GeometryInput['train']>): Change =>
    (engine) => ({ ...engine, train: { ...engine.train, ...change } });
  const cylinder =
    (change: Partial<GeometryInput['cylinder']>): Change =>
    (engine) => ({ ...engine, cylinder: { ...engine.cylinder, ...change } });
  const exhaust =
    (...change: Parameters<typeof windowGroup>): Change =>
    (engine) => ({ ...engine, windows: { ...engine.windows, exhaust: [windowGroup(...change)] } });
  const third =
    (change: Partial<GeometryInput['train']['rows'][number]['cylinders'][number]>): Change =>
    (engine) =>
      train({
        rows: [
          evenRow({
            count: 5,
            masterRod: 95 * mm,
            knuckle: 24 * mm,
            change: (_, j) => (j === 2 ? change : {}),
          }),
        ],
      })(engine);
  const row =
    (change: Partial<GeometryInput['train']['rows'][number]>): Change =>
    (engine) =>
      train({ rows: [{ ...engine.train.rows[0]!, ...change }] })(engine);

  const cases: [string, Change, string, RegExp][] = [
    ['a crank radius of 0', train({ crankRadius: 0 }), 'train.crankRadius', /is 0 mm: it must be above 0 mm/],
    [
      'an infinite crank radius',
      train({ crankRadius: Infinity }),
      'train.crankRadius',
      /Infinity mm: it must be a finite number/,
    ],
    [
      'a master rod no longer than the crank',
      train({ masterRodLength: 25 * mm }),
      'train.masterRodLength',
      /is 25 mm: it must be above 25 mm/,
    ],
    [
      'a negative knuckle radius',
      train({ knuckleRadius: -1 * mm }),
      'train.knuckleRadius',
      /is -1 mm: it must be at least 0 mm and below 95 mm/,
    ],
    [
      'knuckles beyond the gudgeon pin',
      train({ knuckleRadius: 95 * mm }),
      'train.knuckleRadius',
      /is 95 mm: .* below 95 mm/,
    ],
    ['no rows', train({ rows: [] }), 'train.rows', /is 0: it must be at least 1 and at most 4/],
    [
      'a row without cylinders',
      row({ cylinders: [] }),
      'train.rows[0].cylinders',
      /row A is 0: it must be at least 1 and at most 14/,
    ],
    [
      '15 cylinders',
      train({ rows: [evenRow({ count: 15, masterRod: 95 * mm, knuckle: 20 * mm })] }),
      'train.rows[0].cylinders',
      /is 15: .* at most 14/,
    ],
    [
      'a master that is not there',
      row({ master: 5 }),
      'train.rows[0].master',
      /is 5: it must be a whole number, at least 0 and below 5/,
    ],
    [
      'a throw that is not a number',
      row({ throwAngle: NaN }),
      'train.rows[0].throwAngle',
      /row A is NaN°: it must be a finite number/,
    ],
    ['a stagger that is not a number', row({ staggerAngle: NaN }), 'train.rows[0].staggerAngle', /NaN°/],
    [
      'an axis that is not a number',
      third({ axisAngle: NaN }),
      'train.rows[0].cylinders[2].axisAngle',
      /cylinder 3 of row A is NaN°/,
    ],
    [
      'a knuckle angle that is not a number',
      third({ knuckleAngle: NaN }),
      'train.rows[0].cylinders[2].knuckleAngle',
      /NaN°/,
    ],
    [
      'a spark that is not a number',
      third({ sparkAdvance: NaN }),
      'train.rows[0].cylinders[2].sparkAdvance',
      /NaN°/,
    ],
    [
      'an infinite trim',
      third({ exhaustTrim: -Infinity }),
      'train.rows[0].cylinders[2].exhaustTrim',
      /-Infinity mm/,
    ],
    [
      'a transfer trim that is not a number',
      third({ transferTrim: NaN }),
      'train.rows[0].cylinders[2].transferTrim',
      /NaN mm/,
    ],
    [
      'a rod of no length',
      third({ rodLength: 0 }),
      'train.rows[0].cylinders[2].rodLength',
      /is 0 mm: it must be above 0 mm/,
    ],
    [
      'a rod that cannot go round',
      third({ rodLength: 30 * mm }),
      'train.rows[0].cylinders[2].rodLength',
      /cylinder 3 of row A is 30 mm and cannot go round: .* swings 3\d(\.\d+)? mm off/,
    ],
    [
      'rods that turn the piston round twice on its way',
      train({
        masterRodLength: 40 * mm,
        knuckleRadius: 10 * mm,
        rows: [evenRow({ count: 2, masterRod: 50 * mm, knuckle: 10 * mm })],
      }),
      'train.rows[0].cylinders[1].rodLength',
      /cylinder 2 of row A \(rod 40 mm\) turns round 4 times/,
    ],
    [
      'a barrel that meets its crown',
      third({ barrelOffset: -8 * mm }),
      'train.rows[0].cylinders[2].barrelOffset',
      /clearance volume of cylinder 3 of row A is -0\.8\d+ cc .* the offset above -7\.4\d+ mm/,
    ],
    ['a bore of 0', cylinder({ bore: 0 }), 'cylinder.bore', /is 0 mm: it must be above 0 mm/],
    [
      'a compression ratio of 1',
      cylinder({ compressionRatio: 1 }),
      'cylinder.compressionRatio',
      /is 1: it must be above 1/,
    ],
    [
      'a deck clearance that is not a number',
      cylinder({ deckClearance: NaN }),
      'cylinder.deckClearance',
      /NaN mm/,
    ],
    [
      'half a window',
      exhaust({ count: 1.5 }),
      'windows.exhaust[0].count',
      /is 1\.5: it must be a whole number, at least 1/,
    ],
    [
      'a chord wider than the bore',
      exhaust({ width: 46 * mm }),
      'windows.exhaust[0].width',
      /is 46 mm: it must be above 0 mm and at most 45 mm/,
    ],
    [
      'a window round more than half the bore',
      exhaust({ width: 71 * mm, widthAlong: 'bore circumference' }),
      'windows.exhaust[0].width',
      /at most 70\.6858 mm/,
    ],
    [
      'a bridge as wide as its window',
      exhaust({ bridgeWidth: 10 * mm }),
      'windows.exhaust[0].bridgeWidth',
      /is 10 mm: it must be at least 0 mm and below 10 mm/,
    ],
    [
      'corners wider than the window',
      exhaust({ cornerRadius: 5.5 * mm }),
      'windows.exhaust[0].cornerRadius',
      /is 5\.5 mm: .* at most 5 mm/,
    ],
    [
      'corners higher than the window',
      exhaust({ ...top(44), cornerRadius: 4 * mm }),
      'windows.exhaust[0].cornerRadius',
      /is 4 mm: in cylinder 1 of row A, .*cylinder 5 of row A .* at most half the window's height, 3 mm/,
    ],
    [
      'a passage along the wall',
      exhaust({ elevationAngle: 90 * deg }),
      'windows.exhaust[0].elevationAngle',
      /is 90°: it must be above -90° and below 90°/,
    ],
    ['a passage turned round', exhaust({ planAngle: -100 * deg }), 'windows.exhaust[0].planAngle', /-100°/],
    [
      'a window that opens at bottom dead centre',
      exhaust({ top: { kind: 'angle', opensAfterTdc: Math.PI } }),
      'windows.exhaust[0].top.opensAfterTdc',
      /is 180°: it must be above 0° and below 180°/,
    ],
    ['a top edge that is not a number', exhaust(top(NaN)), 'windows.exhaust[0].top.depth', /NaN mm/],
    ['a floor that is not a number', exhaust({ floorDepth: NaN }), 'windows.exhaust[0].floorDepth', /NaN mm/],
    [
      'a top edge above three crowns',
      exhaust(top(0.2)),
      'windows.exhaust[0].top.depth',
      /0\.2 mm below the deck, lies outside the stroke of cylinder 2 of row A, cylinder 3 of row A, cylinder 4 of row A, cylinder 5 of row A: .* between 0\.984062 mm and 50 mm/,
    ],
    [
      'a top edge below its floor',
      exhaust({ ...top(40), floorDepth: 38 * mm }),
      'windows.exhaust[0].top.depth',
      /40 mm below the deck, is not above the floor in cylinder 1 .* above 38 mm/,
    ],
    [
      'a floor deeper than any crown',
      exhaust({ floorDepth: 60 * mm }),
      'windows.exhaust[0].floorDepth',
      /is 60 mm below the deck: no crown goes deeper than 51\.07\d+ mm/,
    ],
    [
      'windows wider than the bore goes round',
      exhaust({ count: 14 }),
      'windows',
      /in cylinder 1 of row A take 15\d\.\d+ mm round the bore: .* at most its circumference, 141\.372 mm/,
    ],
    [
      'no transfer windows',
      (engine) => ({ ...engine, windows: { ...engine.windows, transfer: [] } }),
      'windows.transfer',
      /is 0: it must be at least 1/,
    ],
    [
      'a ratio from an exhaust edge above the deck',
      (engine) =>
        cylinder({ deckClearance: 5 * mm, compressionRatioFrom: 'exhaust closing' })({
          ...exhaust(top(4))(
            train({
              rows: [
                evenRow({
                  count: 1,
                  masterRod: 95 * mm,
                  knuckle: 0,
                  change: () => ({ barrelOffset: -3 * mm }),
                }),
              ],
            })(engine),
          ),
        }),
      'cylinder.compressionRatioFrom',
      /exhaust closing, 4 mm below the deck: .* below the crown at top dead centre, 5 mm/,
    ],
  ];
  it.each(cases)(
    'rejects %s, naming the field, its value and what is allowed',
    (_, change, path, message) => {
      const faults = faultsOf(change(engineWith()));
      expect(faults.map((fault) => fault.path)).toContain(path);
      expect(faults.find((fault) => fault.path === path)!.message).toMatch(message);
    },
  );

  it('names only the cylinder whose trim moves its window out of its stroke', () => {
    const faults = faultsOf(third({ exhaustTrim: 20 * mm })(engineWith()));
    expect(faults[0]!.message).toMatch(/outside the stroke of cylinder 3 of row A:/);
  });

  it('tells all that is wrong at once: rod, bore, window and row in one answer', () => {
    const wrong = cylinder({ bore: -1 })(
      exhaust({ count: 0, cornerRadius: -1 })(third({ rodLength: 30 * mm })(engineWith())),
    );
    expect(faultsOf(wrong).map((fault) => fault.path)).toEqual([
      'cylinder.bore',
      'windows.exhaust[0].count',
      'windows.exhaust[0].cornerRadius',
      'train.rows[0].cylinders[2].rodLength',
    ]);
  });

  it('accepts a transfer that opens before the exhaust', () => {
    expect(faultsOf(exhaust(top(42))(engineWith()))).toEqual([]);
  });

  it('never throws and never yields a number that is not finite, whatever the lengths', () => {
    const lengths = fc.record({
      r: uniform(-0.002, 0.04),
      l: uniform(0.05, 0.2),
      k: uniform(-0.002, 0.05),
      rodChange: uniform(-0.01, 0.005),
      bore: uniform(-0.002, 0.08),
      offset: uniform(-0.003, 0.003),
      depthShare: uniform(0.05, 1.02),
      floorShare: fc.option(uniform(0.8, 1.05), { freq: 1 }),
      width: uniform(-0.002, 0.04),
      corner: uniform(-0.0002, 0.004),
    });
    let sound = 0;
    fc.assert(
      fc.property(lengths, fc.integer({ min: 1, max: 9 }), (some, count) => {
        const change = (plain: RowCylinder, j: number) =>
          j === 1 ? { rodLength: plain.rodLength + some.rodChange, barrelOffset: some.offset } : {};
        const stroke = 2 * some.r;
        const group = windowGroup({
          width: some.width,
          cornerRadius: some.corner,
          floorDepth: some.floorShare === null ? null : some.floorShare * stroke,
          top: { kind: 'depth', depth: some.depthShare * stroke },
        });
        const outcome = buildGeometry(
          engineWith({
            crankRadius: some.r,
            masterRod: some.l,
            knuckle: some.k,
            rows: [evenRow({ count, masterRod: some.l, knuckle: some.k, change })],
            cylinder: { bore: some.bore },
            exhaust: [group],
            transfer: [group],
          }),
        );
        if (!outcome.ok) {
          expect(outcome.faults.length).toBeGreaterThan(0);
          return;
        }
        sound++;
        for (const one of outcome.value.cylinders)
          for (const figure of [
            one.tdc,
            one.bdc,
            one.stroke,
            one.clearanceVolume,
            one.compressionRatio,
            one.trappedCompressionRatio,
            ...one.kinks,
            one.exhaust.fullArea,
          ])
            expect(Number.isFinite(figure)).toBe(true);
      }),
      { numRuns: 1000, seed: 7 },
    );
    // Both branches are met often.
    expect(sound).toBeGreaterThan(50);
    expect(sound).toBeLessThan(950);
  });
});
