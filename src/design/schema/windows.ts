import * as v from 'valibot';
import { choice, filled, group, integer, listOf, number, numberOrNone, numbersOrNone } from './builders.ts';
import { CHOICE, discharge, dischargeTable } from './shared.ts';

const windowGroup = (what: string) =>
  group(`${what} windows`, 'Equal windows of one kind; further groups make boost or auxiliary windows.', {
    count: integer(1, { label: 'Number of windows', min: 1, max: 24, plausible: [1, 6], source: CHOICE }),
    width_mm: number(12, {
      label: 'Width of one window',
      help: 'Over its bridges.',
      min: 0.5,
      max: 200,
      plausible: [4, 60],
      source: CHOICE,
    }),
    widthAlong: choice(['chord', 'bore circumference'], 'chord', {
      label: 'Width measured along',
      help: 'Straight across (chord), or round the bore as on an unrolled liner.',
      source: CHOICE,
    }),
    bridge_mm: number(0, {
      label: 'Width of the bridges in one window',
      help: 'Taken off its width.',
      min: 0,
      max: 60,
      plausible: [0, 8],
      source: 'typical, 2.5 to 4 mm for a bridge that has to last',
    }),
    top_mm: numberOrNone({
      label: 'Top edge below the deck',
      min: 0.5,
      max: 200,
      plausible: [10, 80],
      otherwise: 'given as the angle of opening',
      insteadOf: 'opens_degATDC',
      source: CHOICE,
    }),
    opens_degATDC: numberOrNone({
      label: 'Opens',
      help: 'Crank angle after the master cylinder’s top dead centre at which the crown uncovers the window.',
      min: 20,
      max: 178,
      plausible: [80, 140],
      otherwise: 'given as the depth of the top edge',
      insteadOf: 'top_mm',
      source: 'typical, exhaust 85° to 100°, transfer 110° to 122° for a blown engine',
    }),
    floor_mm: numberOrNone({
      detail: true,
      label: 'Floor below the deck',
      min: 1,
      max: 250,
      plausible: [15, 100],
      otherwise: 'flush with the crown at the master’s bottom dead centre',
      source: CHOICE,
    }),
    corner_mm: number(2, {
      detail: true,
      label: 'Corner radius',
      min: 0,
      max: 60,
      plausible: [1, 8],
      source: 'typical',
    }),
    plan_deg: number(0, {
      detail: true,
      label: 'Passage angle in plan',
      help: 'Of the passage axis from the window’s normal, seen along the cylinder.',
      min: -80,
      max: 80,
      plausible: [-60, 60],
      source: CHOICE,
    }),
    elevation_deg: number(0, {
      detail: true,
      label: 'Passage angle in elevation',
      help: 'Of the passage axis from the window’s normal, seen from the side.',
      min: -80,
      max: 80,
      plausible: [-10, 60],
      source: CHOICE,
    }),
  });

const twoStage =
  'typical starting value, not measured; form of Benson & Brandham, Int. J. Mech. Sci. 11, 1969';

