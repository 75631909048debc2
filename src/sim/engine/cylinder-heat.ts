import type { Fins } from '../heat-transfer/fins.ts';

export interface CylinderHeat {
  /** Law of the heat transfer coefficient between gas and walls. */
  readonly law: 'Annand' | 'Woschni' | 'Hohenberg';
  /** Annand: multiplier a, exponent b, radiation constant c [W/(m^2 K^4)]. */
  readonly annandA: number;
  readonly annandB: number;
  readonly annandC: number;
  /** Multiplier on Woschni's and Hohenberg's coefficient [-]. */
  readonly filmFactor: number;
  /** Woschni: C1 while gas is exchanged and while shut [-], C2 from the spark on [m/(s K)], exponent of the motored pressure [-]. */
  readonly woschni: {
    readonly scavenging: number;
    readonly closed: number;
    readonly burning: number;
    readonly motoredExponent: number;
  };
  /** Crown area over bore area, head area over bore area [-]. */
  readonly crownAreaRatio: number;
  readonly headAreaRatio: number;
  readonly crownTemperature: number;
  readonly headTemperature: number;
  readonly linerTemperature: number;
  /** Whether the wall temperatures are worked out with the cycle; the given ones are then where the search begins. */
  readonly solvesWalls: boolean;
  readonly cooling: Cooling;
}

/** What leads heat away from the walls of one cylinder. */
export interface Cooling {
  /** Of the free air before the first row [m/s]; share of it left behind a row, share of a row's warmed air that meets the next [-]. */
  readonly airSpeed: number;
  readonly wakeSpeedShare: number;
  readonly wakeWarming: number;
  /** Multiplier on the published coefficient of fins [-]; coefficient in still air [W/(m^2 K)]. */
  readonly finFactor: number;
  readonly stillAirCoefficient: number;
  readonly crankcaseTemperature: number;
  /** Ceramic layer on the crown; thickness 0 for none. */
  readonly coating: { readonly thickness: number; readonly conductivity: number };
  readonly piston: {
    readonly conductivity: number;
    readonly crownThickness: number;
    /** Of all rings together, in contact with the liner [m]; their coefficient, groove and film included [W/(m^2 K)]. */
    readonly ringHeight: number;
    readonly ringCoefficient: number;
    readonly skirtLength: number;
    readonly skirtThickness: number;
    /** Skirt to liner across film and gap; underside to the crankcase's gas [W/(m^2 K)]. */
    readonly skirtCoefficient: number;
    readonly undersideCoefficient: number;
    readonly mass: number;
  };
  readonly barrel: {
    /** Liner included [m]. */
    readonly wall: number;
    /** Over which it carries fins [m]. */
    readonly length: number;
    readonly fins: Fins;
    readonly mass: number;
  };
  readonly head: { readonly rootArea: number; readonly fins: Fins; readonly mass: number };
  /** Across the joint of head and barrel [W/(m^2 K)]. */
  readonly jointCoefficient: number;
  /** Of all the metal [J/(kg K)]. */
  readonly specificHeat: number;
  /** Mean temperatures not to be passed [K]. */
  readonly limits: { readonly crown: number; readonly head: number; readonly liner: number };
}
