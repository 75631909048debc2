import { withinTurn } from '../../geometry/angles.ts';
import type { EngineGeometry } from '../../geometry/cylinder-geometry.ts';
import { firingOrder } from '../../geometry/firing-order.ts';
import { TURN } from '../../units.ts';

/** Crank angles of a cylinder's events [rad], in [0, 2 pi). */
export interface DialEvents {
  readonly index: number;
  readonly topDeadCentre: number;
  readonly exhaustOpens: number;
  readonly transferOpens: number;
}

/** Between events of one kind, of all cylinders [rad]. */
export interface Gaps {
  readonly least: number;
  readonly most: number;
  /** A turn over the number of cylinders: a two-stroke fires every cylinder every turn. */
  readonly even: number;
}

export interface Dial {
  /** In the order of the top dead centres. */
  readonly events: readonly DialEvents[];
  readonly gaps: Readonly<Record<Exclude<keyof DialEvents, 'index'>, Gaps>>;
}

/** When every cylinder is at its true top dead centre and opens its windows, and how evenly that is spread over the turn. */
export function dial({ cylinders }: Pick<EngineGeometry, 'cylinders'>): Dial {
  const events = cylinders.map(({ index, tdc, exhaust, transfer }): DialEvents => ({
    index,
    topDeadCentre: withinTurn(tdc),
    exhaustOpens: withinTurn(tdc + exhaust.opensAfterOwnTdc),
    transferOpens: withinTurn(tdc + transfer.opensAfterOwnTdc),
  }));
  const gapsOf = (kind: keyof Dial['gaps']): Gaps => {
    const intervals = firingOrder(events.map((each) => each[kind])).map(({ interval }) => interval);
    return { least: Math.min(...intervals), most: Math.max(...intervals), even: TURN / events.length };
  };
  return {
    events: firingOrder(events.map((each) => each.topDeadCentre)).map(({ index }) => events[index]!),
    gaps: {
      topDeadCentre: gapsOf('topDeadCentre'),
      exhaustOpens: gapsOf('exhaustOpens'),
      transferOpens: gapsOf('transferOpens'),
    },
  };
}
