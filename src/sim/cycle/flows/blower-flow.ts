import type { FlowElement, Source } from '../instant.ts';

/** A blower in the network, of any kind: sets the flow from inlet box to plenum and adds its work to the gas. */
export interface BlowerFlow extends FlowElement, Source {
  /** Fluid torque that the blowers ask of the crank at the present instant, gears apart [N m]. */
  readonly fluidTorque: number;
  /** Work that the gas of the plenum, and that of the inlet box, takes up, less the casing's share [W]. */
  readonly powerIntoPlenum: number;
  readonly powerIntoBox: number;
}
