export interface Blower {
  readonly kind: 'roots' | 'internal compression' | 'centrifugal';
  readonly count: number;
  /** Theoretical volume of one blower per turn of its rotors; of a centrifugal one what a turn carries at best flow [m^3]. */
  readonly displacement: number;
  /** Volume of a pocket when it closes over that when it opens to the plenum; 1 without internal compression [-]. */
  readonly volumeRatio: number;
  /** Null but in centrifugal blowers. */
  readonly impeller: Impeller | null;
  /** Stages from crank to rotor; rotor speed = crank speed * product(driver / driven). */
  readonly gears: readonly GearStage[];
  readonly lobes: number;
  /** Helix twist of a rotor over its length [rad]; 0 = straight. */
  readonly helixAngle: number;
  /** Amplitude of the delivery ripple of straight rotors, share of the mean [-]. */
  readonly rippleDepth: number;
  /** Where the first blower's rotors stand at crank angle 0, and how much further each next one's; 0 = lobes touch at the pitch point [rad]. */
  readonly phase: number;
  readonly phaseStep: number;
  /** Clearance area of one blower, discharge side to inlet side [m^2]. */
  readonly clearanceArea: number;
  readonly clearanceDischarge: number;
  /** How gas slips back through the gaps; null: all of `clearanceArea` as one orifice. */
  readonly slip: SlipByPath | null;
  /** Gas that the mesh takes back from the plenum, share of the displacement [-]. */
  readonly carriedBackShare: number;
  /** Of rotor or impeller, for tip speed [m]. */
  readonly tipDiameter: number;
  /** Of bearings and timing gears on the fluid work [-]. */
  readonly mechanicalEfficiency: number;
  /** Drag torque at each rotor-pair shaft: constant, and at the speed limit what goes with speed and with its square [N m]. */
  readonly dragTorque: number;
  readonly dragWithSpeed: number;
  readonly dragWithSquare: number;
  /** Share of the fluid work that the casing gives away [-]. */
  readonly casingHeatShare: number;
  readonly maxTipSpeed: number;
  /** Of the first driving wheel on the crank, and of a blower's shaft at rotor speed [m]. */
  readonly gearPitchDiameter: number;
  readonly shaftDiameter: number;
  /** Rotor speed limit [rad/s]. */
  readonly maxSpeed: number;
  readonly rotors: Rotors;
}

/** A second blower, between the first stage and the plenum. */
export interface SecondStage {
  readonly blower: Blower;
  /** Of gas between the stages, before the cooler where there is one [m^3]. */
  readonly volume: number;
  readonly cooler: Cooler | null;
}

/** See cycle/flows/cooler.ts. */
export interface Cooler {
  readonly effectiveness: number;
  readonly coolantTemperature: number;
  /** Of the bore that the pressure loss K rho w^2 / 2 is counted with [m^2]. */
  readonly area: number;
  readonly lossFactor: number;
  /** Of gas in it and behind it [m^3]. */
  readonly volume: number;
}

export interface GearStage {
  readonly driverTeeth: number;
  readonly drivenTeeth: number;
  readonly efficiency: number;
}

/** Slip by path through the gaps of `rotors`; see cycle/flows/path-slip.ts. */
export interface SlipByPath {
  /** Length of the thin part of each gap along the flow [m]. */
  readonly lands: { readonly tip: number; readonly mesh: number; readonly end: number };
  /** Share of each gap that oil or liquid fuel fills [-]. */
  readonly filmShare: number;
  /** Whether the gaps are those at 20 degrees Celsius and close as the blower warms. */
  readonly closeWithHeat: boolean;
}

/** The wheel of a centrifugal blower and what is known of its map; see blower/centrifugal/speed-line.ts. */
export interface Impeller {
  /** At the exit. */
  readonly blades: number;
  /** Of the blades at the exit, back from radial [rad]. */
  readonly backsweep: number;
  /** Of the passages at the exit, along the shaft [m]. */
  readonly exitWidth: number;
  /** Between the blades where they are nearest to each other, at the inlet [m^2]. */
  readonly throatArea: number;
  /** Isentropic, at best flow; at half of it over that [-]. */
  readonly efficiency: number;
  readonly efficiencyAtHalf: number;
  /** Over best flow [-]. */
  readonly flowWithoutHead: number;
  /** Work over that of the exit velocity triangle: disc friction and recirculation [-]. */
  readonly workFactor: number;
}

/** What the rotors are cut by; the cycle knows of it only through `Blower`'s displacement, ripple and clearance. */
export interface Rotors {
  readonly profile: 'cycloidal' | 'circular arc';
  readonly length: number;
  /** Of the two axes [m]. */
  readonly centreDistance: number;
  /** Tip to casing, rotor to rotor, rotor end to end plate; warm and running [m]. */
  readonly gaps: { readonly tip: number; readonly mesh: number; readonly end: number };
  /** Hole for the shaft, 0 for none [m]. */
  readonly bore: number;
  readonly material: 'aluminium' | 'steel' | 'cast iron';
  readonly casingMaterial: 'aluminium' | 'steel' | 'cast iron';
}
