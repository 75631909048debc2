import type { Dimensions } from './fit/dimensions.ts';
import type { KnockLaw } from './combustion/knock.ts';
import type { DischargeCoefficients } from './exchange/discharge-table.ts';

import type { Fins } from './heat-transfer/fins.ts';

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

export interface Crankcase {
  /** Whether it is part of the plenum; else it is vented to the air. */
  readonly isPlenum: boolean;
  /** Free volume with every piston half way down its stroke [m^3]. */
  readonly volume: number;
  /** To the air, both ways; unused where it is the plenum. */
  readonly breather: { readonly area: number; readonly dischargeCoefficient: number };
  /** Past the rings of one piston, from cylinder to crankcase and back. */
  readonly blowBy: { readonly area: number; readonly dischargeCoefficient: number };
  readonly wall: WallPatch;
}

export interface CrankTrain {
  /** Half the master piston's stroke [m]. */
  readonly crankRadius: number;
  readonly masterRodLength: number;
  /** Common radius of the knuckle pins about the crank pin; 0 = plain rods on one pin [m]. */
  readonly knuckleRadius: number;
  readonly rows: readonly Row[];
}

export interface Row {
  /** Angle of the row's crank throw, positive with the rotation [rad]. */
  readonly throwAngle: number;
  /** Angle of the row's housing, positive with the rotation [rad]. */
  readonly staggerAngle: number;
  /** Index in `cylinders` of the one that carries the master rod. */
  readonly master: number;
  readonly cylinders: readonly RowCylinder[];
}

export interface RowCylinder {
  /** Axis angle psi in the row's frame, positive with the rotation [rad]. */
  readonly axisAngle: number;
  /** Angle gamma of the knuckle pin from the master rod's axis; unused for the master [rad]. */
  readonly knuckleAngle: number;
  /** Radius of this rod's own knuckle pin, null for the common one; unused for the master [m]. */
  readonly knuckleRadius: number | null;
  /** Length of the articulated rod; unused for the master [m]. */
  readonly rodLength: number;
  /** Barrel raised (+) or lowered from the common height [m]. */
  readonly barrelOffset: number;
  /** Volume put into (+) or taken out of (-) this cylinder's head [m^3]. */
  readonly headVolume: number;
  /** Top edge of the exhaust windows moved away from (+) or towards the deck [m]. */
  readonly exhaustTrim: number;
  readonly transferTrim: number;
  /** Spark before this cylinder's own top dead centre [rad]. */
  readonly sparkAdvance: number;
  /** Index of the collector it exhausts into. */
  readonly collector: number;
}

export interface CylinderDimensions {
  readonly bore: number;
  /** Of the master cylinder, from the full stroke or from the trapped volume at exhaust closing. */
  readonly compressionRatio: number;
  readonly compressionRatioFrom: 'full stroke' | 'exhaust closing';
  /** Crown edge below the deck at the master cylinder's top dead centre, no barrel offset [m]. */
  readonly deckClearance: number;
}

export interface Windows {
  readonly exhaust: readonly WindowGroup[];
  readonly transfer: readonly WindowGroup[];
  /** Where a table is given: its values wide open, without a pressure difference. */
  readonly exhaustDischarge: DirectionalCoefficient;
  readonly transferDischarge: DirectionalCoefficient;
  /** Used instead, where not null. */
  readonly exhaustTable: DischargeCoefficients | null;
  readonly transferTable: DischargeCoefficients | null;
}

export interface DirectionalCoefficient {
  readonly forward: number;
  readonly backward: number;
}

