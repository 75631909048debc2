/** A front view in metres on the page: x to the right, y down, the crank axis at the origin. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

export interface CylinderOutline {
  readonly label: string;
  readonly row: number;
  /** Of the cylinder's axis, clockwise from the top [rad]. */
  readonly angle: number;
  /** Index of the collector it exhausts into. */
  readonly collector: number;
  /** Distances from the crank axis along the cylinder's own [m]. */
  readonly deck: number;
  readonly exhaust: readonly { readonly top: number; readonly floor: number }[];
  readonly transfer: readonly { readonly top: number; readonly floor: number }[];
}

export interface BlowerOutline {
  readonly tipRadius: number;
  /** Half the distance of the axes. */
  readonly pitchRadius: number;
  readonly lobes: number;
  /** One wheel instead of a pair of rotors; its axes' distance is then 0. */
  readonly wheel: boolean;
  /** Corners of one rotor about its own axis, a lobe along +x. */
  readonly rotor: readonly Place[];
  /** As it is to be read beside the drawing: how many, and their gears. */
  readonly label: string;
}

export interface EngineOutline {
  readonly bore: number;
  readonly pistonLength: number;
  readonly pinRadius: number;
  readonly crankRadius: number;
  readonly knuckleRadius: number;
  readonly crankcase: number;
  /** Of the outermost part [m]. */
  readonly reach: number;
  readonly blower: BlowerOutline;
  readonly cylinders: readonly CylinderOutline[];
}

export interface PosedCylinder {
  /** Crown edge, from the crank axis along the cylinder's own [m]. */
  readonly crown: number;
  readonly crankPin: Place;
  readonly knucklePin: Place;
  readonly gudgeonPin: Place;
  readonly isMaster: boolean;
}

export interface EnginePose {
  /** Since crank angle 0 [rad]. */
  readonly rotorsTurned: number;
  readonly cylinders: readonly PosedCylinder[];
}
