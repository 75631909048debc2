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
  /** Where the flange stands on the case, and the end of the mouth in it. */
  readonly base: number;
  readonly mouth: number;
  readonly exhaust: readonly { readonly top: number; readonly floor: number }[];
  readonly transfer: readonly { readonly top: number; readonly floor: number }[];
}

/** What all barrels have alike [m]. */
export interface BarrelOutline {
  /** Outside diameter of the mouth, flange across the row, diameter over the fins. */
  readonly mouth: number;
  readonly flange: number;
  readonly fins: number;
  /** Lowest fin below the deck. */
  readonly finsFrom: number;
}

/** Radii of eyes and pins, widths of shanks at their lower and upper ends [m]. */
export interface RodOutline {
  readonly bigEnd: number;
  readonly knuckleEye: number;
  readonly knucklePin: number;
  readonly smallEnd: number;
  readonly shank: readonly [number, number];
  readonly masterShank: readonly [number, number];
}

export interface BlowerOutline {
  readonly tipRadius: number;
  /** Half the distance of the axes; 0 for one wheel. */
  readonly pitchRadius: number;
  /** Corners of one rotor about its own axis, a lobe along +x. */
  readonly rotor: readonly Place[];
  /** As it is to be read beside the drawing: how many, and their gears. */
  readonly label: string;
}

export interface EngineOutline {
  readonly bore: number;
  readonly barrel: BarrelOutline;
  readonly rods: RodOutline;
  readonly pistonLength: number;
  readonly pinRadius: number;
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
  /** Of every rotor of the blower that is drawn, its first lobe from +x, clockwise [rad]. */
  readonly rotorAngles: readonly number[];
  readonly cylinders: readonly PosedCylinder[];
}

/** Two places to point at: where parts are nearest, or what they share where they overlap. */
export interface FitMark {
  readonly a: Place;
  readonly b: Place;
  readonly collides: boolean;
  /** What is said beside it, line by line; empty for none. */
  readonly lines: readonly string[];
}
