import { filled, group, number, numberOrNone } from './builders.ts';
import { space, tolerances } from './fit.ts';
import { CHOICE } from './shared.ts';

export const wanted = group('What is wanted', 'By what the design is judged.', {
  deliveryRatio: number(1, {
    label: 'Delivery ratio wanted',
    help: 'Air through the transfer windows in a turn over ambient air in the swept volume; the blower is big enough where it is reached.',
    min: 0.1,
    max: 3,
    plausible: [0.6, 1.6],
    source: 'typical: one swept volume of ambient air a turn',
  }),
  crankingSpeed_rpm: number(400, {
    label: 'Cranking speed',
    min: 150,
    max: 3000,
    plausible: [200, 900],
    source: 'typical of an electric starter or a hand drill',
  }),
  starterTorque_N_m: numberOrNone({
    label: 'Torque of the starter at the crank',
    help: 'At cranking speed, its gearing counted.',
    min: 0.01,
    max: 5000,
    plausible: [1, 60],
    otherwise: 'not known: what it would take is told',
    source: CHOICE,
  }),
  coldFriction: number(2, {
    detail: true,
    label: 'Friction while starting, over that of the warm engine',
    min: 1,
    max: 6,
    plausible: [1.5, 4],
    source:
      'typical, 1.5 to 4 by how thick the oil is; Heywood, Internal Combustion Engine Fundamentals, 1988, chapter 13, for its growth with viscosity',
  }),
  minSpeed_rpm: number(2000, {
    label: 'Lowest working speed',
    min: 150,
    max: 20000,
    plausible: [800, 4000],
    source: CHOICE,
  }),
  maxSpeed_rpm: number(9000, {
    label: 'Highest working speed',
    min: 150,
    max: 20000,
    plausible: [4000, 12000],
    source: CHOICE,
  }),
  speed_rpm: number(6000, {
    label: 'Speed shown first',
    min: 150,
    max: 20000,
    plausible: [1000, 12000],
    source: CHOICE,
  }),
  space: filled(space),
  tolerances: filled(tolerances),
});
