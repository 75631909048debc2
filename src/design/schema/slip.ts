import { displacing } from './blower-kinds.ts';
import { choice, group, number, numberOrNone, yesNo } from './builders.ts';

const byPath = { only: { key: 'law', is: ['by path'] } };

export const slip = group(
  'Slip',
  'How gas gets back through the gaps.',
  {
    law: choice(['clearance area', 'by path'], 'clearance area', {
      label: 'Law of slip',
      help: 'Clearance area: one orifice. By path: tips, mesh and ends each as orifice or as thin gap with friction, whichever passes less; the clearance area then counts for nothing.',
      source: 'orifice: Heywood, 1988, app. C; thin gap: White, Viscous Fluid Flow, 2006, sec. 3-2',
    }),
    tipLand_mm: numberOrNone({
      ...byPath,
      label: 'Length of the thin gap at the tips',
      help: 'Along the flow. A sharp tip leaks more, a broad one less.',
      min: 0.05,
      max: 50,
      plausible: [0.5, 5],
      otherwise: 'as the round tip of full cycloids resists: 3π/8 × √(2 × radius × gap)',
      source: 'lubrication theory',
    }),
    meshLand_mm: numberOrNone({
      ...byPath,
      label: 'Length of the thin gap in the mesh',
      min: 0.05,
      max: 50,
      plausible: [0.5, 5],
      otherwise: 'as a round edge of the pitch radius resists: 3π/8 × √(2 × radius × gap)',
      source: 'lubrication theory; where lobe and hollow run along each other it is longer',
    }),
    endLand_mm: numberOrNone({
      ...byPath,
      label: 'Length of the thin gap at the ends',
      help: 'From discharge to inlet across a rotor’s end face.',
      min: 0.2,
      max: 300,
      plausible: [5, 60],
      otherwise: 'half the distance of the axes',
      source: 'geometry, an estimate',
    }),
    filmShare: number(0, {
      ...byPath,
      label: 'Share of the gaps that oil or fuel fills',
      help: '0 for dry rotors.',
      min: 0,
      max: 0.8,
      plausible: [0, 0.3],
      source: 'typical, 0.1 to 0.3 behind a carburettor with oil in the fuel; not measured',
    }),
    closeWithHeat: yesNo(false, {
      ...byPath,
      label: 'Gaps close as the blower warms',
      help: 'The gaps above are then those at 20 °C. Rotors as hot as the gas in the plenum, the casing half way to the air outside.',
      source: 'linear expansion, an estimate',
    }),
  },
  { detail: true, ...displacing },
);
