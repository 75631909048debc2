export interface Charge {
  /** Key of a fuel in src/sim/gas/fuels.ts. */
  readonly fuel: string;
  /** A second fuel, of the same keys, and its share of the volume of the two [-]; null for none. */
  readonly blend: { readonly fuel: string; readonly share: number } | null;
  /** Air/fuel ratio over stoichiometric [-]. */
  readonly lambda: number;
  /** Oil in the fuel, share by volume [-]. */
  readonly oilShare: number;
  /** Where fuel joins the air: at the throttle, at the mouth of each passage, or in the cylinder after its windows have shut. */
  readonly feed: 'carburettor' | 'passages' | 'cylinders';
  /** Of a carburettor: share of the fuel that evaporates in the tract from the heat of the air itself, before saturation limits it [-]. */
  readonly evaporatedShare: number;
  /** Of a carburettor: whether the rest goes on as liquid, or the walls of the tract evaporate it at once. */
  readonly liquidGoesOn: boolean;
  /** Sauter mean diameter of the drops that are carried or injected [m]. */
  readonly dropDiameter: number;
  /** Into cylinders: crank angle from the shutting of the last window to the beginning, and over which it lasts [rad]. */
  readonly injection: { readonly delay: number; readonly duration: number };
}