const scavenging = group(
  'Scavenging',
  'How fresh charge drives out burned gas.',
  {
    layout: choice(['loop', 'cross', 'uniflow'], 'loop', {
      label: 'Layout',
      help: 'Sets the displaced and short-circuit shares where these are left out.',
      source: CHOICE,
    }),
    law: choice(
      ['displacement then mixing', 'perfect mixing', 'perfect displacement', 'table'],
      'displacement then mixing',
      {
        label: 'Law of scavenging',
        help: 'Perfect mixing and perfect displacement are the limits between which engines lie.',
        source: twoStage,
      },
    ),
    displacedShare: numberOrNone({
      label: 'Displaced before mixing begins',
      help: 'Fresh share of the cylinder up to which burned gas alone is driven out.',
      min: 0,
      max: 1,
      plausible: [0.1, 0.7],
      otherwise: 'by layout: loop 0.4, cross 0.2, uniflow 0.6',
      source: twoStage,
    }),
    shortCircuitShare: numberOrNone({
      label: 'Short-circuit share',
      help: 'Share of the transfer inflow that passes straight to the exhaust while both windows flow.',
      min: 0,
      max: 0.6,
      plausible: [0, 0.15],
      otherwise: 'by layout: loop 0.05, cross 0.1, uniflow 0.01',
      source: twoStage,
    }),
    smoothing: number(0.05, {
      detail: true,
      label: 'Width over which a jump of the law is spread',
      help: 'In purity inside the cylinder; for the solver’s sake, small against 1.',
      min: 0.001,
      max: 0.3,
      plausible: [0.02, 0.1],
      source: 'numerical',
    }),
    zones: choice(['one mixed', 'fresh and burned'], 'one mixed', {
      label: 'Zones in the cylinder',
      help: 'One temperature for all of its gas, or a fresh and a burned zone with their own: then lost charge leaves cool and burned gas hot.',
      source: CHOICE,
    }),
    mixing_deg: number(8, {
      detail: true,
      label: 'Mixing of the zones',
      help: 'Crank angle in which their difference of temperature falls to 37 % once they mix freely, as behind shut windows; used with two zones only.',
      min: 2,
      max: 60,
      plausible: [4, 25],
      source: 'assumed: one turn of the charge in the cylinder or less; figures hardly answer to it',
    }),
    inside: numbersOrNone(
      {
        label: 'Table: purity inside',
        help: 'From 0 to 1, rising; used by the law “table”.',
        min: 0,
        max: 1,
        plausible: [0, 1],
        otherwise: 'needed for the law “table” only',
        source: CHOICE,
      },
      64,
    ),
    leaving: numbersOrNone(
      {
        label: 'Table: purity of what leaves',
        help: 'From 0 to 1, not falling, one for each purity inside.',
        min: 0,
        max: 1,
        plausible: [0, 1],
        otherwise: 'needed for the law “table” only',
        source: CHOICE,
      },
      64,
    ),
  },
  { detail: true },
);

/** Columns: 1, 1.3, 1.9 and beyond any blowdown. */
const exhaustTable = dischargeTable('exhaust windows', {
  openings: [0, 0.2, 0.5, 1],
  pressureRatios: [1, 1.3, 1.9, 8],
  forward: [0.76, 0.78, 0.87, 0.87, 0.74, 0.76, 0.86, 0.86, 0.68, 0.71, 0.8, 0.8, 0.65, 0.68, 0.75, 0.75],
  backward: [0.66, 0.66, 0.66, 0.66, 0.63, 0.63, 0.63, 0.63, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6],
});
const transferTable = dischargeTable('transfer windows', {
  openings: [0, 0.2, 0.5, 1],
  pressureRatios: [1, 8],
  forward: [0.8, 0.8, 0.77, 0.77, 0.7, 0.7, 0.68, 0.68],
  backward: [0.66, 0.66, 0.64, 0.64, 0.62, 0.62, 0.6, 0.6],
});

export const windows = group(
  'Windows',
  'The openings in the cylinder wall, and how the charge passes through them.',
  {
    exhaust: v.optional(
      listOf(windowGroup('Exhaust'), 'Exhaust windows', 'Groups of equal exhaust windows.', {
        min: 1,
        max: 4,
      }),
      [{ width_mm: 26, bridge_mm: 0, opens_degATDC: 97, corner_mm: 3 }],
    ),
    transfer: v.optional(
      listOf(windowGroup('Transfer'), 'Transfer windows', 'Groups of equal transfer windows.', {
        min: 1,
        max: 4,
      }),
      [
        {
          count: 4,
          width_mm: 13,
          widthAlong: 'bore circumference',
          opens_degATDC: 117,
          plan_deg: 30,
          elevation_deg: 5,
        },
      ],
    ),
    exhaustDischarge: discharge('exhaust windows', 0.75, 0.6),
    transferDischarge: discharge('transfer windows', 0.7, 0.62),
    exhaustTable: v.optional(v.nullable(exhaustTable), null),
    transferTable: v.optional(v.nullable(transferTable), null),
    scavenging: filled(scavenging),
  },
);
