import { remarks } from '../../design/remarks.ts';
import type { Design } from '../../design/schema/design.ts';
import type { Model, SolvedPoint } from '../../sim/index.ts';
import type { AirStudy } from '../../sim/study/air/air-study.ts';
import { boostKept } from '../../sim/study/air/boost-kept.ts';
import type { FeedFigures } from '../../sim/study/air/fuel-feed.ts';
import { feedFigures } from '../../sim/study/air/fuel-feed.ts';
import { backfire } from '../../sim/study/checks/fire/backfire.ts';
import { intakeTract, mixturePassesCrankcase, oilFlow } from '../../sim/study/checks/intake-tract.ts';
import { CORRECTION_RANGE, powerCorrection } from '../../sim/study/checks/standard-air.ts';
import {
  bar,
  cc,
  celsiusFromKelvin,
  gram,
  inHg,
  kJ,
  kW,
  litre,
  mbar,
  percent,
  psi,
  rpm,
} from '../../sim/units.ts';
import { CAUTION } from '../reports.ts';
import { table } from '../table.ts';

const HOUR = 3600;
const fixed = (value: number, digits: number): string => value.toFixed(digits).replace('-', '−');
const share = (value: number): string => `${fixed(value / percent, 1)} %`;

/** The point that is told of in words, and the same engine there with fuel that joins the air elsewhere. */
export interface ShownPoint {
  readonly shown: SolvedPoint | null;
  readonly beside: FeedFigures | null;
}

/** The sentence, the table, and what a builder must know of tract and plenum. */
export function airReport(
  design: Design,
  model: Model,
  study: AirStudy,
  { shown, beside }: ShownPoint,
): string {
  return [
    study.sentence,
    '',
    design.name,
    airTable(study),
    ...(shown ? ['', ...kept(model, shown, beside), '', ...tract(model, shown)] : []),
    '',
    corrected(model, shown),
    ...remarks(design)
      .filter(({ path }) => /^blower\.gears\[\d+\]$/.test(path))
      .map(({ path, message }) => `caution: ${path}: ${message}`),
    '',
    CAUTION,
    '',
  ].join('\n');
}

function airTable({ lines }: AirStudy): string {
  const rows = lines.map(({ point, figures, gain }) => {
    const speed = fixed(point.speed / rpm, 0);
    if (!figures) return [speed, 'no answer'];
    return [
      speed,
      fixed(figures.deliveryRatio, 3),
      fixed(figures.chargingEfficiency, 3),
      fixed(figures.trappedMass / gram, 4),
      fixed(figures.plenumGauge / bar, 4),
      fixed(figures.plenumGauge / psi, 2),
      fixed(figures.plenumGauge / inHg, 2),
      share(figures.slipFraction),
      fixed(figures.blowerPower / kW, 3),
      figures.blowerShare === null ? '–' : share(figures.blowerShare),
      fixed(celsiusFromKelvin(figures.chargeTemperature), 0),
      fixed(figures.inletDepression / mbar, 1),
      gain ? fixed(gain.deliveryRatio, 4) : '–',
      gain ? fixed(gain.brakePower, 0) : '–',
    ];
  });
  const head = [
    'rpm',
    'delivered',
    'kept',
    'trapped g',
    'gauge bar',
    'psi',
    'inHg',
    'slip',
    'blower kW',
    'of brake',
    'charge °C',
    'inlet −mbar',
    '+1 tooth',
    'W',
  ];
  return table(head, rows);
}

function kept(model: Model, point: SolvedPoint, beside: FeedFigures | null): string[] {
  const { cylinders, fuelLostShare, fuelLostVolume, suppliedLambda, trappedLambda } = boostKept(model, point);
  const mean = (pick: (each: (typeof cylinders)[number]) => number) =>
    cylinders.reduce((sum, each) => sum + pick(each), 0) / cylinders.length;
  return [
    `Does boost stay in? At ${fixed(point.speed / rpm, 0)} rpm, when the windows have shut, cylinders hold ${fixed(mean((each) => each.pressure) / bar, 3)} bar:`,
    `  ${fixed(mean((each) => each.overPlenum) / mbar, 0)} mbar over the plenum, ${fixed(mean((each) => each.overCollector) / mbar, 0)} mbar over the collector.`,
    `  ${share(fuelLostShare)} of the fuel leaves through the exhaust, ${fixed((fuelLostVolume * HOUR) / litre, 2)} l/h; mixture λ ${fixed(suppliedLambda, 2)} supplied, ${trappedLambda === null ? 'no fuel' : fixed(trappedLambda, 2)} trapped.`,
    ...(beside ? [feedText(feedFigures(model, point), beside)] : []),
  ];
}

