import { choice, filled, group, number } from './builders.ts';
import { fins } from './fins.ts';
import { gasToWalls } from './gas-to-walls.ts';
import { pistonHeat } from './piston-heat.ts';
import { rearRows } from './rear-rows.ts';
import { CHOICE } from './shared.ts';

export const cooling = group('Cooling', 'Heat from the gas to the walls of the cylinder.', {
  ...gasToWalls,
  walls: choice(['given', 'worked out'], 'given', {
    label: 'Wall temperatures',
    help: 'Given: held at the three temperatures below. Worked out: from the heat of the gas and what fins, rings and joint lead away; the three are then where the search begins.',
    source: CHOICE,
  }),
  crown_C: number(250, {
    label: 'Crown temperature',
    min: -40,
    max: 600,
    plausible: [180, 330],
    source: 'typical',
  }),
  head_C: number(170, {
    label: 'Head temperature',
    min: -40,
    max: 500,
    plausible: [110, 230],
    source: 'typical',
  }),
  liner_C: number(140, {
    label: 'Liner temperature',
    min: -40,
    max: 400,
    plausible: [90, 190],
    source: 'typical',
  }),
  airSpeed_m_per_s: number(20, {
    label: 'Air speed at the cylinders',
    help: 'Of the free air before the first row, row A. Where air is led between the fins, its speed there.',
    min: 0,
    max: 150,
    plausible: [5, 40],
    source: 'typical, 15 to 30 m/s behind a propeller or in a fan’s duct',
  }),
  coating_mm: number(0, {
    label: 'Ceramic layer on the crown',
    help: '0 for none.',
    min: 0,
    max: 5,
    plausible: [0, 0.5],
    source: 'the builder’s choice; 0.1 to 0.3 mm are usual on petrol engines',
  }),
  coatingConductivity_W_per_mK: number(1, {
    detail: true,
    label: 'Conductivity of the ceramic layer',
    min: 0.1,
    max: 50,
    plausible: [0.8, 3],
    source: 'typical: plasma-sprayed zirconia with 7 to 8 % yttria 0.8 to 1.2, dense 2 to 3',
  }),
  crankcase_C: number(80, {
    label: 'Temperature in the crankcase',
    help: 'Of the gas and oil mist under the pistons, which take part in no breathing here.',
    min: -40,
    max: 250,
    plausible: [40, 120],
    source: 'typical',
  }),
  crownLimit_C: number(300, {
    label: 'Crown not to be hotter than',
    help: 'A mean over the crown: its middle, and spots that nothing here knows of, are hotter.',
    min: 50,
    max: 600,
    plausible: [250, 350],
    source: 'typical: aluminium has lost half its strength at 300 °C',
  }),
  headLimit_C: number(200, {
    label: 'Head not to be hotter than',
    min: 50,
    max: 500,
    plausible: [180, 260],
    source: 'typical of air-cooled aluminium heads',
  }),
  linerLimit_C: number(180, {
    label: 'Liner not to be hotter than',
    min: 50,
    max: 400,
    plausible: [150, 200],
    source: 'typical: life of the oil on it',
  }),
  fins: filled(fins),
  piston: filled(pistonHeat),
  rows: filled(rearRows),
});