/** Equal windows of one kind; several groups of one kind make main, boost and auxiliary windows. */
export interface WindowGroup {
  readonly count: number;
  /** Width of one window, as `widthAlong` says, over bridges [m]. */
  readonly width: number;
  readonly widthAlong: 'chord' | 'bore circumference';
  /** Total width of the bridges within one window [m]. */
  readonly bridgeWidth: number;
  /** Top edge: depth below the deck [m], or the master cylinder's crank angle at opening [rad]. */
  readonly top:
    | { readonly kind: 'depth'; readonly depth: number }
    | { readonly kind: 'angle'; readonly opensAfterTdc: number };
  /** Depth of the floor below the deck; null = flush with the crown at the master's bottom dead centre [m]. */
  readonly floorDepth: number | null;
  readonly cornerRadius: number;
  /** Angle of the passage axis from the window's normal, in plan and in elevation [rad]. */
  readonly planAngle: number;
  readonly elevationAngle: number;
}

export interface Ambient {
  readonly pressure: number;
  readonly temperature: number;
  /** Relative, 0 to 1 [-]. */
  readonly humidity: number;
}

/** A wall that holds a given temperature and exchanges heat with the gas beside it. */
export interface WallPatch {
  readonly area: number;
  readonly temperature: number;
  /** Hydraulic diameter for the Nusselt number [m]. */
  readonly hydraulicDiameter: number;
  /** Multiplier on the smooth-tube Nusselt number [-]. */
  readonly enhancement: number;
}

export interface Intake {
  readonly throttle: {
    readonly kind: 'butterfly' | 'slide';
    readonly bore: number;
    /** Shaft diameter over bore; butterfly only. */
    readonly shaftRatio: number;
    /** Plate angle at the closed stop; butterfly only [rad]. */
    readonly closedAngle: number;
    /** Share of the bore area that stays open when closed [-]. */
    readonly leakShare: number;
    readonly dischargeCoefficient: number;
  };
  /** Fixed restrictor ahead of all else, and fixed venturi ahead of the throttle; null for none. */
  readonly restrictor: Throat | null;
  readonly venturi: Throat | null;
  /** Flame arrester behind the throttle: pressure loss is K rho w^2 / 2, w over the whole of its area [m^2]; or null. */
  readonly arrester: { readonly area: number; readonly lossFactor: number } | null;
  /** Gas between throttle and blower. */
  readonly boxVolume: number;
  readonly boxWall: WallPatch;
}

/** A fixed round throat in the intake. */
export interface Throat {
  readonly bore: number;
  readonly dischargeCoefficient: number;
  /** Share of the pressure drop to the throat that its diffuser wins back [-]. */
  readonly recovered: number;
}

export interface GearStage {
  readonly driverTeeth: number;
  readonly drivenTeeth: number;
  readonly efficiency: number;
}

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

export interface Plenum {
  readonly volume: number;
  readonly wall: WallPatch;
  /** Relief valve to ambient, or null. Opens linearly from cracking to full-open pressure difference. */
  readonly relief: {
    readonly crackingPressure: number;
    readonly fullOpenPressure: number;
    readonly area: number;
    readonly dischargeCoefficient: number;
  } | null;
}

/** One transfer passage for each cylinder. */
export interface Passages {
  readonly volume: number;
  /** Area where the passage leaves the plenum [m^2]. */
  readonly entryArea: number;
  readonly entryDischarge: DirectionalCoefficient;
  /** Of the column of gas in one passage, whose inertia is then reckoned with; null: flow follows pressure at once [m]. */
  readonly length: number | null;
  readonly wall: WallPatch;
}

export interface Collector {
  readonly volume: number;
  readonly outletArea: number;
  readonly outletDischarge: DirectionalCoefficient;
  /** Behind the outlet, with the inertia of its gas; friction is Darcy's factor [m], [m^2], [-]. Null for none. */
  readonly pipe: { readonly length: number; readonly area: number; readonly friction: number } | null;
  readonly wall: WallPatch;
}
export type Collectors = readonly Collector[];

