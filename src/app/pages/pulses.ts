import type { TableColumn, TableFoot } from '../../charts/chart-types.ts';
import { figure } from '../../charts/format.ts';
import type { EngineGeometry } from '../../sim/geometry/cylinder-geometry.ts';
import { firingOrder } from '../../sim/geometry/firing-order.ts';
import type { Engine, GasFigures, SolvedPoint } from '../../sim/index.ts';
import { dial } from '../../sim/study/pulses/dial.ts';
import type { Gaps } from '../../sim/study/pulses/dial.ts';
import type { TorqueOverTurn } from '../../sim/study/pulses/torque.ts';
import { deg } from '../../sim/units.ts';
import type { Phrase } from '../headline.ts';
import type { ShownUnits } from '../units/shown-units.ts';
import { samplesOfFirstTurn } from '../turn-columns.ts';
import { capital, countWord, figured, plain } from './words.ts';

export interface FiringGap {
  readonly from: string;
  readonly to: string;
  /** Crank angle where it ends, at a true top dead centre. */
  readonly at_deg: number;
  readonly gap_deg: number;
}

export interface Firing {
  /** In the order of the turn. */
  readonly gaps: readonly FiringGap[];
  readonly even_deg: number;
  readonly least_deg: number;
  readonly most_deg: number;
}

export function firing(cylinders: EngineGeometry['cylinders'], labels: readonly string[]): Firing {
  const order = firingOrder(cylinders.map((cylinder) => cylinder.tdc));
  const gaps = order.map(({ index, angle, interval }, i) => ({
    from: labels[order.at(i - 1)!.index]!,
    to: labels[index]!,
    at_deg: angle / deg,
    gap_deg: interval / deg,
  }));
  const sizes = gaps.map((gap) => gap.gap_deg);
  return {
    gaps,
    even_deg: 360 / gaps.length,
    least_deg: Math.min(...sizes),
    most_deg: Math.max(...sizes),
  };
}

/** Every cylinder's events in the order of the turn, with the gaps between those of one kind underneath. */
export function firingTable(
  bench: { engine: Engine; geometry: EngineGeometry },
  labels: readonly string[],
): { columns: TableColumn[]; foot: TableFoot[] } {
  const { gaps, even_deg } = firing(bench.geometry.cylinders, labels);
  const landings = landingsOf(bench, labels);
  const found = dial(bench.geometry).gaps;
  const range = ({ least, most }: Gaps): string =>
    most - least < 0.05 * deg
      ? `${figure(least / deg)}°`
      : `${figure(least / deg)} to ${figure(most / deg)}°`;
  return {
    columns: [
      { heading: 'cylinder', values: gaps.map(({ to }) => to) },
      { heading: 'top dead centre, °', values: gaps.map(({ at_deg }) => at_deg) },
      {
        heading: 'since the one before, °',
        values: gaps.map(({ gap_deg }) => gap_deg),
        term: 'firingInterval',
      },
      { heading: 'off even, °', values: gaps.map(({ gap_deg }) => gap_deg - even_deg), digits: 3 },
      { heading: 'exhaust opens, °', values: landings.map(({ exhaust_deg }) => exhaust_deg) },
      { heading: 'transfer opens, °', values: landings.map(({ transfer_deg }) => transfer_deg) },
      { heading: 'collector', values: landings.map(({ collector }) => `${collector + 1}`) },
    ],
    foot:
      gaps.length < 2
        ? []
        : [
            {
              label: 'gaps',
              cells: [
                range(found.topDeadCentre),
                '',
                `even ${figure(even_deg)}°`,
                range(found.exhaustOpens),
                range(found.transferOpens),
                '',
              ],
            },
          ],
  };
}

export interface DialRing {
  readonly label: string;
  readonly events: readonly {
    readonly label: string;
    readonly tdc_deg: number;
    readonly exhaust_deg: number;
    readonly transfer_deg: number;
    readonly selected: boolean;
  }[];
}

/** Top dead centres and openings, a ring for each row. */
export function dialRings(
  cylinders: EngineGeometry['cylinders'],
  labels: readonly string[],
  chosen: number,
): DialRing[] {
  const inTurn_deg = (angle: number): number => (((angle / deg) % 360) + 360) % 360;
  const rows = [...new Set(cylinders.map((cylinder) => cylinder.rowIndex))];
  return rows.map((row) => ({
    label: `row ${String.fromCharCode('A'.charCodeAt(0) + row)}`,
    events: cylinders.flatMap((cylinder, i) =>
      cylinder.rowIndex !== row
        ? []
        : [
            {
              label: labels[i]!,
              tdc_deg: inTurn_deg(cylinder.tdc),
              exhaust_deg: inTurn_deg(cylinder.tdc + cylinder.exhaust.opensAfterOwnTdc),
              transfer_deg: inTurn_deg(cylinder.tdc + cylinder.transfer.opensAfterOwnTdc),
              selected: i === chosen,
            },
          ],
    ),
  }));
}

