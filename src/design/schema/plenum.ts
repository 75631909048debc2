import * as v from 'valibot';
import { choice, filled, group, number, numberOrNone } from './builders.ts';
import { CHOICE, discharge, wall } from './shared.ts';

const inletBox = group('Inlet box', 'The space between throttle and blower.', {
  volume_cc: number(300, {
    label: 'Volume of the inlet box',
    min: 5,
    max: 50000,
    plausible: [50, 2000],
    source: 'typical',
  }),
  wall: wall('inlet box', { temperature_C: 35, diameter_mm: 40, enhancement: 2 }),
});

const relief = group('Relief valve', 'Opens from the plenum to the air; pressurised mixture can explode.', {
  cracking_barGauge: number(0.7, {
    label: 'Relief valve begins to open',
    min: 0.02,
    max: 5,
    plausible: [0.2, 1.5],
    source: 'typical, somewhat above the highest working pressure',
  }),
  fullOpen_barGauge: number(1, {
    label: 'Relief valve fully open',
    min: 0.02,
    max: 8,
    plausible: [0.3, 2],
    source: 'typical',
  }),
  reseating_barGauge: numberOrNone({
    detail: true,
    label: 'Relief valve shuts again',
    help: 'Friction on the stem lets a valve shut at less than it opens at; between the two it stays as it is.',
    min: 0.01,
    max: 5,
    plausible: [0.1, 1.5],
    otherwise: 'where it begins to open: no friction',
    source: 'typical of spring-loaded valves, 0.8 to 0.95 of where they begin to open; measured on the valve',
  }),
  bore_mm: number(20, {
    label: 'Bore of the relief valve',
    min: 1,
    max: 200,
    plausible: [10, 60],
    source: 'typical',
  }),
  discharge: number(0.65, {
    detail: true,
    label: 'Discharge coefficient of the relief valve',
    min: 0.2,
    max: 1,
    plausible: [0.55, 0.8],
    source: 'typical',
  }),
});

const byPressure = { only: { key: 'control', is: ['by pressure'] } };

const bypass = group('Bypass', 'An opening from the plenum round the blower.', {
  into: choice(['inlet box', 'air'], 'inlet box', {
    label: 'Leads into',
    help: 'Inlet box: the gas goes round again and heats what is drawn in. Air: it is lost, fuel with it.',
    source: CHOICE,
  }),
  bore_mm: number(10, {
    label: 'Bore of the bypass',
    min: 0.5,
    max: 200,
    plausible: [4, 40],
    source: CHOICE,
  }),
  discharge: number(0.65, {
    detail: true,
    label: 'Discharge coefficient of the bypass',
    min: 0.2,
    max: 1,
    plausible: [0.55, 0.8],
    source: 'typical',
  }),
  control: choice(['always open', 'by pressure'], 'by pressure', {
    label: 'Opened',
    help: 'By pressure: its area grows in proportion to the plenum’s pressure above the air’s.',
    source: CHOICE,
  }),
  opens_barGauge: number(0.3, {
    ...byPressure,
    label: 'Bypass begins to open',
    min: 0,
    max: 5,
    plausible: [0.1, 1],
    source: CHOICE,
  }),
  until_bar: number(0.1, {
    ...byPressure,
    label: 'Further pressure to open it fully',
    help: 'The softer its spring, the less.',
    min: 0.01,
    max: 3,
    plausible: [0.05, 0.5],
    source: 'typical of a soft spring or a diaphragm',
  }),
});

const passages = group('Transfer passages', 'One from the plenum to the transfer windows of each cylinder.', {
  volume_cc: number(25, {
    label: 'Volume of one passage',
    min: 0.5,
    max: 5000,
    plausible: [5, 100],
    source: 'typical, about half a cylinder’s swept volume',
  }),
  entryArea_mm2: number(450, {
    label: 'Entry area of one passage',
    help: 'Where it leaves the plenum.',
    min: 5,
    max: 50000,
    plausible: [150, 1500],
    source: 'typical, somewhat more than the transfer windows fully open',
  }),
  length_mm: numberOrNone({
    detail: true,
    label: 'Length of the column of gas in one passage',
    help: 'Of the entry’s area, from plenum to windows. Given, its inertia is reckoned with: flow then lags behind pressure.',
    min: 1,
    max: 2000,
    plausible: [20, 200],
    otherwise: 'no inertia: flow follows pressure at once',
    source: 'geometry; add about 0.8 of the bore for the gas that moves at both ends',
  }),
  entryDischarge: discharge('passage entry', 0.8, 0.7),
  wall: wall('passages', { temperature_C: 90, diameter_mm: 14, enhancement: 2 }),
});

export const plenum = group('Plenum and passages', 'From the throttle’s far side to the cylinders.', {
  volume_cc: number(1200, {
    label: 'Volume of the plenum',
    min: 10,
    max: 100000,
    plausible: [200, 5000],
    source: 'typical, two to four times the swept volume of the engine',
  }),
  wall: wall('plenum', { temperature_C: 60, diameter_mm: 60, enhancement: 2 }),
  relief: v.optional(v.nullable(relief), {}),
  bypass: v.optional(v.nullable(bypass), null),
  passages: filled(passages),
  inletBox: filled(inletBox),
});
