import type { Flow } from '../../charts/flow-layout.ts';
import { figure } from '../../charts/format.ts';
import { withOil } from '../../sim/gas/blend.ts';
import { FUELS } from '../../sim/gas/fuels.ts';
import type { Engine, EngineFigures, EnergyBalance, PointResult, SolvedPoint } from '../../sim/index.ts';
import { TURN, bar, gramPerKWh, hp, kW, litre, rpm } from '../../sim/units.ts';
import type { Phrase } from '../headline.ts';
import { overSpeed, speeds_rpm } from './over-speed.ts';
import { figured, plain, shareText } from './words.ts';

export interface OutputColumns {
  readonly speed_rpm: readonly number[];
  readonly power_kW: readonly number[];
  readonly power_hp: readonly number[];
  readonly torque: readonly number[];
  readonly bmep_bar: readonly number[];
  readonly fuel_gPerKWh: readonly number[];
  readonly fuel_lPerH: readonly number[];
  readonly fmep_bar: readonly number[];
  readonly frictionShare_percent: readonly number[];
  readonly blowerShare_percent: readonly number[];
}

/** Density of what is in the tank, oil included [kg/m^3]; NaN for a fuel that is not known. */
export function liquidDensity({ fuel, oilShare }: Engine['charge']): number {
  const known = FUELS[fuel];
  return known ? withOil(known, oilShare).liquidDensity : NaN;
}

const litresPerHour = (fuelFlow: number, density: number): number => ((fuelFlow / density) * 3600) / litre;

/** Share of the indicated work [-]; NaN where the gas does no work. */
const frictionShare = ({ fmep, imep }: EngineFigures): number => (imep > 0 ? fmep / imep : NaN);
const blowerShare = ({ engine, blower, speed }: SolvedPoint): number =>
  engine.imep > 0 ? (blower.shaftPower * TURN) / (speed * engine.imep * engine.sweptVolume) : NaN;

export function outputColumns(points: readonly PointResult[], charge: Engine['charge']): OutputColumns {
  const density = liquidDensity(charge);
  const column = (pick: (point: SolvedPoint) => number | null): number[] => overSpeed(points, pick);
  return {
    speed_rpm: speeds_rpm(points),
    power_kW: column(({ engine }) => engine.brakePower / kW),
    power_hp: column(({ engine }) => engine.brakePower / hp),
    torque: column(({ engine }) => engine.torque),
    bmep_bar: column(({ engine }) => engine.bmep / bar),
    fuel_gPerKWh: column(({ engine }) => (engine.bsfc === null ? null : engine.bsfc / gramPerKWh)),
    fuel_lPerH: column(({ engine }) => litresPerHour(engine.fuelFlow, density)),
    fmep_bar: column(({ engine }) => engine.fmep / bar),
    frictionShare_percent: column(({ engine }) => 100 * frictionShare(engine)),
    blowerShare_percent: column((point) => 100 * blowerShare(point)),
  };
}

/** Where the fuel's energy goes [kW]; what comes in besides is negative. */
export function energyFlows(balance: EnergyBalance): { source: Flow; flows: Flow[] } {
  const flow = (label: string, power: number, colour: string): Flow => ({
    label,
    value: power / kW,
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

const rpmText = (speed: number): string => `${Math.round(speed / rpm)} rpm`;
const powerTexts = (power: number): string => `${figure(power / kW, 3)} kW (${figure(power / hp, 3)} hp)`;

/** Power here, what it costs in fuel, and the most of the range. */
export function outputSentence(here: SolvedPoint, range: readonly PointResult[]): Phrase[] {
  const { brakePower, bsfc, balance } = here.engine;
  if (bsfc === null) {
    return [
      plain(`At ${rpmText(here.speed)} the engine gives nothing: it must be driven with `),
      figured(powerTexts(-brakePower)),
      plain('.'),
    ];
  }
  const phrases = [
    figured(powerTexts(brakePower)),
    plain(` at ${rpmText(here.speed)}, for ${figure(bsfc / gramPerKWh, 3)} g of fuel per kWh: `),
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
          : ` The most is ${figure(most.engine.brakePower / kW, 3)} kW, at ${rpmText(most.speed)}.`,
      ),
    );
  }
  return phrases;
}

/** Friction and the blower against the work of the gas; fuel by the hour. */
export function outputDetail(point: SolvedPoint, charge: Engine['charge']): string {
  const { engine } = point;
  const hourly = `${figure(litresPerHour(engine.fuelFlow, liquidDensity(charge)), 3)} litres of fuel an hour.`;
  const friction = frictionShare(engine);
  const blower = blowerShare(point);
  if (!Number.isFinite(friction) || !Number.isFinite(blower)) return inHour(hourly);
  return (
    `Of the work of the gas friction takes ${shareText(friction)} (${figure(engine.fmep / bar, 2)} bar) and the blower ${shareText(blower)}. ` +
    inHour(hourly)
  );
}

const inHour = (text: string): string => `It burns or loses ${text}`;
