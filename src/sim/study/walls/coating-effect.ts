import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import type { Outcome } from '../../outcome.ts';
import { success } from '../../outcome.ts';
import type { SolvedPoint } from '../../results/point-result.ts';
import { mm } from '../../units.ts';
import type { Study } from '../study-step.ts';
import { coolingChanged, solvedWith } from './solved-with.ts';

/** Thickness tried where the design has no coating [m]. */
const USUAL_COATING = 0.2 * mm;

export interface CoatingFigures {
  /** Of the hottest crown: metal, and face towards the gas [K]. */
  readonly crown: number;
  readonly crownSurface: number;
  /** Into all crowns [W]. */
  readonly crownHeat: number;
  readonly brakePower: number;
  /** Mean of the exhaust gas [K]. */
  readonly exhaustTemperature: number;
}

export interface CoatingEffect {
  readonly thickness: number;
  readonly without: CoatingFigures;
  readonly coated: CoatingFigures;
}

/** The same point with a bare crown and with the design's coating, or a usual one where it has none. */
export function* coatingEffect(model: Model, point: OperatingPoint): Study<Outcome<CoatingEffect>> {
  const { coating } = model.engine.cylinderHeat.cooling;
  const thickness = coating.thickness > 0 ? coating.thickness : USUAL_COATING;
  const having = (t: number) => coolingChanged(model.engine, { coating: { ...coating, thickness: t } });
  const bare = yield* solvedWith('bare crowns', having(0), point, null);
  if (!bare.ok) return bare;
  const coated = yield* solvedWith('coated crowns', having(thickness), point, bare.value.next);
  if (!coated.ok) return coated;
  return success({
    thickness,
    without: figures(bare.value.point),
    coated: figures(coated.value.point),
  });
}

function figures({ cylinders, engine }: SolvedPoint): CoatingFigures {
  const most = (key: 'crown' | 'crownSurface') =>
    Math.max(...cylinders.map(({ walls }) => walls?.[key] ?? NaN));
  return {
    crown: most('crown'),
    crownSurface: most('crownSurface'),
    crownHeat: cylinders.reduce((sum, { wallHeat }) => sum + wallHeat.crown, 0),
    brakePower: engine.brakePower,
    exhaustTemperature:
      cylinders.reduce((sum, { exhaustTemperature }) => sum + exhaustTemperature, 0) / cylinders.length,
  };
}
