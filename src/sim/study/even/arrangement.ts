import type { Collector, Engine } from '../../engine.ts';

/** How rows, exhausts and rotors are put together: what may be chosen before anything is cut. */
export interface Arrangement {
  readonly rows: readonly { readonly throwAngle: number; readonly staggerAngle: number }[];
  /** Collector of every cylinder, row by row, from 0; and how many there are. */
  readonly seats: readonly number[];
  readonly collectors: number;
  /** See `Blower` [rad]. */
  readonly phase: number;
  readonly phaseStep: number;
}

export const arrangementOf = ({ train, collectors, blower }: Engine): Arrangement => ({
  rows: train.rows.map(({ throwAngle, staggerAngle }) => ({ throwAngle, staggerAngle })),
  seats: train.rows.flatMap((row) => row.cylinders.map((cylinder) => cylinder.collector)),
  collectors: collectors.length,
  phase: blower.phase,
  phaseStep: blower.phaseStep,
});

/** The engine put together in another way. Collectors of another number share the volume and outlet area there is. */
export function withArrangement(
  engine: Engine,
  { rows, seats, collectors, phase, phaseStep }: Arrangement,
): Engine {
  let at = 0;
  return {
    ...engine,
    train: {
      ...engine.train,
      rows: engine.train.rows.map((row, r) => ({
        ...row,
        ...rows[r]!,
        cylinders: row.cylinders.map((cylinder) => ({ ...cylinder, collector: seats[at++]! })),
      })),
    },
    collectors: collectorsShared(engine.collectors, collectors),
    blower: { ...engine.blower, phase, phaseStep },
  };
}

/**
 * Another number of collectors out of the same volume and outlet area, all alike, each as wide as its share: a wall's area per
 * volume goes with the inverse of its hydraulic diameter, and that with the root of the outlet area.
 */
export function collectorsShared(collectors: readonly Collector[], count: number): readonly Collector[] {
  if (count === collectors.length) return collectors;
  const total = (of: (collector: Collector) => number) =>
    collectors.reduce((sum, each) => sum + of(each), 0) / count;
  const [first] = collectors;
  const outletArea = total((each) => each.outletArea);
  const wider = Math.sqrt(outletArea / first!.outletArea);
  const volume = total((each) => each.volume);
  const shared: Collector = {
    ...first!,
    volume,
    outletArea,
    wall: {
      ...first!.wall,
      hydraulicDiameter: first!.wall.hydraulicDiameter * wider,
      area: (first!.wall.area * (volume / first!.volume)) / wider,
    },
  };
  return Array.from({ length: count }, () => shared);
}
