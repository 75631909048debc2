import type { Collector, DirectionalCoefficient } from '../../engine.ts';
import type { InertialPassage } from '../flows/inertial-passages.ts';
import { InertialPassages } from '../flows/inertial-passages.ts';
import type { Parts } from './flow-elements.ts';

/** Passage entries and tail pipes whose columns of gas have a length; null where none has. */
export function inertialPassagesOf({ model, gas, edges, design }: Parts): InertialPassages | null {
  const { passages, collectors } = model.engine;
  const { entries, outlets } = model.network.through;
  const { length, entryArea, entryDischarge } = passages;
  const columns: InertialPassage[] = [];
  if (length !== null)
    for (const edge of entries)
      columns.push({
        edge,
        forward: entryDischarge.forward * entryArea,
        backward: entryDischarge.backward * entryArea,
        areaPerLength: entryArea / length,
        scale: design.window,
      });
  outlets.forEach((edge, i) => {
    const { pipe } = collectors[i];
    if (!pipe) return;
    const { forward, backward } = outletWithPipe(collectors[i]);
    columns.push({
      edge,
      forward,
      backward,
      areaPerLength: pipe.area / pipe.length,
      scale: design.perCollector,
    });
  });
  return columns.length > 0 ? new InertialPassages(columns, gas, edges) : null;
}

/**
 * Outlet and tail pipe as one opening [m^2]:
 *
 *   1 / CdA^2 = 1 / (Cd A)_outlet^2 + (f l / d) / A_pipe^2      f: Darcy's friction factor [-], l, d: length and bore [m]
 *
 * The outlet's coefficient holds what is lost where the gas comes to rest in the air; friction adds to it.
 *
 * Valid: low Mach number in the pipe, fully developed friction. Source: Darcy-Weisbach; White, Fluid Mechanics, 2011, ch. 6.
 */
export function outletWithPipe({ outletArea, outletDischarge, pipe }: Collector): DirectionalCoefficient {
  const effective = (coefficient: number): number => {
    const outlet = coefficient * outletArea;
    if (!pipe) return outlet;
    const bore = Math.sqrt((4 * pipe.area) / Math.PI);
    return 1 / Math.sqrt(1 / outlet ** 2 + (pipe.friction * pipe.length) / bore / pipe.area ** 2);
  };
  return { forward: effective(outletDischarge.forward), backward: effective(outletDischarge.backward) };
}
