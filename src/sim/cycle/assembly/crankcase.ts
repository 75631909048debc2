import type { Crankcase } from '../../engine.ts';
import { undersideSwing } from '../../geometry/underside-volume.ts';
import { AIR_INDEX } from '../../gas/mixture.ts';
import { BlowBy } from '../flows/blow-by.ts';
import { Orifices } from '../flows/orifices.ts';
import type { Parts } from './flow-elements.ts';

/** Smoothing of the flow past the rings [Pa]: far below what drives it, some bars. */
const BLOW_BY_SMOOTHING = 1000;
/** Flow that a breather is there for besides what the pistons displace: blow-by, as a share of the design flow. Typical. */
const BLOW_BY_SHARE = 0.01;

/** Gas past the rings into the crankcase; null where there is none. */
export function blowByOf({ model, gas, edges }: Parts): BlowBy | null {
  const { crankcase, cylinderHeat } = model.engine;
  if (!crankcase) return null;
  const { area, dischargeCoefficient } = crankcase.blowBy;
  const { blowBys } = model.network.through;
  const CdA = area * dischargeCoefficient;
  if (CdA === 0) return null;
  return new BlowBy(blowBys, CdA, BLOW_BY_SMOOTHING, cylinderHeat.linerTemperature, gas, edges);
}

/** The breather of a crankcase that is vented. */
export function breatherOf({ model, point, gas, edges, design }: Parts, { breather }: Crankcase): Orifices {
  const { ambient } = model.engine;
  const edge = model.network.through.breather;
  const CdA = breather.dischargeCoefficient * breather.area;
  if (edge < 0 || CdA === 0) return new Orifices([], gas, edges);
  const { least, greatest } = undersideSwing(model.geometry);
  const density = ambient.pressure / (gas.set.gasConstants[AIR_INDEX] * ambient.temperature);
  const pumped = 0.5 * density * point.speed * (greatest - least);
  const smoothing = design.smoothing(CdA, Math.max(pumped, BLOW_BY_SHARE * design.total));
  edges.turning[edge] = design.turning(smoothing);
  return new Orifices([{ edge, forward: CdA, backward: CdA, smoothing }], gas, edges);
}
