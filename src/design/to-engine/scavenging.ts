import type { Scavenging } from '../../sim/engine.ts';
import { SCAVENGING_BY_LAYOUT } from '../scavenging-layouts.ts';
import type { Si } from './si.ts';

export function scavenging({ windows }: Si): Scavenging {
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
  return {
    law: laws[law],
    shortCircuitShare: windows.scavenging.shortCircuitShare ?? usual.shortCircuitShare,
    smoothing,
    zones:
      windows.scavenging.zones === 'fresh and burned' ? { mixingAngle: windows.scavenging.mixing } : null,
  };
}
