import { figure } from '../../charts/format.ts';
import type { Flow } from '../../charts/flow-layout.ts';
import { chargeFuel } from '../../sim/gas/charge-fuel.ts';
import type { Engine, EngineFigures, EnergyBalance, PointResult, SolvedPoint } from '../../sim/index.ts';
import { TURN } from '../../sim/units.ts';
import type { Phrase } from '../headline.ts';
import type { ShownUnits } from '../units/shown-units.ts';
import { overSpeed, speeds_rpm } from './over-speed.ts';
import { figured, plain, shareText, speedText } from './words.ts';

/** What the Output page draws and lists over speed. */
export interface OutputColumns {
  readonly speed_rpm: readonly number[];
  /** [W], [N m], [Pa] */
  readonly power: readonly number[];
  readonly torque: readonly number[];
  readonly bmep: readonly number[];
  /** Over brake power [kg/J]; by volume [m^3/s]. */
  readonly bsfc: readonly number[];
  readonly fuelFlow: readonly number[];
  /** Air over fuel over stoichiometric [-]. */
  readonly lambda: readonly number[];
  /** [Pa] */
  readonly fmep: readonly number[];
  readonly frictionShare_percent: readonly number[];
  readonly blowerShare_percent: readonly number[];
}

/** Density of what is in the tank, oil included [kg/m^3]. */
export const liquidDensity = (charge: Engine['charge']): number => chargeFuel(charge).liquidDensity;

/** Share of the indicated work [-]; NaN where the gas does no work. */
const frictionShare = ({ fmep, imep }: EngineFigures): number => (imep > 0 ? fmep / imep : NaN);
const blowerShare = ({ engine, blower, speed }: SolvedPoint): number =>
  engine.imep > 0 ? (blower.shaftPower * TURN) / (speed * engine.imep * engine.sweptVolume) : NaN;

export function outputColumns(points: readonly PointResult[], charge: Engine['charge']): OutputColumns {
  const density = liquidDensity(charge);
  const column = (pick: (point: SolvedPoint) => number | null): number[] => overSpeed(points, pick);
  return {
    speed_rpm: speeds_rpm(points),
    power: column(({ engine }) => engine.brakePower),
    torque: column(({ engine }) => engine.torque),
    bmep: column(({ engine }) => engine.bmep),
    bsfc: column(({ engine }) => engine.bsfc),
    fuelFlow: column(({ engine }) => engine.fuelFlow / density),
    lambda: column(({ engine }) => engine.lambda),
    fmep: column(({ engine }) => engine.fmep),
    frictionShare_percent: column(({ engine }) => 100 * frictionShare(engine)),
    blowerShare_percent: column((point) => 100 * blowerShare(point)),
  };
}

/** Whether a design's mixture depends on where it runs. */
export const mixtureVaries = ({ jet, lambdaOverSpeed }: Engine['charge']): boolean =>
  jet !== null || lambdaOverSpeed !== null;

/** Where the fuel's energy goes, in the reader's unit of power; what comes in besides is negative. */
export function energyFlows(balance: EnergyBalance, units: ShownUnits): { source: Flow; flows: Flow[] } {
  const flow = (label: string, power: number, colour: string): Flow => ({
    label,
    value: units.number('power', power),
    colour: `var(--${colour})`,
  });
  return {
    source: flow('fuel', balance.fuel, 'fresh'),
    flows: [
      flow('brake power', balance.brake, 'cylinder'),
      flow('friction, gears', balance.friction, 'quiet-ink'),
      flow('blower’s losses', balance.blower, 'rule'),
      flow('cylinder walls', balance.cylinderWalls, 'heat-crown'),
      flow('other walls', balance.otherWalls, 'heat-head'),
      flow('hot exhaust', balance.exhaustSensible, 'burned'),
      flow('leaves unburned', balance.unburned, 'fresh'),
    ],
  };
}

/** `600 g of fuel per kWh` */
function fuelForWork(bsfc: number, units: ShownUnits): string {
  const [mass, work] = units.symbol('consumption').split('/') as [string, string];
  return `${figure(units.number('consumption', bsfc))}\u00a0${mass} of fuel per ${work.replace(/[()]/g, '')}`;
}

/** Power here, what it costs in fuel, and the most of the range. */
export function outputSentence(
  here: SolvedPoint,
  range: readonly PointResult[],
  units: ShownUnits,
): Phrase[] {
  const { brakePower, bsfc, balance } = here.engine;
  if (bsfc === null) {
    return [
      plain(`At ${speedText(here.speed)} the engine gives nothing: it must be driven with `),
      figured(units.both('power', -brakePower)),
      plain('.'),
    ];
  }
  const phrases = [
    figured(units.both('power', brakePower)),
    plain(` at ${speedText(here.speed)}, for ${fuelForWork(bsfc, units)}: `),
    figured(`${shareText(balance.brake / balance.fuel)} of its energy reaches the shaft`),
    plain('.'),
  ];
  const solved = range.filter((point): point is SolvedPoint => point.converged);
  if (solved.length > 1) {
    const most = solved.reduce((best, point) =>
      point.engine.brakePower > best.engine.brakePower ? point : best,
    );
    phrases.push(
      plain(
        most.speed === here.speed
          ? ' No other speed worked out gives more.'
          : ` The most is ${units.text('power', most.engine.brakePower)}, at ${speedText(most.speed)}.`,
      ),
    );
  }
  return phrases;
}

/** Friction and the blower against the work of the gas; fuel by the hour. */
export function outputDetail(point: SolvedPoint, charge: Engine['charge'], units: ShownUnits): string {
  const { engine } = point;
  const hourly = `${units.text('fuel flow', engine.fuelFlow / liquidDensity(charge))} of fuel.`;
  const friction = frictionShare(engine);
  const blower = blowerShare(point);
  if (!Number.isFinite(friction) || !Number.isFinite(blower)) return inHour(hourly);
  return (
    `Of the work of the gas friction takes ${shareText(friction)} (${units.text('pressure', engine.fmep, 2)}) and the blower ${shareText(blower)}. ` +
    inHour(hourly)
  );
}

const inHour = (text: string): string => `It burns or loses ${text}`;
