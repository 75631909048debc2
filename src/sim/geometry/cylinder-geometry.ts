import type { PeriodicTable } from '../numerics/periodic-table.ts';
import type { PistonMotion } from './crank-train.ts';
import type { WindowProfile } from './window-profile.ts';

/** Everything the model needs to know of one cylinder's shape and timing. Crank angles are in [0, 2 pi). */
export interface CylinderGeometry {
  /** Place in the flat list, in the list of rows, and in its row; from 0. */
  readonly index: number;
  readonly rowIndex: number;
  readonly cylinderIndex: number;
  /** The same for people; from 1. */
  readonly row: number;
  readonly number: number;
  readonly isMaster: boolean;
  /** Crank angles of its own dead centres [rad]. */
  readonly tdc: number;
  readonly bdc: number;
  readonly sparkAngle: number;
  /** Crank angle at which the crank pin passes by its axis: top dead centre, if its rod were plain [rad]. */
  readonly pinPasses: number;
  readonly stroke: number;
  readonly sweptVolume: number;
  readonly clearanceVolume: number;
  /** (clearance + swept) / clearance; and the same from exhaust closing [-]. */
  readonly compressionRatio: number;
  readonly trappedCompressionRatio: number;
  /** Crown edge below the deck at its own top dead centre [m]. */
  readonly depthAtTdc: number;
  /** Distance of the crown below its own top dead centre, against crank angle: value [m], slope [m/rad]. */
  readonly travel: PeriodicTable;
  readonly exhaust: WindowProfile;
  readonly transfer: WindowProfile;
  /** Crank angles at which a window area has a kink: openings, closings, ends of corner radii, floors. Rising [rad]. */
  readonly kinks: readonly number[];
  /** The exact motion behind `travel`; its pin angle is crank angle + `pinOffset`. */
  readonly motion: PistonMotion;
  readonly pinOffset: number;
}

export interface EngineGeometry {
  /** Row by row. */
  readonly cylinders: readonly CylinderGeometry[];
  /** Of one cylinder [m^2]. */
  readonly boreArea: number;
  /** Of all cylinders [m^3]. */
  readonly sweptVolume: number;
}
