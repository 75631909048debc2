import { cylinderName } from '../design/cylinder-name.ts';
import { formatQuantity, unitNamed } from '../design/format-quantity.ts';
import type { Model } from '../sim/index.ts';
import type { PointResult, SolvedPoint } from '../sim/results/point-result.ts';
import { FRICTION_LAWS, GAS_WORK_LABELS } from '../sim/results/gas-work-words.ts';
import { gasWork } from '../sim/results/gas-work.ts';
import { judgeBlower } from '../sim/results/verdict.ts';
import { bar, cc, celsiusFromKelvin, deg, gram, gramPerKWh, kW, mm, percent, rpm } from '../sim/units.ts';
import { table } from './table.ts';

const fixed = (value: number, digits: number): string => value.toFixed(digits).replace('-', '−');
const share = (value: number): string => `${fixed(value / percent, 1)} %`;
export const CAUTION =
  'An estimate without pressure waves, jets or hot spots. A plenum of mixture can explode: relief valve and flame arrester;\n' +
  'contain what rotates. Local rules and licensed or experienced practice come first.';

/** One point in words, the answer first. */
export function pointReport(design: string, model: Model, point: PointResult): string {
  const verdict = judgeBlower([point], model.engine.wanted);
  const where = `${design}, ${fixed(point.speed / rpm, 0)} rpm, throttle ${share(point.throttle)}`;
  if (!point.converged) return `${verdict.text}\n\n${where}: no answer. ${point.reason}\n`;
  return [
    verdict.text,
    '',
    where,
    ...figures(point),
    '',
    cylinderTable(model, point),
    '',
    gasWorkTable(model, point),
    ...notes(point),
    '',
    CAUTION,
    '',
  ].join('\n');
}

