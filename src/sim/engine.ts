import type { KnockLaw } from './combustion/knock.ts';
import type { Ambient } from './engine/ambient.ts';
import type { Blower, SecondStage } from './engine/blower.ts';
import type { Charge } from './engine/charge.ts';
import type { Combustion } from './engine/combustion.ts';
import type { CrankTrain } from './engine/crank-train.ts';
import type { CylinderDimensions } from './engine/cylinder-dimensions.ts';
import type { CylinderHeat } from './engine/cylinder-heat.ts';
import type { Friction } from './engine/friction.ts';
import type { Intake } from './engine/intake.ts';
import type { Load, Masses } from './engine/running-gear.ts';
import type { Scavenging } from './engine/scavenging.ts';
import type { Collectors, Crankcase, Passages, Plenum } from './engine/spaces.ts';
import type { Wanted } from './engine/wanted.ts';
import type { Windows } from './engine/windows.ts';
import type { Dimensions } from './fit/dimensions.ts';

export type * from './engine/ambient.ts';
export type * from './engine/blower.ts';
export type * from './engine/charge.ts';
export type * from './engine/combustion.ts';
export type * from './engine/crank-train.ts';
export type * from './engine/cylinder-dimensions.ts';
export type * from './engine/cylinder-heat.ts';
export type * from './engine/directional-coefficient.ts';
export type * from './engine/friction.ts';
export type * from './engine/intake.ts';
export type * from './engine/running-gear.ts';
export type * from './engine/scavenging.ts';
export type * from './engine/spaces.ts';
export type * from './engine/wall-patch.ts';
export type * from './engine/wanted.ts';
export type * from './engine/windows.ts';

/**
 * The engine as the model sees it: complete, in base SI units (m, kg, s, K, Pa, rad, J), every default filled in.
 * A design file (src/design) becomes one of these at the edge; nothing below reads a design file.
 */
export interface Engine {
  readonly name: string;
  readonly train: CrankTrain;
  readonly cylinder: CylinderDimensions;
  /** Crankcase as a volume of the network; null leaves it out: constant pressure under the pistons. */
  readonly crankcase: Crankcase | null;
  readonly windows: Windows;
  readonly ambient: Ambient;
  readonly intake: Intake;
  readonly blower: Blower;
  /** Null where one stage does it all. */
  readonly secondStage: SecondStage | null;
  readonly plenum: Plenum;
  readonly passages: Passages;
  readonly collectors: Collectors;
  readonly charge: Charge;
  readonly scavenging: Scavenging;
  readonly combustion: Combustion;
  readonly knock: KnockLaw;
  readonly cylinderHeat: CylinderHeat;
  readonly friction: Friction;
  readonly masses: Masses;
  readonly load: Load;
  readonly dimensions: Dimensions;
  readonly wanted: Wanted;
}
