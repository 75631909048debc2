export interface Wanted {
  readonly deliveryRatio: number;
  readonly crankingSpeed: number;
  /** Of the starter at the crank, null where it is not known [N m]; friction of a cold engine over that of a warm one [-]. */
  readonly starterTorque: number | null;
  readonly coldFriction: number;
  readonly minSpeed: number;
  readonly maxSpeed: number;
  /** The speed at which the design is shown first [rad/s]. */
  readonly speed: number;
}
