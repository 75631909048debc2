import { cylinderName, rowLetter } from '../../design/cylinder-name.ts';
import type { Model, SolvedPoint } from '../../sim/index.ts';
import { crankcaseSentence } from '../../sim/study/crankcase/crankcase-sentence.ts';
import { undersides } from '../../sim/study/crankcase/undersides.ts';
import type { Gaps } from '../../sim/study/pulses/dial.ts';
import type { Pulses } from '../../sim/study/pulses/pulses.ts';
import { LOADS_CAUTION } from '../../sim/study/pulses/pulses.ts';
import type { ShaftLoad } from '../../sim/study/pulses/shafts.ts';
import { MPa, bar, deg, gram, kgcm2, mm, percent, rpm } from '../../sim/units.ts';
import { CAUTION } from '../reports.ts';
import { table } from '../table.ts';
import { collectorOf } from './pulses-json.ts';

const fixed = (value: number, digits: number): string => value.toFixed(digits).replace('-', '−');
const share = (value: number, digits = 1): string => `${fixed(value / percent, digits)} %`;
const MILLIGRAM = gram / 1000;
/** Harmonics below this share of the strongest are left out. */
const WORTH_TELLING = 0.02;

/** Pulses of one point in words and tables. */
export function pulsesReport(name: string, model: Model, point: SolvedPoint, found: Pulses): string {
  const { rowIndex, cylinderIndex } = model.geometry.cylinders[found.dial.events[0]!.index]!;
  return [
    `${name}, ${fixed(point.speed / rpm, 0)} rpm, throttle ${share(point.throttle, 0)}`,
    '',
    `dial: crank angle from true top dead centre of ${cylinderName(rowIndex, cylinderIndex)}, with the rotation; a two-stroke fires every cylinder every turn`,
    ...dialLines(model, point, found),
    '',
    ...torqueLines(found),
    '',
    ...speedLines(found),
    '',
    ...balanceLines(found),
    '',
    ...loadLines(model, found),
    '',
    ...crankcaseLines(model, point),
    '',
    LOADS_CAUTION,
    CAUTION,
    '',
  ].join('\n');
}

function crankcaseLines({ geometry }: Model, { crankcase }: SolvedPoint): string[] {
  const below = undersides(geometry);
  const row = (what: string, { swing, harmonics }: (typeof below)['own']) => [
    what,
    share(swing, 2),
    ...harmonics.slice(0, 4).map((amplitude) => share(amplitude, 2)),
  ];
  return [
    `crankcase: ${crankcaseSentence(below, geometry.cylinders.length)}`,
    table(
      ['volume below, of that swept', 'peak to peak', 'order 1', '2', '3', '4'],
      [
        row('one piston', below.one),
        row('two, opposed', below.two),
        row('a row of even plain rods', below.even),
        row('this engine', below.own),
      ],
    ),
    ...(crankcase
      ? [
          `  its pressure ${fixed(crankcase.meanPressure / bar, 3)} bar (${fixed(crankcase.minPressure / bar, 3)} to ${fixed(crankcase.maxPressure / bar, 3)}), past the rings ${fixed(crankcase.blowBy / MILLIGRAM, 1)} mg/s, out of the breather ${fixed(crankcase.breathed / MILLIGRAM, 1)} mg/s`,
        ]
      : ['  it takes no part in this design: the pressure below the pistons is that of the air']),
  ];
}

function dialLines(model: Model, point: SolvedPoint, { dial }: Pulses): string[] {
  const degrees = (angle: number) => fixed(angle / deg, 1);
  const gap = (what: string, { least, most, even }: Gaps) =>
    `  ${what.padEnd(17)}${degrees(least)} to ${degrees(most)}° apart; even would be ${degrees(even)}°`;
  return [
    table(
      [
        'cylinder',
        'TDC °',
        'since °',
        'exhaust °',
        'transfer °',
        'collector',
        'back into passage mg',
        'from collector mg',
      ],
      dial.events.map((each, i) => {
        const { rowIndex, cylinderIndex } = model.geometry.cylinders[each.index]!;
        const before = dial.events.at(i - 1)!.topDeadCentre;
        const since = each.topDeadCentre - before + (i === 0 ? 2 * Math.PI : 0);
        const { transferBackflow, exhaustBackflow } = point.cylinders[each.index]!;
        return [
          cylinderName(rowIndex, cylinderIndex),
          degrees(each.topDeadCentre),
          degrees(since),
          degrees(each.exhaustOpens),
          degrees(each.transferOpens),
          String(collectorOf(model, each.index) + 1),
          fixed(transferBackflow / MILLIGRAM, 2),
          fixed(exhaustBackflow / MILLIGRAM, 2),
        ];
      }),
    ),
    gap('dead centres', dial.gaps.topDeadCentre),
    gap('exhaust opens', dial.gaps.exhaustOpens),
    gap('transfer opens', dial.gaps.transferOpens),
  ];
}

