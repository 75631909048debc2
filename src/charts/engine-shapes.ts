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
  /** Distances from the crank axis along the cylinder's own [m]. */
  readonly deck: number;
  readonly exhaust: readonly { readonly top: number; readonly floor: number }[];
  readonly transfer: readonly { readonly top: number; readonly floor: number }[];
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
  readonly cylinders: readonly PosedCylinder[];
}
