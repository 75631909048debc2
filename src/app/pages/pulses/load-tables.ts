import type { TableColumn } from '../../../charts/chart-types.ts';
import { figure, missing } from '../../../charts/format.ts';
import { rowLetter } from '../../../design/cylinder-name.ts';
import type { Bearing } from '../../../sim/study/pulses/pulses.ts';
import type { ShaftLoad, Swing } from '../../../sim/study/pulses/shafts.ts';
import { gram, mm } from '../../../sim/units.ts';
import type { ShownUnits } from '../../units/shown-units.ts';

/** What each rod carries. */
export function rodColumns(
  { cylinders }: Bearing['loads'],
  labels: readonly string[],
  units: ShownUnits,
): TableColumn[] {
  const force = (label: string, of: (each: (typeof cylinders)[number]) => number | null, term?: string) => ({
    heading: units.heading(label, 'force'),
    values: units.column('force', cylinders.map(of)),
    digits: 3,
    term,
  });
  return [
    { heading: 'rod of', values: labels },
    force('push', ({ push }) => push),
    force('pull', ({ pull }) => pull),
    force('on the liner', ({ side }) => side),
    ...(cylinders.some(({ knuckle }) => knuckle)
      ? [
          force('knuckle pin, peak', ({ knuckle }) => knuckle?.peak ?? null, 'pulses.knuckleLoad'),
          force('mean', ({ knuckle }) => knuckle?.mean ?? null),
        ]
      : []),
  ];
}

/** Crank pins, then main bearings from the front; with the counterweights fitted. */
export function bearingColumns({ loads }: Bearing, units: ShownUnits): TableColumn[] {
  const several = loads.rows.length > 1;
  const lines = [
    ...loads.rows.map(({ pin }, row) => ({
      name: several ? `crank pin ${rowLetter(row)}` : 'crank pin',
      ...pin,
      bare: null as number | null,
    })),
    ...loads.mains.map(({ fitted, bare }, i) => ({
      name: `main bearing ${i + 1}`,
      ...fitted,
      bare: bare.peak,
    })),
  ];
  const column = (of: (line: (typeof lines)[number]) => number | null) =>
    units.column('force', lines.map(of));
  return [
    { heading: 'on', values: lines.map(({ name }) => name) },
    {
      heading: units.heading('peak', 'force'),
      values: column(({ peak }) => peak),
      digits: 3,
      term: 'pulses.mainLoad',
    },
    { heading: 'mean', values: column(({ mean }) => mean), digits: 3 },
    { heading: 'peak, bare', values: column(({ bare }) => bare), digits: 3 },
  ];
}

/** Output and blower drive side by side: a line for each figure. */
export function shaftColumns(
  { output, blowerDrive }: Bearing,
  units: ShownUnits,
  blowers: number,
): TableColumn[] {
  const line = (name: string, of: (shaft: ShaftLoad) => string) => ({
    name,
    output: of(output),
    blower: of(blowerDrive),
  });
  const swing =
    (of: (shaft: ShaftLoad) => Swing | null, measure: 'torque' | 'force', key: keyof Swing) =>
    (shaft: ShaftLoad) => {
      const found = of(shaft);
      return found ? figure(units.number(measure, found[key])) : missing;
    };
  const torque = (key: keyof Swing) => swing((shaft) => shaft.torque, 'torque', key);
  const tooth = (key: keyof Swing) => swing((shaft) => shaft.tooth, 'force', key);
  const stress = (of: (shaft: ShaftLoad) => number | undefined) => (shaft: ShaftLoad) =>
    figure(units.number('stress', of(shaft) ?? NaN));
  const lines = [
    line(units.heading('torque, mean', 'torque'), torque('mean')),
    line('torque, highest', torque('peak')),
    line('torque, lowest', torque('least')),
    line('reverses', ({ reverses }) => (reverses ? 'yes' : 'no')),
    line(
      units.heading('shear, greatest', 'stress'),
      stress(({ shear }) => shear.greatest),
    ),
    line(
      'shear, alternating',
      stress(({ shear }) => shear.alternating),
    ),
    line(units.heading('teeth on the crank, mean', 'force'), tooth('mean')),
    line('teeth, highest', tooth('peak')),
    line('teeth, lowest', tooth('least')),
    line(units.heading('early fire, torque', 'torque'), ({ earlyFire }) =>
      figure(units.number('torque', earlyFire?.torque ?? NaN)),
    ),
    line(
      units.heading('early fire, shear', 'stress'),
      stress(({ earlyFire }) => earlyFire?.shear),
    ),
    line(units.heading('early fire, teeth', 'force'), ({ earlyFire }) =>
      figure(units.number('force', earlyFire?.tooth ?? NaN)),
    ),
  ];
  return [
    { heading: 'shaft', values: lines.map(({ name }) => name) },
    { heading: 'output', values: lines.map((each) => each.output), term: 'pulses.shaftTorque' },
    {
      heading: blowers === 1 ? 'blower' : 'each blower',
      values: lines.map((each) => each.blower),
      term: 'pulses.shear',
    },
  ];
}

/** What shakes the case, by order: half the long axis of the ellipse. */
export function shakingColumns(
  { shaking: { force, moment } }: Bearing,
  rows: number,
  units: ShownUnits,
): TableColumn[] {
  const both = (label: string, measure: 'force' | 'torque', { bare, balanced }: typeof force) => [
    {
      heading: units.heading(label, measure),
      values: units.column(
        measure,
        bare.map(({ greatest }) => greatest),
      ),
      digits: 3,
      term: 'pulses.shaking',
    },
    {
      heading: `${label}, balanced`,
      values: units.column(
        measure,
        balanced.map(({ greatest }) => greatest),
      ),
      digits: 3,
    },
  ];
  return [
    { heading: 'order', values: force.bare.map(({ order }) => String(order)) },
    ...both('force', 'force', force),
    ...(rows > 1 ? both('moment', 'torque', moment) : []),
  ];
}

/** Counterweight of each throw in words: `15 200 g mm opposite its pin`. */
export function counterweightText({ shaking: { counterweights } }: Bearing): string {
  const gmm = (value: number) => `${figure(value / (gram * mm))}\u00a0g\u00a0mm`;
  const [first] = counterweights;
  const alike = counterweights.every(({ fitted }) => Math.abs(fitted - first!.fitted) < 1e-3 * first!.whole);
  const of = ({ fitted, whole, rotating }: typeof first & {}) =>
    `${gmm(fitted)} opposite its pin. What turns with the pin is ${gmm(rotating)}; half of what goes to and fro makes it ${gmm(whole)}`;
  if (counterweights.length === 1) return `Counterweight: ${of(first!)}.`;
  if (alike) return `Counterweight of each throw: ${of(first!)}.`;
  return counterweights.map((each, row) => `Throw ${rowLetter(row)}: ${of(each)}.`).join(' ');
}
