import * as v from 'valibot';
import { group, integerOrNone, numberOrNone } from './builders.ts';
import { CHOICE } from './shared.ts';

const trim = (what: string) =>
  numberOrNone({
    label: `Trim of the ${what} windows`,
    help: 'Top edge moved away from the deck (+) or towards it (−).',
    min: -10,
    max: 10,
    plausible: [-3, 3],
    otherwise: 'no trim',
    source: CHOICE,
  });

export const correction = group('Correction', 'What differs in one cylinder.', {
  cylinder: v.pipe(
    v.string(),
    v.regex(/^[A-D](?:[1-9]|1[0-4])$/),
    v.title('Cylinder'),
    v.description('Letter of the row and number in the row: A3.'),
    v.metadata({ source: CHOICE }),
  ),
  barrel_mm: numberOrNone({
    label: 'Barrel raised',
    help: 'Barrel raised (+) or lowered (−) from the common height.',
    min: -10,
    max: 10,
    plausible: [-2, 2],
    otherwise: 'the common height',
    source: CHOICE,
  }),
  head_cc: numberOrNone({
    label: 'Head volume added',
    help: 'Volume put into (+) or taken out of (−) this cylinder’s head.',
    min: -20,
    max: 20,
    plausible: [-2, 2],
    otherwise: 'a head like the others',
    source: CHOICE,
  }),
  knuckle_deg: numberOrNone({
    label: 'Knuckle angle',
    help: 'Angle of this rod’s knuckle pin from the master rod’s axis.',
    min: -360,
    max: 360,
    plausible: [0, 360],
    otherwise: 'the angle between the two cylinder axes',
    source: CHOICE,
  }),
  knuckleRadius_mm: numberOrNone({
    label: 'Knuckle radius of this rod',
    help: 'From crank pin to this knuckle pin. The rod keeps its length unless that is given, too.',
    min: 0,
    max: 150,
    plausible: [0, 60],
    otherwise: 'the common knuckle radius',
    source: CHOICE,
  }),
  rod_mm: numberOrNone({
    label: 'Length of the articulated rod',
    min: 5,
    max: 500,
    plausible: [30, 200],
    otherwise: 'master rod length less knuckle radius',
    source: CHOICE,
  }),
  exhaustTrim_mm: trim('exhaust'),
  transferTrim_mm: trim('transfer'),
  spark_degBTDC: numberOrNone({
    label: 'Spark advance of this cylinder',
    help: 'Counted from the same as the common spark advance.',
    min: -20,
    max: 60,
    plausible: [10, 35],
    otherwise: 'the common spark advance',
    source: CHOICE,
  }),
  collector: integerOrNone({
    label: 'Exhaust collector of this cylinder',
    min: 1,
    max: 28,
    plausible: [1, 4],
    otherwise: 'the collector of its row',
    source: CHOICE,
  }),
  shortCircuitShare: numberOrNone({
    label: 'Short-circuit share of this cylinder',
    help: 'Share of its transfer inflow that passes straight to the exhaust.',
    min: 0,
    max: 0.6,
    plausible: [0, 0.15],
    otherwise: 'the common short-circuit share',
    source: CHOICE,
  }),
});
