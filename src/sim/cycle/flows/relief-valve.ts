import type { Plenum } from '../../engine.ts';
import { stickingLift } from '../../exchange/sticking-lift.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement } from '../instant.ts';
import type { Memory } from '../memory.ts';
import { OrificeFlow } from './orifices.ts';

type Spring = Pick<
  NonNullable<Plenum['relief']>,
  'crackingPressure' | 'fullOpenPressure' | 'reseatingPressure'
>;

/** Whether its lift depends on what came before. */
export const sticksAtAll = (spring: Spring | null): boolean =>
  spring !== null && spring.reseatingPressure < spring.crackingPressure;

/**
 * Spring-loaded valve from the plenum: shut below the cracking pressure difference, its area growing in proportion from there to
 * fully open, and with friction on its stem later on the way down. It does not let gas back in.
 *
 *   CdA = CdA_full lift       lift: `stickingLift` of dp = p_plenum - p_ambient and the lift after the last step
 *
 * Valid: no inertia, no flutter; see stickingLift. Within a step the pressure is taken to rise or to fall.
 * Numerics: lift is continuous, and the lift that is kept belongs to the periodic solution (see Memory). Slopes hold how the lift
 * answers to pressure, besides the chord of the flow; where it sticks it does not answer.
 */
export class ReliefValve implements FlowElement {
  /** Over the whole lift, at the present instant [-]. */
  lift = 0;
  /** Least that the present pressure leaves it at; the greatest of these in a period, and whether it moved then. */
  private least = 0;
  private asked = 0;
  private moved = false;
  private readonly flow: OrificeFlow;

  /**
   * @param fullArea  - discharge coefficient times area, fully open [m^2]
   * @param smoothing - see SmoothOrifice [Pa]
   */
  constructor(
    private readonly edge: number,
    private readonly fullArea: number,
    private readonly spring: Spring,
    smoothing: number,
    private readonly memory: Memory,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    this.flow = new OrificeFlow(gas, edges);
    this.flow.open({ edge, forward: 0, backward: 0, smoothing });
  }

  setFlows(): void {
    const { edges, edge, gas, memory } = this;
    const { crackingPressure, fullOpenPressure, reseatingPressure } = this.spring;
    const held = memory.keepsLift ? memory.lift : 0;
    const dp = gas.pressure[edges.from[edge]] - gas.pressure[edges.to[edge]];
    const lift = stickingLift(dp, crackingPressure, fullOpenPressure, reseatingPressure, held);
    if (memory.keepsLift)
      this.least = stickingLift(dp, crackingPressure, fullOpenPressure, reseatingPressure, 0);
    this.lift = lift;
    if (lift <= 0) {
      edges.close(edge);
      return;
    }
    edges.forward[edge] = this.fullArea * lift;
    this.flow.set(edge);
    if (lift < 1 && !(memory.keepsLift && lift === held)) {
      const opening = edges.massFlow[edge] / (lift * (fullOpenPressure - crackingPressure));
      edges.slopeFrom[edge] += opening;
      edges.slopeTo[edge] -= opening;
    }
  }

  /** The step that led here is taken: friction holds what it came to. */
  keep(): void {
    const { memory, lift } = this;
    if (!memory.keepsLift) return;
    if (lift !== memory.lift) this.moved = true;
    memory.lift = lift;
    if (this.least > this.asked) this.asked = this.least;
  }

  /**
   * Ends a period of the search. A valve that friction held through all of it comes to the least lift that its pressures leave it
   * at: what pressure that has risen makes of it. Else any lift between the lines would do, whichever the search came by.
   */
  settle(): void {
    const { memory, moved, asked } = this;
    if (memory.keepsLift && !moved && memory.lift > asked) memory.lift = asked;
    this.moved = false;
    this.asked = 0;
  }
}
