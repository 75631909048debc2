import type { Scavenging } from '../../sim/engine.ts';
import { cylinderName } from '../cylinder-name.ts';
import { SCAVENGING_BY_LAYOUT } from '../scavenging-layouts.ts';
import type { Si } from './si.ts';

export function scavenging({ windows, crank }: Si): Scavenging {
  const { law, layout, inside, leaving, smoothing } = windows.scavenging;
  const usual = SCAVENGING_BY_LAYOUT[layout];
  const laws: Record<typeof law, Scavenging['law']> = {
    'perfect mixing': { kind: 'perfect mixing' },
    'perfect displacement': { kind: 'perfect displacement' },
    'displacement then mixing': {
      kind: 'displacement then mixing',
      displacedShare: windows.scavenging.displacedShare ?? usual.displacedShare,
    },
    table: { kind: 'table', inside: inside ?? [], leaving: leaving ?? [] },
  };
  const own = new Map(crank.corrections.map((each) => [each.cylinder, each.shortCircuitShare ?? null]));
  return {
    law: laws[law],
    shortCircuitShare: windows.scavenging.shortCircuitShare ?? usual.shortCircuitShare,
    ownShortCircuit: crank.rows.flatMap(({ cylinders }, row) =>
      Array.from({ length: cylinders }, (_, j) => own.get(cylinderName(row, j)) ?? null),
    ),
    smoothing,
    zones:
      windows.scavenging.zones === 'fresh and burned' ? { mixingAngle: windows.scavenging.mixing } : null,
  };
}
