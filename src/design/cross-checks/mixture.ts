import { formatNumber } from '../format-quantity.ts';
import type { Design } from '../schema/design.ts';
import type { CrossFault } from './cross-fault.ts';
import { fault } from './cross-fault.ts';

/** λ is stated in one way; a table rises and is whole; a jet has its venturi and its carburettor. */
export function* mixture({
  fuel: { lambdaTable: table, jet, venturi, feed },
}: Design): Generator<CrossFault> {
  if (table) {
    const { speeds_rpm: speeds, lambdas } = table;
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
  if (!jet) return;
  if (table)
    yield fault(
      'fuel.jet',
      'λ is stated twice, by a main jet and by a table over speed; allowed: one of the two',
      'fuel.lambdaTable',
    );
  if (!venturi)
    yield fault(
      'fuel.jet',
      'a main jet needs a venturi, whose depression draws the fuel, and there is none; allowed: with a venturi',
      'fuel.venturi',
    );
  if (feed !== 'carburettor')
    yield fault(
      'fuel.jet',
      `a main jet feeds a carburettor, and fuel joins the air in the ${feed}; allowed: in the carburettor`,
      'fuel.feed',
    );
}
