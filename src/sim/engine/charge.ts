export interface Charge {
  /** Key of a fuel in src/sim/gas/fuels.ts. */
  readonly fuel: string;
  /** A second fuel, of the same keys, and its share of the volume of the two [-]; null for none. */
  readonly blend: { readonly fuel: string; readonly share: number } | null;
  /** Air/fuel ratio over stoichiometric [-]; of a table or a jet, only where no speed or no air flow is known yet. */
  readonly lambda: number;
  /** λ over crank speed, rising [rad/s]: linear between, held beyond; null where it is the same at every speed. */
  readonly lambdaOverSpeed: {
    readonly speeds: readonly number[];
    readonly lambdas: readonly number[];
  } | null;
  /** Of a carburettor: main jet that sets λ by the air drawn; null where λ is given. */
  readonly jet: Jet | null;
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

/** A plain main jet: no air bleed, no needle. */
export interface Jet {
  readonly bore: number;
  readonly dischargeCoefficient: number;
  /** By which the nozzle's mouth stands above the fuel in the bowl [m]. */
  readonly lift: number;
}
