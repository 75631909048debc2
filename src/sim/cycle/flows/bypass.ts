import type { Bypass as Opening } from '../../engine.ts';
import type { EdgeFlows } from '../edge-flows.ts';
import type { GasStates } from '../gas-states.ts';
import type { FlowElement } from '../instant.ts';
import { OrificeFlow } from './orifices.ts';

/**
 * Opening from the plenum round the blowers, to the inlet box both ways, to the air outwards only.
 *
 *   CdA = CdA_full                                                           always open
 *   CdA = CdA_full min( max( (p_plenum - p_ambient - opens)/range, 0 ), 1 )  by pressure
 *
 * Valid: no inertia, of gas or flap. Numerics: slopes as in ReliefValve.
 */
export class Bypass implements FlowElement {
  private readonly flow: OrificeFlow;

  /**
   * @param fullArea  - discharge coefficient times area, fully open [m^2]
   * @param smoothing - see SmoothOrifice [Pa]
   * @param ambient   - node that the plenum's pressure is measured against
   */
  constructor(
    private readonly edge: number,
    private readonly fullArea: number,
    private readonly opening: Pick<Opening, 'into' | 'control'>,
    smoothing: number,
    private readonly ambient: number,
    private readonly gas: GasStates,
    private readonly edges: EdgeFlows,
  ) {
    this.flow = new OrificeFlow(gas, edges);
    const backward = opening.into === 'air' ? 0 : fullArea;
    this.flow.open({ edge, forward: fullArea, backward, smoothing });
  }

  setFlows(): void {
    const { edges, edge, gas, opening, fullArea } = this;
    const { control } = opening;
    if (control === null) {
      this.flow.set(edge);
      return;
    }
    const gauge = gas.pressure[edges.from[edge]] - gas.pressure[this.ambient];
    const share = (gauge - control.opensAt) / control.range;
    if (share <= 0) {
      edges.close(edge);
      return;
    }
    const area = fullArea * Math.min(share, 1);
    edges.forward[edge] = area;
    if (opening.into !== 'air') edges.backward[edge] = area;
    this.flow.set(edge);
    // Where gas runs forwards into the plenum, more pressure there opens it further: the slope would have the wrong sign.
    if (share < 1 && edges.massFlow[edge] > 0)
      edges.slopeFrom[edge] += edges.massFlow[edge] / (share * control.range);
  }
}