function torqueLines({ torque, harmonics }: Pulses): string[] {
  const { mean, peak, least, peakOverMean, peakAngle, reversals, negativeShare } = torque;
  const turns =
    reversals > 0
      ? `reverses ${fixed(reversals, 0)} times a turn, against the rotation over ${share(negativeShare, 0)} of it`
      : 'never reverses';
  const strongest = Math.max(...harmonics.total.map(({ amplitude }) => amplitude));
  return [
    `torque at the crank, N m: gas ${fixed(mean.gas, 2)}, less blower ${fixed(mean.blower, 2)}, less friction ${fixed(mean.friction, 2)}: mean ${fixed(mean.total, 2)}`,
    `  from ${fixed(least, 2)} to ${fixed(peak, 2)} at ${fixed(peakAngle / deg, 0)}°` +
      `${peakOverMean === null ? '' : `, ${fixed(peakOverMean, 2)} times the mean`}; ${turns}`,
    `harmonics, amplitude in N m, those above ${share(WORTH_TELLING, 0)} of the strongest`,
    table(
      ['order', 'total', 'gas', 'inertia', 'blower'],
      harmonics.total.flatMap(({ order, amplitude }, i) =>
        amplitude < WORTH_TELLING * strongest
          ? []
          : [
              [
                String(Number(order.toFixed(3))),
                ...[harmonics.total, harmonics.gas, harmonics.inertia, harmonics.blower].map((each) =>
                  fixed(each[i]!.amplitude, 2),
                ),
              ],
            ],
      ),
    ),
  ];
}

function speedLines({ fluctuation: { inertias, coefficient, energySwing } }: Pulses): string[] {
  const part = (value: number) => fixed(value / kgcm2, 2);
  return [
    `speed swings by ${share(coefficient, 2)} from highest to lowest: ${fixed(energySwing, 2)} J on ${part(inertias.total)} kg cm² at the crank`,
    `  crank and flywheel ${part(inertias.flywheel)}, rods and pistons ${part(inertias.rods)}, load ${part(inertias.load)}, rotors ${part(inertias.rotors)}`,
  ];
}

function balanceLines({ shaking }: Pulses): string[] {
  const gmm = gram * mm;
  const weights = shaking.counterweights.map(
    ({ fitted, whole, rotating }, row) =>
      `  throw ${rowLetter(row)}: ${fixed(fitted / gmm, 0)} g mm opposite the pin (${fixed(rotating / gmm, 0)} turns with it, ${fixed((whole - rotating) / gmm, 0)} stands for what goes to and fro)`,
  );
  const { force, moment } = shaking;
  return [
    'balance: counterweights',
    ...weights,
    'what shakes the case, half the long axis by order: without and with counterweights',
    table(
      ['order', 'force N', 'with', 'moment N m', 'with'],
      force.bare.map(({ order, greatest }, i) => [
        String(order),
        fixed(greatest, 1),
        fixed(force.balanced[i]!.greatest, 1),
        fixed(moment.bare[i]!.greatest, 2),
        fixed(moment.balanced[i]!.greatest, 2),
      ]),
    ),
  ];
}

function loadLines(model: Model, { loads, earlyFire, output, blowerDrive }: Pulses): string[] {
  const { load, blower } = model.engine;
  const nameOf = (index: number): string => {
    const { rowIndex, cylinderIndex } = model.geometry.cylinders[index]!;
    return cylinderName(rowIndex, cylinderIndex);
  };
  return [
    'loads, N: peak, mean over the turn',
    ...loads.rows.map(
      ({ pin, bending }, row) =>
        `  crank pin ${rowLetter(row)}: ${fixed(pin.peak, 0)}, ${fixed(pin.mean, 0)}` +
        (bending ? `; master rod bent at the knuckle flange by up to ${fixed(bending.peak, 1)} N m` : ''),
    ),
    ...loads.mains.map(
      ({ fitted, bare }, i) =>
        `  main bearing ${i + 1}: ${fixed(fitted.peak, 0)}, ${fixed(fitted.mean, 0)}; without counterweights ${fixed(bare.peak, 0)}, ${fixed(bare.mean, 0)}`,
    ),
    table(
      ['rod of', 'push', 'pull', 'side', 'knuckle pin', 'mean'],
      loads.cylinders.map(({ push, pull, side, knuckle }, index) => [
        nameOf(index),
        fixed(push, 0),
        fixed(pull, 0),
        fixed(side, 0),
        knuckle ? fixed(knuckle.peak, 0) : '',
        knuckle ? fixed(knuckle.mean, 0) : '',
      ]),
    ),
    '',
    ...shaftLines('output shaft', output, load.shaftDiameter),
    ...shaftLines(
      blower.count === 1 ? 'blower shaft' : 'each blower’s shaft',
      blowerDrive,
      blower.shaftDiameter,
    ),
    ...(earlyFire
      ? [
          `early fire: ${nameOf(earlyFire.index)} burns at once ${fixed(earlyFire.beforeTdc / deg, 0)}° before its top dead centre, ${fixed(earlyFire.pressure / bar, 0)} bar: ${fixed(earlyFire.torque, 1)} N m against the crank, taken ${fixed(load.shockFactor, 1)}-fold as sudden`,
        ]
      : []),
  ];
}

function shaftLines(what: string, shaft: ShaftLoad, diameter: number): string[] {
  const { torque, reverses, tooth, shear, earlyFire } = shaft;
  return [
    `${what}, ${fixed(diameter / mm, 1)} mm: ${fixed(torque.mean, 2)} N m on the mean, from ${fixed(torque.least, 2)} to ${fixed(torque.peak, 2)}${reverses ? ': it reverses' : ''}`,
    `  shear ${fixed(shear.greatest / MPa, 1)} MPa at most, ${fixed(shear.alternating / MPa, 1)} alternating` +
      (earlyFire
        ? `; early fire ${fixed(earlyFire.torque, 1)} N m, ${fixed(earlyFire.shear / MPa, 1)} MPa`
        : ''),
    ...(tooth
      ? [
          `  teeth on the crank ${fixed(tooth.mean, 0)} N on the mean, from ${fixed(tooth.least, 0)} to ${fixed(tooth.peak, 0)}` +
            (earlyFire?.tooth ? `; early fire ${fixed(earlyFire.tooth, 0)}` : ''),
        ]
      : []),
  ];
}