/** What reaches plenum and collectors in a turn: where each cylinder's windows open. */
export interface Landings {
  readonly label: string;
  readonly transfer_deg: number;
  readonly exhaust_deg: number;
  /** From 0. */
  readonly collector: number;
}

export function landingsOf(
  { engine, geometry }: { engine: Engine; geometry: EngineGeometry },
  labels: readonly string[],
): Landings[] {
  return dial(geometry).events.map(({ index, transferOpens, exhaustOpens }) => {
    const { rowIndex, cylinderIndex } = geometry.cylinders[index]!;
    return {
      label: labels[index]!,
      transfer_deg: transferOpens / deg,
      exhaust_deg: exhaustOpens / deg,
      collector: engine.train.rows[rowIndex]!.cylinders[cylinderIndex]!.collector,
    };
  });
}

/** Torque at the crank over the first turn of the period [N m]. */
export interface TorqueColumns {
  readonly angle_deg: Float64Array;
  readonly gas: Float64Array;
  readonly inertia: Float64Array;
  readonly blower: Float64Array;
  readonly total: Float64Array;
}

export function torqueColumns({ angle, gas, inertia, blower, total }: TorqueOverTurn): TorqueColumns {
  const count = samplesOfFirstTurn(angle);
  return {
    angle_deg: angle.subarray(0, count).map((each) => each / deg),
    gas: gas.subarray(0, count),
    inertia: inertia.subarray(0, count),
    blower: blower.subarray(0, count),
    total: total.subarray(0, count),
  };
}

/** How far a pressure swings over the period [Pa]. */
export interface Ripple {
  readonly name: string;
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  /** Highest less lowest. */
  readonly swing: number;
}

/** How far the pressure of each common volume swings. */
export function ripples({ inletBox, plenum, collectors }: SolvedPoint): Ripple[] {
  const ripple = (name: string, { meanPressure, minPressure, maxPressure }: GasFigures): Ripple => ({
    name,
    mean: meanPressure,
    least: minPressure,
    most: maxPressure,
    swing: maxPressure - minPressure,
  });
  return [
    ripple('inlet box', inletBox),
    ripple('plenum', plenum),
    ...collectors.map((collector, i) =>
      ripple(collectors.length === 1 ? 'collector' : `collector ${i + 1}`, collector),
    ),
  ];
}

const gapText = (low: number, high: number): string => {
  const round = (angle: number): string => String(Math.round(angle));
  if (high - low < 0.05) return `${figure(low, 3)}° apart`;
  // One more figure where whole degrees would read as even.
  return round(low) === round(high)
    ? `${figure(low, 4)} to ${figure(high, 4)}° apart`
    : `${round(low)} to ${round(high)}° apart`;
};

/** How many, how far apart against even spacing, and how far the torque peaks above its mean. */
export function pulsesSentence(
  { gaps, even_deg, least_deg, most_deg }: Firing,
  fires: boolean,
  torque: Pick<TorqueOverTurn, 'mean' | 'peak' | 'least' | 'peakOverMean'> | null,
  units: ShownUnits,
): Phrase[] {
  const count = gaps.length;
  const what = fires ? (count === 1 ? 'fire' : 'fires') : count === 1 ? 'compression' : 'compressions';
  const phrases: Phrase[] = [plain(`${capital(countWord(count))} ${what} a turn`)];
  if (count > 1) {
    phrases.push(plain(', '), figured(gapText(least_deg, most_deg)));
    if (most_deg - least_deg >= 0.05) phrases.push(plain(` where even is ${figure(even_deg, 3)}°`));
  }
  if (torque === null) return [...phrases, plain('.')];
  if (torque.peakOverMean !== null) {
    phrases.push(
      plain('; torque peaks at '),
      figured(`${figure(torque.peakOverMean, 2)} times its mean`),
      plain('.'),
    );
  } else {
    phrases.push(
      plain('; torque swings between '),
      figured(
        `${figure(units.number('torque', torque.least), 2)} and ${units.text('torque', torque.peak, 2)}`,
      ),
      plain(': the crank must be driven.'),
    );
  }
  return phrases;
}
