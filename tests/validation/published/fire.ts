import { atm, bar } from '../../../src/sim/units.ts';
import { ChargeFire } from '../../../src/sim/study/checks/fire/charge-fire.ts';
import { ventArea } from '../../../src/sim/study/checks/fire/vent-area.ts';
import { changed, modelOf, presetEngine } from '../../helpers/engines.ts';
import type { Comparison, Subject } from './comparison.ts';

const NFPA = 'NFPA 68, Guide for Venting of Deflagrations, 2002, table of P_max and K_G';

/** Above the atmosphere, burned shut in from 1 atm and 25 °C at the mixture that gives most [bar]. */
function shutIn(fuel: string): number {
  const engine = presetEngine('dill-3');
  const charge = { fuel, lambda: 0.9, oilShare: 0 };
  const fire = new ChargeFire(modelOf(changed(engine, { charge, ambient: { humidity: 0 } })));
  return (fire.shutIn(atm, 298.15).pressure - atm) / bar;
}

const closed = (quantity: string, fuel: string, measured: number): Comparison => ({
  quantity,
  origin: 'measured',
  source: NFPA,
  unit: 'bar gauge',
  values: [[measured, shutIn(fuel)]],
  within: { share: 0.3 },
  because: 'ours is a bound, no heat lost and no dissociation: it must lie above, and does by a fifth',
});

export const fire = (): Subject => ({
  title: 'Fire in plenum and passages',
  comparisons: [
    closed('vapour of petrol in air, burned in a closed vessel (printed: pentane)', 'petrol', 7.8),
    closed('vapour of methanol in air, burned in a closed vessel', 'methanol', 7.5),
    {
      quantity: 'vent area of a cubic metre, K_G 100 bar m/s, 1 bar held, opening at 0.1 bar',
      origin: 'closed form',
      source: '0.1265 log₁₀ K_G − 0.0567, by hand; EN 14994:2007',
      unit: 'm²',
      values: [
        [
          0.1963,
          ventArea({ volume: 1, start: atm, holds: atm + bar, opens: 0.1 * bar, index: 100 * bar }) ?? NaN,
        ],
      ],
      within: { amount: 5e-5 },
      because: 'half of the last digit',
    },
  ],
  unproven: [
    'Vented pressure. It stands and falls with how much faster than laminar a flame runs in a plenum full of swirl; and the rule for vent areas was measured on vessels a hundred times as large.',
    'Detonation and pressure waves, which go beyond every figure here.',
  ],
});
