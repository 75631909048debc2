/**
 * Sizes that decide whether the engine goes together. The cycle knows nothing of them. All in metres.
 */
export interface Dimensions {
  readonly barrel: BarrelDimensions;
  readonly piston: PistonDimensions;
  readonly rods: RodDimensions;
  readonly space: Space;
  readonly tolerances: Tolerances;
}

export interface BarrelDimensions {
  /** Underside of the flange above the crank axis, with no barrel offset. */
  readonly base: number;
  /** Flange across the row, and along the crank. */
  readonly flange: number;
  readonly flangeAlong: number;
  /** Outside diameter of the mouth that reaches into the case, and how far it does. */
  readonly mouth: number;
  readonly mouthDepth: number;
  readonly fins: number;
  /** Lowest fin below the deck. */
  readonly finsFrom: number;
  /** Highest point of the head above the deck, plug and cap included. */
  readonly head: number;
  /** Squish band of the head above (+) or below (-) the deck. */
  readonly headGap: number;
}

export interface PistonDimensions {
  /** Crown edge above the gudgeon pin. */
  readonly pinToCrown: number;
  /** Crown edge to lower edge of the skirt. */
  readonly length: number;
  readonly skirtWall: number;
  /** From the crown down to the hollow under it. */
  readonly crownThickness: number;
}

export interface RodDimensions {
  /** Outside diameter of the big end: the flange with the knuckle pins, or the eye of a plain rod. */
  readonly bigEnd: number;
  /** Hole in it, for the bearing on the crank pin. */
  readonly bigEndBore: number;
  /** What one crank pin carries, along the crank: all rods of a row. */
  readonly bigEndWidth: number;
  /** Webs and bearing between two neighbouring crank pins, along the crank. */
  readonly web: number;
  readonly knucklePin: number;
  readonly knuckleEye: number;
  readonly smallEnd: number;
  /** Width of the shank across its length: where it leaves the lower pin, and at the gudgeon pin. */
  readonly shankLower: number;
  readonly shankUpper: number;
  readonly masterShankLower: number;
  readonly masterShankUpper: number;
}

export interface Space {
  /** Diameter and length there is room for; null for any. */
  readonly diameter: number | null;
  readonly length: number | null;
  /** What stands before and behind the rows, together. */
  readonly ends: number;
}

/** Each is the departure either way: +- of it. */
export interface Tolerances {
  /** Centre distances: throw, rods, place of the knuckle pins. */
  readonly centres: number;
  /** Heights: barrel base with its gasket, deck, window edges, squish band. */
  readonly heights: number;
  /** Outlines of the castings: flange, mouth, fins. */
  readonly castings: number;
  /** Outlines of rods, eyes, skirts and crowns. */
  readonly outlines: number;
  /** Radial play, of all bearings between crank and piston together. */
  readonly play: number;
  /** Ends of rods, pins and rows along the crank. */
  readonly along: number;
}
