import { USUAL_FLOW_COEFFICIENT, USUAL_WHEEL } from '../../sim/blower/centrifugal/usual-wheel.ts';
import { deg } from '../../sim/units.ts';
import { of } from './blower-kinds.ts';
import { group, integer, number, numberOrNone } from './builders.ts';
import { CHOICE } from './shared.ts';

export const impeller = group(
  'Impeller',
  'The wheel of a centrifugal blower. Its tip diameter stands above; a measured map tells the rest better than these defaults.',
  {
    bestFlow: number(USUAL_FLOW_COEFFICIENT, {
      label: 'Flow coefficient at best efficiency',
      help: 'Inlet volume flow over tip speed times the square of the tip diameter: says how much a wheel of this size carries.',
      min: 0.01,
      max: 0.2,
      plausible: [0.05, 0.11],
      source: 'typical, 0.07 to 0.09; Casey & Robinson, J. Turbomach. 135, 2013',
    }),
    efficiency: number(USUAL_WHEEL.efficiency, {
      label: 'Best isentropic efficiency',
      min: 0.2,
      max: 0.9,
      plausible: [0.6, 0.8],
      source: 'typical of wheels of 50 to 100 mm; large ones reach 0.85',
    }),
    blades: integer(USUAL_WHEEL.blades, {
      label: 'Blades at the exit',
      min: 4,
      max: 40,
      plausible: [8, 24],
      source: CHOICE,
    }),
    backsweep_deg: number(Math.round(USUAL_WHEEL.backsweep / deg), {
      label: 'Backsweep of the blades',
      help: 'At the exit, back from radial. It widens the range between surge and choking, and takes a faster wheel.',
      min: 0,
      max: 65,
      plausible: [0, 50],
      source: CHOICE,
    }),
    exitWidth_mm: numberOrNone({
      detail: true,
      label: 'Width of the passages at the exit',
      min: 0.5,
      max: 60,
      plausible: [2, 15],
      otherwise: '0.08 of the tip diameter',
      source: 'typical',
    }),
    throatArea_mm2: numberOrNone({
      detail: true,
      label: 'Throat area of the inducer',
      help: 'Between the blades where they are nearest to each other; sets the flow at which it chokes.',
      min: 5,
      max: 60000,
      plausible: [200, 4000],
      otherwise: '0.17 of the square of the tip diameter',
      source: 'typical: an eye of 0.6 of the tip diameter with six tenths of it open between hub and blades',
    }),
    efficiencyAtHalf: number(USUAL_WHEEL.efficiencyAtHalf, {
      detail: true,
      label: 'Efficiency at half the best flow, over the best',
      help: 'With the backsweep it decides where the blower surges.',
      min: 0.5,
      max: 0.98,
      plausible: [0.8, 0.95],
      source: 'typical',
    }),
    flowWithoutHead: number(USUAL_WHEEL.flowWithoutHead, {
      detail: true,
      label: 'Flow at which it makes no pressure, over the best flow',
      min: 1.1,
      max: 3,
      plausible: [1.3, 2],
      source: 'typical',
    }),
    workFactor: number(USUAL_WHEEL.workFactor, {
      detail: true,
      label: 'Work over that of the blades alone',
      help: 'Friction of the disc and gas that goes round again.',
      min: 1,
      max: 1.3,
      plausible: [1.01, 1.08],
      source: 'typical, 1.02 to 1.06',
    }),
  },
  of('centrifugal'),
);