function figures({
  engine,
  blower,
  stages,
  plenum,
  relief,
  bypass,
  cycles,
  residuals,
}: SolvedPoint): string[] {
  const { isentropicEfficiency, wheel, builtIn } = blower;
  const kind = wheel
    ? [
        `            centrifugal: at ${share(wheel.flow)} of its best flow, surges below ${share(wheel.surge)}, ${share(wheel.ofChoke)} of what chokes its inlet`,
      ]
    : builtIn
      ? [
          `            compresses inside to ${fixed(builtIn.pressureRatio, 2)} times the inlet’s pressure, ${fixed(builtIn.neededRatio, 2)} are needed`,
        ]
      : [];
  const show = formatQuantity;
  const { deliveryRatio, chargingEfficiency, scavengingEfficiency, trappingEfficiency } = engine;
  const closed = Math.max(residuals.mass, residuals.energy, residuals.species);
  const bsfc = engine.bsfc === null ? 'no brake power' : `${fixed(engine.bsfc / gramPerKWh, 0)} g/kWh`;
  return [
    `  air       ${fixed(engine.airFlow / gram, 2)} g/s; delivery ratio ${fixed(deliveryRatio, 3)}, kept (charging efficiency) ${fixed(chargingEfficiency, 3)}`,
    `            purity (scavenging efficiency) ${fixed(scavengingEfficiency, 3)}, trapping efficiency ${fixed(trappingEfficiency, 3)}`,
    wheel
      ? `  blower    carries ${show(blower.displacementPerTurn, unitNamed('cc'))} a turn at its best flow, engine ${show(engine.sweptVolume, unitNamed('cc'))}`
      : `  blower    displaces ${show(blower.displacementPerTurn, unitNamed('cc'))} a turn, engine ${show(engine.sweptVolume, unitNamed('cc'))}; slip ${share(blower.slipFraction)}`,
    `            takes ${fixed(blower.shaftPower / kW, 2)} kW, ${wheel ? 'wheel' : 'rotors'} ${fixed(blower.rotorSpeed / rpm, 0)} rpm, tips ${fixed(blower.tipSpeed, 1)} m/s, outlet ${fixed(celsiusFromKelvin(blower.outletTemperature), 0)} °C${isentropicEfficiency === null ? '' : `, isentropic efficiency ${share(isentropicEfficiency)}`}`,
    ...kind,
    ...(stages
      ? [
          `            first stage ${fixed(stages.first.shaftPower / kW, 2)} kW to ${fixed(stages.interstage.meanPressure / bar, 3)} bar, ${fixed(celsiusFromKelvin(stages.first.outletTemperature), 0)} °C; second ${fixed(stages.second.shaftPower / kW, 2)} kW, rotors ${fixed(stages.second.rotorSpeed / rpm, 0)} rpm, takes in ${fixed(celsiusFromKelvin(stages.beforeSecond.meanTemperature), 0)} °C`,
        ]
      : []),
    ...(stages?.cooler
      ? [
          `            intercooler takes ${fixed(stages.cooler.heat / kW, 3)} kW and ${fixed(stages.cooler.pressureLoss / bar, 3)} bar`,
        ]
      : []),
    `  plenum    ${fixed(plenum.meanPressure / bar, 3)} bar absolute (${fixed(plenum.minPressure / bar, 3)} to ${fixed(plenum.maxPressure / bar, 3)}), ${fixed(celsiusFromKelvin(plenum.meanTemperature), 0)} °C`,
    ...(relief && relief.massFlow > 0
      ? [
          `            relief valve lets out ${fixed(relief.massFlow / gram, 2)} g/s, lifts up to ${share(relief.greatestLift)}`,
        ]
      : []),
    ...(bypass
      ? [
          `            bypass takes ${fixed(bypass.massFlow / gram, 2)} g/s, ${share(bypass.share)} of what is delivered, and ${fixed(bypass.heat / kW, 3)} kW of heat with it`,
        ]
      : []),
    `  output    ${fixed(engine.brakePower / kW, 2)} kW, ${fixed(engine.torque, 2)} N m; bmep ${fixed(engine.bmep / bar, 2)} bar of imep ${fixed(engine.imep / bar, 2)}, friction ${fixed(engine.fmep / bar, 2)}`,
    `  fuel      ${fixed(engine.fuelFlow / gram, 2)} g/s at λ ${fixed(engine.lambda, 3)}, ${bsfc}; heat to the cylinder walls ${fixed(engine.wallHeat / kW, 2)} kW`,
    `  solved    in ${cycles} periods; mass, energy and species close to ${closed.toExponential(0)}, last change ${residuals.change.toExponential(0)}`,
  ];
}

function cylinderTable(model: Model, point: SolvedPoint): string {
  const rows = point.cylinders.map((cylinder, index) => {
    const { rowIndex, cylinderIndex } = model.geometry.cylinders[index]!;
    return [
      cylinderName(rowIndex, cylinderIndex),
      fixed(cylinder.deliveryRatio, 3),
      fixed(cylinder.chargingEfficiency, 3),
      fixed(cylinder.purity, 3),
      fixed(cylinder.imep / bar, 2),
      fixed(cylinder.peakPressure / bar, 1),
      cylinder.knock ? fixed(cylinder.knock.octaneNeeded, 0) : '–',
      cylinder.misfire ? 'misfires' : '',
    ];
  });
  return table(
    ['cylinder', 'delivered', 'kept', 'purity', 'imep bar', 'peak bar', 'octane needed', ''],
    rows,
  );
}

/** What the work of the gas becomes; what is nothing is left out. */
function gasWorkTable(model: Model, point: SolvedPoint): string {
  const rows = gasWork(point).flatMap(({ what, power, meanPressure, share: part }) =>
    what !== 'brake' && Math.abs(meanPressure) < 1
      ? []
      : [
          [
            GAS_WORK_LABELS[what],
            fixed(power, 0),
            fixed(meanPressure / bar, 3),
            part === null ? '–' : fixed(part / percent, 1),
          ],
        ],
  );
  return `${table(['work of the gas', 'W', 'bar', '%'], rows)}\nfriction by ${FRICTION_LAWS[model.engine.friction.law]}`;
}

const notes = ({ notes: list }: SolvedPoint): string[] =>
  list.length === 0 ? [] : ['', ...list.map(({ kind, text }) => `${kind}: ${text}`)];