export interface Charge {
  /** Key of a fuel in src/sim/gas/fuels.ts. */
  readonly fuel: string;
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

export interface Scavenging {
  readonly law:
    | { readonly kind: 'perfect mixing' }
    | { readonly kind: 'perfect displacement' }
    /** Displacement until the cylinder holds `displacedShare` of fresh charge, then mixing. */
    | { readonly kind: 'displacement then mixing'; readonly displacedShare: number }
    /** Purity of what leaves, at equally weighted purities of what is inside; both from 0 to 1, rising. */
    | { readonly kind: 'table'; readonly inside: readonly number[]; readonly leaving: readonly number[] };
  /** Share of the transfer inflow that passes straight to the exhaust while both windows flow [-]. */
  readonly shortCircuitShare: number;
  /** Width over which a jump of the law is spread, in purity inside [-]. */
  readonly smoothing: number;
}

export interface Combustion {
  readonly enabled: boolean;
  readonly wiebeA: number;
  readonly wiebeM: number;
  /** Ignition delay and burn duration at the reference state [rad]. */
  readonly delay: number;
  readonly duration: number;
  /** Speed at which delay and duration are stated [rad/s], and the exponent of the speed. */
  readonly referenceSpeed: number;
  readonly speedExponent: number;
  /** Residual mass fraction, unburned temperature and pressure at which duration is stated. */
  readonly referenceResidual: number;
  readonly referenceTemperature: number;
  readonly referencePressure: number;
  /** duration ~ (laminar speed / reference laminar speed)^-exponent. */
  readonly flameSpeedExponent: number;
  /** Share of the fuel that takes part at low residual [-]. */
  readonly completeness: number;
  /** Residual mass fraction from which a misfire is flagged, and width over which burning fades around it. */
  readonly misfireResidual: number;
  /** Air over fuel over stoichiometric above which a charge does not burn, turn by turn [-]. */
  readonly leanLimit: number;
  readonly misfireWidth: number;
}

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

export interface Friction {
  /** What the running gear costs: the four terms below, or Blair's 105 S N of rolling bearings. */
  readonly law: 'four terms' | 'stroke times speed';
  /** Of that, what windage, and what bearings take; rings and pistons the rest [-]. */
  readonly bearingShare: number;
  readonly windageShare: number;
  /** Torque at the crank of oil pump, and of starter or generator [N m]. */
  readonly oilPumpTorque: number;
  readonly starterTorque: number;
  /** FMEP = a + b p_max + c c_m + d N^2: [Pa], [-], [Pa s/m], [Pa s^2/rad^2]. */
  readonly constant: number;
  readonly peakPressureFactor: number;
  readonly pistonSpeedFactor: number;
  readonly speedSquaredFactor: number;
  /** Efficiency of the output gears, crank to propeller [-]. */
  readonly outputGearEfficiency: number;
}

/** What moves, as mass points; rods as two of them. The cycle knows nothing of it. */
export interface Masses {
  /** With pin and rings [kg]. */
  readonly piston: number;
  /** A plain or articulated rod [kg], and its share at the gudgeon pin [-]. */
  readonly rod: number;
  readonly rodUpperShare: number;
  /** With its flange [kg]; centre of mass from the crank pin [m]. Unused where all rods are plain. */
  readonly masterRod: number;
  readonly masterRodCentre: number;
  /** Of a crank throw without counterweight, as a mass at the crank pin [kg]. */
  readonly throw: number;
  /** Of what turns with a throw once a turn, what counterweights balance [-]. */
  readonly balancedShare: number;
  /** Of neighbouring rows along the crank [m]. */
  readonly rowSpacing: number;
}

/** What the crank drives beside the blowers. */
export interface Load {
  /** Of crank and flywheel, and of the load about its own axis [kg m^2]. */
  readonly flywheelInertia: number;
  readonly inertia: number;
  /** Turns of the crank for one of the load; 1 is direct [-]. */
  readonly gearRatio: number;
  /** Of the output gear on the crank, and of the output shaft [m]. */
  readonly gearPitchDiameter: number;
  readonly shaftDiameter: number;
  /** On a torque that is there at once [-]. */
  readonly shockFactor: number;
}

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
