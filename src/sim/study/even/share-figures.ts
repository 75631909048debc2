import type { Engine } from '../../engine.ts';
import { withinTurn } from '../../geometry/angles.ts';
import type { CylinderGeometry, EngineGeometry } from '../../geometry/cylinder-geometry.ts';
import { timeAreas } from '../../geometry/time-area.ts';
import type { CylinderFigures, SolvedPoint } from '../../results/point-result.ts';

/** What is compared from cylinder to cylinder. */
export const SHARE_FIGURES = [
  'deadCentreShift',
  'downStroke',
  'stroke',
  'trappedCompression',
  'exhaustOpening',
  'transferOpening',
  'blowdownTimeArea',
  'scavengeTimeArea',
  'exhaustTimeArea',
  'deliveryRatio',
  'trappedMass',
  'purity',
  'imep',
  'peakPressure',
  'exhaustTemperature',
  'wallHeat',
] as const;
export type ShareFigure = (typeof SHARE_FIGURES)[number];

/** Of one cylinder. */
export type CylinderShare = {
  /** Counted from 1. */
  readonly row: number;
  readonly number: number;
  /** True dead centres [rad]. */
  readonly tdc: number;
  readonly bdc: number;
} & Readonly<Record<ShareFigure, number>>;

/** Those that follow from the shape alone; the others need a cycle. */
export type ShapeFigure = Exclude<ShareFigure, CycleFigure>;
type CycleFigure =
  'deliveryRatio' | 'trappedMass' | 'purity' | 'imep' | 'peakPressure' | 'exhaustTemperature' | 'wallHeat';

/**
 * What follows from the shape of one cylinder.
 *
 *   deadCentreShift = true top dead centre - (axis + stagger - throw), both less those of cylinder 1 of row A, within half a turn
 *   downStroke      = bottom less top dead centre
 *
 * Angles [rad], stroke [m], time-areas [s m^2/m^3].
 */
export function shapeFigures(
  engine: Pick<Engine, 'train'>,
  cylinder: CylinderGeometry,
  speed: number,
): Readonly<Record<ShapeFigure, number>> {
  const { blowdown, scavenge, exhaust } = timeAreas(cylinder, speed);
  const shift = withinTurn(cylinder.tdc - placeOf(engine, cylinder) + Math.PI) - Math.PI;
  return {
    deadCentreShift: shift,
    downStroke: withinTurn(cylinder.bdc - cylinder.tdc),
    stroke: cylinder.stroke,
    trappedCompression: cylinder.trappedCompressionRatio,
    exhaustOpening: cylinder.exhaust.opensAfterOwnTdc,
    transferOpening: cylinder.transfer.opensAfterOwnTdc,
    blowdownTimeArea: blowdown,
    scavengeTimeArea: scavenge,
    exhaustTimeArea: exhaust,
  };
}

/** Where plain rods would have the top dead centre [rad]. */
function placeOf({ train }: Pick<Engine, 'train'>, { rowIndex, cylinderIndex }: CylinderGeometry): number {
  const place = (row: number, cylinder: number) => {
    const { cylinders, staggerAngle, throwAngle } = train.rows[row]!;
    return cylinders[cylinder]!.axisAngle + staggerAngle - throwAngle;
  };
  return place(rowIndex, cylinderIndex) - place(0, 0);
}

/** Everything that is compared, of every cylinder of a solved point. */
export function shareFigures(
  engine: Pick<Engine, 'train'>,
  geometry: EngineGeometry,
  { speed, cylinders }: Pick<SolvedPoint, 'speed' | 'cylinders'>,
): readonly CylinderShare[] {
  return geometry.cylinders.map((shape, j) => ({
    row: shape.row,
    number: shape.number,
    tdc: shape.tdc,
    bdc: shape.bdc,
    ...shapeFigures(engine, shape, speed),
    ...cycleFigures(cylinders[j]!),
  }));
}

function cycleFigures(figures: CylinderFigures): Readonly<Record<CycleFigure, number>> {
  const { deliveryRatio, trappedMass, purity, imep, peakPressure, exhaustTemperature } = figures;
  const { crown, head, liner } = figures.wallHeat;
  return {
    deliveryRatio,
    trappedMass,
    purity,
    imep,
    peakPressure,
    exhaustTemperature,
    wallHeat: crown + head + liner,
  };
}
