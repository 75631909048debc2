import * as v from 'valibot';
import { blend, fuelNames } from './blend.ts';
import { choice, filled, group, number, numberOrNone, yesNo } from './builders.ts';
import { burning } from './burning.ts';
import { carburettor } from './carburettor.ts';
import { injection } from './injection.ts';
import { arrester, restrictor, venturi } from './intake-losses.ts';
import { knock } from './knock.ts';
import { LAMBDAS, mixtureFields } from './mixture.ts';
import { CHOICE } from './shared.ts';

export const fuel = group('Fuel and spark', 'Carburettor, mixture and burning.', {
  kind: choice(fuelNames, 'petrol', { label: 'Fuel', source: CHOICE }),
  blend: v.optional(v.nullable(blend), null),
  feed: choice(['carburettor', 'passages', 'cylinders'], 'carburettor', {
    label: 'Fuel joins the air',
    help: 'In the carburettor; by an injector at the mouth of every passage; or by one in every cylinder after its windows have shut, where λ is that of the air shut in.',
    source: CHOICE,
  }),
  ...mixtureFields,
  lambda: number(0.88, {
    label: 'Mixture: λ',
    help: 'Air/fuel ratio over the stoichiometric one; below 1 is rich. Where a main jet sets it, starting alone is worked out with this one.',
    only: { key: 'mixture', is: ['constant', 'main jet'] },
    ...LAMBDAS,
    source: 'typical, 0.82 to 0.92 for air-cooled two-strokes at full load',
  }),
  oilShare: number(0.02, {
    label: 'Oil in the fuel',
    help: 'By volume; 2 % is 1 : 49.',
    min: 0,
    max: 0.15,
    plausible: [0.01, 0.06],
    source: 'typical',
  }),
  evaporatedShare: number(0.5, {
    detail: true,
    label: 'Fuel that evaporates before the blower',
    help: 'Of a carburettor: by the heat of the air itself; saturation may allow less.',
    min: 0,
    max: 1,
    plausible: [0.2, 0.9],
    source: 'typical',
  }),
  liquidGoesOn: yesNo(false, {
    detail: true,
    label: 'The rest goes on as liquid',
    help: 'Of a carburettor. Yes: as drops, which evaporate in passages and cylinders. No: the walls of the tract evaporate them at once.',
    source: 'no: a warm tract',
  }),
  drop_um: numberOrNone({
    detail: true,
    label: 'Diameter of drops',
    help: 'Sauter mean, of fuel that is injected or goes on as liquid; drops half as wide evaporate in a quarter of the time.',
    min: 2,
    max: 300,
    plausible: [8, 60],
    source:
      'typical; injectors into the cylinder make 10 µm with air to 25 µm without, Zhao, Lai & Harrington, Progress in Energy and Combustion Science 25, 1999; low pressure makes larger ones',
    otherwise: '15 µm injected into the cylinders, 30 µm else',
  }),
  injection: filled(injection),
  spark_degBTDC: number(24, {
    label: 'Spark advance',
    help: 'Before the dead centre that sparks are counted from.',
    min: -20,
    max: 60,
    plausible: [12, 32],
    source: 'typical',
  }),
  sparkFrom: choice(['own dead centre', 'even spacing'], 'own dead centre', {
    label: 'Sparks are counted from',
    help: 'Own dead centre: a cam or trigger made for these rods, each spark before its own piston’s top. Even spacing: a plain cam, each spark before the crank pin passes by the axis, early for some articulated pistons and late for others. Corrections give single cylinders their own advance.',
    source: CHOICE,
  }),
  carburettor: filled(carburettor),
  restrictor: v.optional(v.nullable(restrictor), null),
  venturi: v.optional(v.nullable(venturi), null),
  arrester: v.optional(v.nullable(arrester), null),
  burning: filled(burning),
  knock: filled(knock),
});