/** A sweep in words, the answer first; `extra` is the cranking point where the sweep leaves it out. */
export function sweepReport(
  design: string,
  model: Model,
  points: readonly PointResult[],
  extra: PointResult | null,
): string {
  const all = extra ? [extra, ...points] : points;
  const { jet, lambdaOverSpeed } = model.engine.charge;
  const mixtureVaries = jet !== null || lambdaOverSpeed !== null;
  const rows = all.map((point) => {
    const speed = fixed(point.speed / rpm, 0) + (point === extra ? ' cranking' : '');
    if (!point.converged) return [speed, 'no answer'];
    const { engine, plenum, blower } = point;
    return [
      speed,
      fixed(engine.deliveryRatio, 3),
      fixed(engine.chargingEfficiency, 3),
      fixed(plenum.meanPressure / bar, 3),
      share(blower.slipFraction),
      fixed(blower.shaftPower / kW, 2),
      fixed(engine.airFlow / gram, 1),
      ...(mixtureVaries ? [fixed(engine.lambda, 3)] : []),
      fixed(engine.torque, 1),
      fixed(engine.brakePower / kW, 2),
      String(point.cylinders.filter((cylinder) => cylinder.misfire).length),
    ];
  });
  const head = [
    'rpm',
    'delivered',
    'kept',
    'plenum bar',
    'slip',
    'blower kW',
    'air g/s',
    ...(mixtureVaries ? ['λ'] : []),
    'N m',
    'kW',
    'misfiring',
  ];
  const reasons = all.flatMap((point) =>
    point.converged ? [] : [`${fixed(point.speed / rpm, 0)} rpm: no answer. ${point.reason}`],
  );
  const cautions = new Set(
    all.flatMap((point) =>
      point.converged
        ? point.notes
            .filter(({ kind }) => kind === 'caution')
            .map(({ text }) => `${fixed(point.speed / rpm, 0)} rpm: ${text}`)
        : [],
    ),
  );
  const verdict = judgeBlower(all, model.engine.wanted);
  return [verdict.text, '', design, table(head, rows), ...reasons, ...cautions, '', CAUTION, ''].join('\n');
}

/** Dead centres, strokes and port timing of every cylinder. */
export function geometryReport(design: string, model: Model): string {
  const { geometry, engine, drive } = model;
  const wheel = engine.blower.impeller !== null;
  const displaced = engine.blower.count * engine.blower.displacement * drive.ratio;
  const angle = (value: number) => fixed(value / deg, 2);
  const rows = geometry.cylinders.map((cylinder) => [
    cylinderName(cylinder.rowIndex, cylinder.cylinderIndex) + (cylinder.isMaster ? ' master' : ''),
    angle(cylinder.tdc),
    angle(cylinder.bdc),
    fixed(cylinder.stroke / mm, 3),
    fixed(cylinder.compressionRatio, 2),
    fixed(cylinder.trappedCompressionRatio, 2),
    angle(cylinder.exhaust.opensAfterOwnTdc),
    angle(cylinder.exhaust.closesAfterOwnTdc),
    angle(cylinder.transfer.opensAfterOwnTdc),
    angle(cylinder.transfer.closesAfterOwnTdc),
  ]);
  const head = [
    'cylinder',
    'TDC °',
    'BDC °',
    'stroke mm',
    'CR',
    'trapped',
    'ex. opens',
    'closes',
    'tr. opens',
    'closes',
  ];
  return [
    `${design}: ${fixed(geometry.sweptVolume / cc, 1)} cc swept; the blower ${wheel ? 'carries at its best flow' : 'displaces'} ${fixed(displaced / cc, 1)} cc a turn of the crank, ` +
      `${fixed(displaced / geometry.sweptVolume, 2)} times as much${wheel ? '' : ', before slip'}.`,
    'Dead centres in crank angle; windows in crank angle after each cylinder’s own top dead centre.',
    '',
    table(head, rows),
    '',
  ].join('\n');
}
