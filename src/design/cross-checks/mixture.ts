import { formatNumber } from '../format-quantity.ts';
import type { Design } from '../schema/design.ts';
import type { CrossFault } from './cross-fault.ts';
import { fault } from './cross-fault.ts';

/** A table of λ rises and is whole; a jet has its carburettor. */
export function* mixture({ fuel: { mixture: by, lambdaTable, feed } }: Design): Generator<CrossFault> {
  if (by === 'over speed') {
    const { speeds_rpm: speeds, lambdas } = lambdaTable;
    const [atSpeeds, atLambdas] = ['fuel.lambdaTable.speeds_rpm', 'fuel.lambdaTable.lambdas'] as const;
    if (speeds.length < 2)
      yield fault(atSpeeds, `has ${speeds.length} numbers; allowed: two or more`, atLambdas);
    const i = speeds.findIndex((speed, k) => k > 0 && speed <= speeds[k - 1]!);
    if (i > 0) {
      const pair = `${formatNumber(speeds[i]!)} rpm follows ${formatNumber(speeds[i - 1]!)} rpm`;
      yield fault(atSpeeds, `${pair}; allowed: each above the one before`, atLambdas);
    }
    if (lambdas.length !== speeds.length)
      yield fault(
        atLambdas,
        `has ${lambdas.length} numbers; allowed: as many as speeds_rpm, ${speeds.length}`,
        atSpeeds,
      );
  }
  if (by === 'main jet' && feed !== 'carburettor')
    yield fault(
      'fuel.mixture',
      `a main jet feeds a carburettor, and fuel joins the air in the ${feed}; allowed: constant, over speed, or fuel that joins in the carburettor`,
      'fuel.feed',
    );
}