const FEEDS: Readonly<Record<FeedFigures['feed'], string>> = {
  carburettor: 'a carburettor',
  passages: 'injectors into its passages',
  cylinders: 'injection into its cylinders after the windows have shut',
};

function feedText(own: FeedFigures, beside: FeedFigures): string {
  const celsius = (T: number) => fixed(celsiusFromKelvin(T), 0);
  return `  With ${FEEDS[beside.feed]}, at the same λ of what is shut in, the same engine is fed ${fixed(beside.fuelFlow / gram, 2)} g/s instead of ${fixed(own.fuelFlow / gram, 2)} g/s, loses ${fixed(beside.fuelLost / gram, 2)} instead of ${fixed(own.fuelLost / gram, 2)} g/s, and gives ${fixed(beside.brakePower / kW, 2)} kW instead of ${fixed(own.brakePower / kW, 2)} kW; its plenum is at ${celsius(beside.chargeTemperature)} °C instead of ${celsius(own.chargeTemperature)} °C.`;
}

function tract(model: Model, point: SolvedPoint): string[] {
  const intake = intakeTract(model, point);
  const fire = backfire(model, point);
  const relieved =
    fire.relievedPressure === null
      ? 'there is no relief valve'
      : `with the relief valve about ${fixed(fire.relievedPressure / bar, 1)} bar`;
  return [
    `Carburettor: ${fixed(intake.depression / mbar, 1)} mbar below ambient behind the throttle, ${fixed(intake.throatSpeed, 0)} m/s in its open area, ${fixed(intake.boreSpeed, 0)} m/s over the bore;`,
    `  mixture wets ${fixed(intake.wettedVolume / cc, 0)} cc on its way to the cylinders. Premix carries ${fixed((oilFlow(model, point) * HOUR) / litre, 3)} l/h of oil; ${mixturePassesCrankcase(model.engine) ? 'it passes the crankcase, but whether its bearings get enough of it is not reckoned.' : 'none of it passes the crankcase, whose bearings need their own.'}`,
    fire.plenumBurns
      ? `Plenum: ${fixed(fire.tractMass / gram, 2)} g of mixture (${fixed(fire.energy / kJ, 1)} kJ) stand in the tract. If it burned shut in, the plenum would see up to ${fixed(fire.spaces.find(({ space }) => space === 'plenum')!.closedPressure / bar, 1)} bar; ${relieved}.`
      : 'Plenum: no fuel joins the air ahead of it, so no mixture stands there but what is blown back.',
    `  A bound, not a strength to design for: a flame that turns into a detonation goes far beyond. Flame arrester and relief belong on every plenum.`,
  ];
}

function corrected({ engine }: Model, point: SolvedPoint | null): string {
  const { pressure, temperature, humidity } = engine.ambient;
  const factor = powerCorrection(pressure, temperature, humidity);
  const [low, high] = CORRECTION_RANGE;
  const beyond = factor < low || factor > high ? `, outside the ${low} to ${high} that the code allows` : '';
  const power = point
    ? ` At ${fixed(point.speed / rpm, 0)} rpm: ${fixed(point.engine.brakePower / kW, 2)} kW uncorrected, ${fixed((point.engine.brakePower * factor) / kW, 2)} kW corrected.`
    : '';
  return `All figures are uncorrected, for the air that the design states. Factor of SAE J1349 (June 1990) to standard air: ${fixed(factor, 3)} at ${share(humidity)} humidity${beyond}.${power}`;
}

/** The solved point nearest to a speed. */
export function nearest({ lines }: AirStudy, speed: number): SolvedPoint | null {
  const solved = lines.flatMap(({ point }) => (point.converged ? [point] : []));
  return solved.reduce<SolvedPoint | null>(
    (best, point) => (best && Math.abs(best.speed - speed) <= Math.abs(point.speed - speed) ? best : point),
    null,
  );
}
