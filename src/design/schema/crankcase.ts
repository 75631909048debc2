import { choice, group, number, numberOrNone } from './builders.ts';
import { CHOICE, wall } from './shared.ts';

const HEYWOOD_CREVICES = 'Heywood, Internal Combustion Engine Fundamentals, 1988, section 8.6';

export const crankcase = group(
  'Crankcase',
  'As a volume of its own under the pistons. Left off, the pressure there is constant and nothing is pumped.',
  {
    role: choice(['vented', 'plenum'], 'vented', {
      label: 'Use of the crankcase',
      help: 'Vented to the air by its breather; or part of the plenum, so that the pistons work on the charge. Then its volume comes on top of the plenum’s.',
      source: CHOICE,
    }),
    volume_cc: numberOrNone({
      label: 'Free volume of the crankcase',
      help: 'With every piston half way down its stroke.',
      min: 5,
      max: 100000,
      plausible: [100, 10000],
      otherwise: 'three times the swept volume of all cylinders',
      source: 'typical; fill it with oil and measure',
    }),
    breather_mm: number(12, {
      label: 'Bore of the breather',
      help: 'To the air, both ways. 0 for none; of no account where the crankcase is the plenum.',
      min: 0,
      max: 150,
      plausible: [6, 30],
      source: 'typical',
    }),
    breatherDischarge: number(0.65, {
      detail: true,
      label: 'Discharge coefficient of the breather',
      min: 0.2,
      max: 1,
      plausible: [0.55, 0.8],
      source: 'typical',
    }),
    rings_mm2: number(0.05, {
      detail: true,
      label: 'Area past the rings of one piston',
      help: 'Of the gaps that gas passes by, as one opening. In a cylinder of 50 cc, 0.05 mm² lets some half a percent of the charge by at 6000 rpm, and ten times that share while cranking.',
      min: 0,
      max: 20,
      plausible: [0.01, 0.5],
      source: `typical of small rings in good order, gap times clearance, and wide; measure blow-by at the breather. ${HEYWOOD_CREVICES}`,
    }),
    ringsDischarge: number(0.8, {
      detail: true,
      label: 'Discharge coefficient past the rings',
      min: 0.2,
      max: 1,
      plausible: [0.6, 0.9],
      source: `typical; ${HEYWOOD_CREVICES}`,
    }),
    wall: wall('crankcase', { temperature_C: 80, diameter_mm: 80, enhancement: 2 }),
  },
);
