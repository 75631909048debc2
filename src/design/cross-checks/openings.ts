import { formatNumber } from '../format-quantity.ts';
import type { Design } from '../schema/design.ts';
import { fault } from './cross-fault.ts';
import type { CrossFault } from './cross-fault.ts';

export function* windowTops({ windows }: Design): Generator<CrossFault> {
  for (const kind of ['exhaust', 'transfer'] as const) {
    for (const [i, { top_mm, opens_degATDC }] of windows[kind].entries()) {
      const path = `windows.${kind}[${i}]`;
      const uses = [`${path}.top_mm`, `${path}.opens_degATDC`];
      if (top_mm === undefined && opens_degATDC === undefined) {
        yield fault(path, 'the top edge is missing: give either top_mm or opens_degATDC', ...uses);
      } else if (top_mm !== undefined && opens_degATDC !== undefined) {
        const both = `top_mm is ${formatNumber(top_mm)} mm and opens_degATDC is ${formatNumber(opens_degATDC)}°`;
        yield fault(path, `the top edge is given twice: ${both}; allowed: one of the two`, ...uses);
      }
    }
  }
}

export function* relief({ plenum }: Design): Generator<CrossFault> {
  if (!plenum.relief) return;
  const {
    cracking_barGauge: cracking,
    fullOpen_barGauge: open,
    reseating_barGauge: reseating,
  } = plenum.relief;
  if (reseating !== undefined && reseating > cracking) {
    yield fault(
      'plenum.relief.reseating_barGauge',
      `the relief valve shuts at ${formatNumber(reseating)} bar; allowed: up to ${formatNumber(cracking)} bar, at which it begins to open`,
      'plenum.relief.cracking_barGauge',
    );
  }
  if (open <= cracking) {
    yield fault(
      'plenum.relief.fullOpen_barGauge',
      `the relief valve is fully open at ${formatNumber(open)} bar; allowed: more than ${formatNumber(cracking)} bar, at which it begins to open`,
      'plenum.relief.cracking_barGauge',
    );
  }
}
