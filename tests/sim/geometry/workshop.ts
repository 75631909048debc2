import { readFileSync } from 'node:fs';
import type { Row, RowCylinder, WindowGroup } from '../../../src/sim/engine.ts';
import { buildGeometry } from '../../../src/sim/geometry/build-geometry.ts';
import type { EngineGeometry, GeometryInput } from '../../../src/sim/geometry/build-geometry.ts';
import { TURN, mm } from '../../../src/sim/units.ts';

/** Rows of engines to test geometry on: the defaults of a design file, spelled out in SI. */
export interface RowOptions {
  readonly count: number;
  readonly masterRod: number;
  readonly knuckle: number;
  readonly master?: number;
  readonly throwAngle?: number;
  readonly staggerAngle?: number;
  readonly change?: (cylinder: RowCylinder, index: number) => Partial<RowCylinder>;
}

export function evenRow(options: RowOptions): Row {
  const { count, masterRod, knuckle, master = 0 } = options;
  const axis = (j: number): number => (j * TURN) / count;
  const plain = (j: number): RowCylinder => ({
    axisAngle: axis(j),
    knuckleAngle: axis(j) - axis(master),
    knuckleRadius: null,
    rodLength: masterRod - knuckle,
    barrelOffset: 0,
    headVolume: 0,
    exhaustTrim: 0,
    transferTrim: 0,
    sparkAdvance: 0,
    collector: 0,
  });
  return {
    throwAngle: options.throwAngle ?? 0,
    staggerAngle: options.staggerAngle ?? 0,
    master,
    cylinders: Array.from({ length: count }, (_, j) => ({ ...plain(j), ...options.change?.(plain(j), j) })),
  };
}

export function windowGroup(change: Partial<WindowGroup> = {}): WindowGroup {
  return {
    count: 1,
    width: 10 * mm,
    widthAlong: 'chord',
    bridgeWidth: 0,
    top: { kind: 'depth', depth: 31 * mm },
    floorDepth: null,
    cornerRadius: 0,
    planAngle: 0,
    elevationAngle: 0,
    ...change,
  };
}

export interface EngineOptions {
  readonly crankRadius?: number;
  readonly masterRod?: number;
  readonly knuckle?: number;
  readonly rows?: readonly Row[];
  readonly count?: number;
  readonly exhaust?: readonly WindowGroup[];
  readonly transfer?: readonly WindowGroup[];
  readonly cylinder?: Partial<GeometryInput['cylinder']>;
}

/** Stroke 50, master rod 95, knuckles 24 mm; edges 31 and 39 mm below the deck; compression ratio 8 on the master. */
export function engineWith(options: EngineOptions = {}): GeometryInput {
  const masterRod = options.masterRod ?? 95 * mm;
  const knuckle = options.knuckle ?? 24 * mm;
  const coefficient = { forward: 0.7, backward: 0.6 };
  return {
    train: {
      crankRadius: options.crankRadius ?? 25 * mm,
      masterRodLength: masterRod,
      knuckleRadius: knuckle,
      sparkFrom: 'own dead centre',
      rows: options.rows ?? [evenRow({ count: options.count ?? 5, masterRod, knuckle })],
    },
    cylinder: {
      bore: 45 * mm,
      compressionRatio: 8,
      compressionRatioFrom: 'full stroke',
      deckClearance: 0,
      ...options.cylinder,
    },
    windows: {
      exhaust: options.exhaust ?? [windowGroup()],
      transfer: options.transfer ?? [windowGroup({ top: { kind: 'depth', depth: 39 * mm } })],
      exhaustDischarge: coefficient,
      transferDischarge: coefficient,
      exhaustTable: null,
      transferTable: null,
    },
  };
}

/** The geometry of a design that must be sound. */
export function built(engine: GeometryInput): EngineGeometry {
  const outcome = buildGeometry(engine);
  if (!outcome.ok)
    throw new Error(outcome.faults.map((fault) => `${fault.path}: ${fault.message}`).join('\n'));
  return outcome.value;
}

/** Rows of a reference table as numbers; comment lines and the heading left out. */
export function referenceRows(file: string): readonly (readonly number[])[] {
  return readFileSync(new URL(`../../reference/${file}`, import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => /^[\d-]/.test(line))
    .map((line) => line.split(',').map(Number));
}
