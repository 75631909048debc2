import type { ExhaustGas } from './exhaust-gas.ts';
import type { WheelPoint } from '../blower/centrifugal/wheel-point.ts';
import type { CylinderWallState } from '../cycle/walls/solved-walls.ts';
import type { FrictionParts } from '../friction/friction-parts.ts';

/**
 * What one operating point yields. Base SI units; per cylinder and per turn unless named otherwise.
 * Definitions and formulas: docs/conventions.md. Arrays are owned by the result and never reused.
 */
export interface SolvedPoint {
  readonly speed: number;
  readonly throttle: number;
  readonly converged: true;
  /** Figures of a period on the way to the periodic one: to be shown as such, never kept. */
  readonly preliminary: boolean;
  /** Turns of the crank in one period, and periods stepped to reach it. */
  readonly turnsPerPeriod: number;
  readonly cycles: number;
  readonly residuals: Residuals;
  readonly engine: EngineFigures;
  /** Of all stages: power, heating, rise of pressure; flow, slip, rotors and kind are those of the first. */
  readonly blower: BlowerFigures;
  /** Null without a second stage. */
  readonly stages: StageFigures | null;
  readonly plenum: GasFigures;
  /** Null without a valve. */
  readonly relief: ReliefFigures | null;
  /** Null without one. */
  readonly bypass: BypassFigures | null;
  readonly inletBox: GasFigures;
  readonly collectors: readonly GasFigures[];
  /** Null where the crankcase takes no part. */
  readonly crankcase: CrankcaseFigures | null;
  readonly cylinders: readonly CylinderFigures[];
  /** Things the reader must know: averaged phase, cautions, misfire. Words. */
  readonly notes: readonly Note[];
  readonly traces: Traces;
}

/** A point without an answer, and why, in words. It has no figures, so none can be shown by mistake. */
export interface UnsolvedPoint {
  readonly speed: number;
  readonly throttle: number;
  readonly converged: false;
  readonly reason: string;
  readonly turnsPerPeriod: number;
  readonly cycles: number;
  /** Largest relative change of any volume over the last whole period; null where there was none. */
  readonly change: number | null;
}

export type PointResult = SolvedPoint | UnsolvedPoint;

export interface Note {
  readonly kind: 'caution' | 'assumption' | 'misfire';
  readonly text: string;
}

/** Conservation defects over the last period as shares of throughput, and the largest relative change of any volume. */
export interface Residuals {
  readonly mass: number;
  readonly energy: number;
  readonly species: number;
  readonly change: number;
}

export interface EngineFigures {
  /** Of all cylinders, each by its own stroke [m^3]. */
  readonly sweptVolume: number;
  /** Air and fuel through the throttle [kg/s]. */
  readonly airFlow: number;
  readonly fuelFlow: number;
  /** Air over fuel over stoichiometric, of the mixture that the point ran on [-]. */
  readonly lambda: number;
  /** Net air through the transfer windows, fresh of trapped, and retained of delivered air: see docs/conventions.md [-]. */
  readonly deliveryRatio: number;
  readonly scavengingEfficiency: number;
  readonly trappingEfficiency: number;
  readonly chargingEfficiency: number;
  /** Mean effective pressures: indicated, friction, brake [Pa]. */
  readonly imep: number;
  readonly fmep: number;
  /** What `fmep` is the sum of [Pa]. */
  readonly frictionParts: FrictionParts;
  readonly bmep: number;
  /** At the crank, output gear losses taken off [N m]; power [W]. */
  readonly torque: number;
  readonly brakePower: number;
  /** Fuel over brake power [kg/J]; null where there is no brake power. */
  readonly bsfc: number | null;
  /** Effective octane number of the fuel, and what is left of it beyond the cylinder that needs most; null where nothing burns [-]. */
  readonly octane: number;
  readonly knockMargin: number | null;
  /** Into all cylinder walls [W]. */
  readonly wallHeat: number;
  /** Where the fuel's energy goes [W]. */
  readonly balance: EnergyBalance;
}

/** fuel = sum of the rest [W]; each term: energy-balance.ts. */
export interface EnergyBalance {
  readonly fuel: number;
  readonly brake: number;
  readonly friction: number;
  readonly blower: number;
  readonly cylinderWalls: number;
  readonly otherWalls: number;
  readonly exhaustSensible: number;
  readonly unburned: number;
}

export interface BlowerFigures {
  /** Theoretical displacement of all blowers per crank turn [m^3]. */
  readonly displacementPerTurn: number;
  /** [rad/s]; tip speed [m/s]. */
  readonly rotorSpeed: number;
  readonly tipSpeed: number;
  /** Net mass delivered to the plenum [kg/s]. */
  readonly massFlow: number;
  /** Flow back through the clearances over flow displaced [-]. */
  readonly slipFraction: number;
  /** At the crank, gear losses included [W]. */
  readonly shaftPower: number;
  /** Work on the gas [W]; isentropic work of what arrives over it, null where it does none [-]. */
  readonly fluidPower: number;
  readonly isentropicEfficiency: number | null;
  /** Of what is displaced, its work taken up [K]. */
  readonly outletTemperature: number;
  /** Time mean, plenum less inlet box [Pa]. */
  readonly pressureRise: number;
  /** Of blowers with internal compression: what they compress to, what is needed [-], and power beyond isentropic [W]. */
  readonly builtIn: {
    readonly pressureRatio: number;
    readonly neededRatio: number;
    readonly mismatchPower: number;
  } | null;
  /** Of centrifugal blowers. */
  readonly wheel: WheelPoint | null;
}

export interface StageFigures {
  /** Each by itself. */
  readonly first: BlowerFigures;
  readonly second: BlowerFigures;
  /** Behind the first stage, and before the second: the same without a cooler. */
  readonly interstage: GasFigures;
  readonly beforeSecond: GasFigures;
  /** Heat out of the gas [W], mean pressure lost [Pa]. */
  readonly cooler: { readonly heat: number; readonly pressureLoss: number } | null;
}

export interface ReliefFigures {
  /** Mean out of it [kg/s], and over what the blower delivers [-]. */
  readonly massFlow: number;
  readonly share: number;
  /** Over the whole lift, at points of the mesh [-]. */
  readonly leastLift: number;
  readonly greatestLift: number;
  /** How often it leaves its seat in a turn of the crank, mean of the period. */
  readonly openings: number;
}

export interface BypassFigures {
  /** Mean out of the plenum through it [kg/s], and over what the blower delivers [-]. */
  readonly massFlow: number;
  readonly share: number;
  /** What it carries above ambient temperature: back into the inlet box, or out [W]. */
  readonly heat: number;
}

export interface GasFigures {
  /** Time means; extremes at points of the mesh [Pa, K]. */
  readonly meanPressure: number;
  readonly minPressure: number;
  readonly maxPressure: number;
  readonly meanTemperature: number;
}

/** Of the crankcase, or of the plenum where the two are one. */
export interface CrankcaseFigures extends GasFigures {
  /** Greatest less least volume, at points of the mesh [m^3]. */
  readonly volumeSwing: number;
  /** What the pistons' undersides take from the crank [W]; negative where they give. */
  readonly pumpingPower: number;
  /** Net past all rings into it, and out of the breather [kg/s]. */
  readonly blowBy: number;
  readonly breathed: number;
  /** Air and fuel vapour in it, time mean of the traces by mass [-]. */
  readonly purity: number;
}

export interface CylinderFigures {
  /** Counted from 1. */
  readonly row: number;
  readonly number: number;
  /** When the last window has shut: all gas and its air [kg], share of air and fuel vapour [-]. */
  readonly trappedMass: number;
  readonly trappedAir: number;
  readonly purity: number;
  /** Of this cylinder by its own swept volume: see docs/conventions.md [-]. */
  readonly deliveryRatio: number;
  readonly trappingEfficiency: number;
  readonly chargingEfficiency: number;
  /** Work of a turn over own swept volume [Pa]. */
  readonly imep: number;
  /** Vertex of the parabola through the highest point of the mesh and its neighbours [Pa]. */
  readonly peakPressure: number;
  /** Crank angle after own top dead centre of the peak [rad]. */
  readonly peakPressureAngle: number;
  /** Mean of the gas; as `peakPressure` [K]. */
  readonly peakTemperature: number;
  /** When the last window has shut [Pa]. */
  readonly pressureAtExhaustClosing: number;
  /** Of the last burn, and the delay before it [rad]. */
  readonly burnDuration: number;
  readonly burnDelay: number;
  /** Share of the fuel with air beside it that the last burn takes [-]. */
  readonly burnedShare: number;
  readonly misfire: boolean;
  /** Null where nothing burns. */
  readonly knock: KnockFigures | null;
  /** Mean, from the gas into the wall [W]. */
  readonly wallHeat: { readonly crown: number; readonly head: number; readonly liner: number };
  /** What the walls come to and where their heat goes; null where their temperatures are given. */
  readonly walls: WallFigures | null;
  /** Flow-weighted mean temperature of what leaves through the exhaust windows [K]. */
  readonly exhaustTemperature: number;
  /** Of that, what leaves first, and the mean over time. */
  readonly exhaustGas: ExhaustGas;
  /** Mass per turn that flows back through the transfer and the exhaust windows [kg]. */
  readonly transferBackflow: number;
  readonly exhaustBackflow: number;
}

/** How near the end gas comes to lighting by itself: see docs/conventions.md. */
export interface KnockFigures {
  /** Livengood-Wu integral with the fuel's octane number; the end gas lights where it reaches 1 [-]. */
  readonly integral: number;
  /** Effective octane number with which it would just reach 1 [-]. */
  readonly octaneNeeded: number;
  /** Highest temperature of the unburned gas [K]. */
  readonly endGasTemperature: number;
}

/** Walls of one cylinder that lead away just the heat that the gas gives them. Means over each: hot spots are not known. */
export interface WallFigures extends CylinderWallState {
  /** How the gas side answers: heat = conductance (gas temperature - wall temperature) [W/K, K]. */
  readonly gasSide: Readonly<Record<'crown' | 'head' | 'liner', GasAnswer>>;
  /** Largest difference between the heat the network leads away and what the gas gave, over all heat into this cylinder's walls [-]. */
  readonly residual: number;
}

export interface GasAnswer {
  readonly conductance: number;
  readonly gasTemperature: number;
}

/** One period, sampled at the knots of the step mesh: every column has the length of `angle`. */
export interface Traces {
  /** Crank angle from 0 to turnsPerPeriod * 2 pi [rad]. */
  readonly angle: Float64Array;
  readonly inletBox: GasTrace;
  readonly plenum: GasTrace;
  readonly passages: readonly GasTrace[];
  readonly cylinders: readonly CylinderTrace[];
  readonly collectors: readonly GasTrace[];
  /** Null where the crankcase takes no part. */
  readonly crankcase: (GasTrace & { readonly volume: Float64Array }) | null;
  /** Displaced, and back through the clearances [kg/s]. */
  readonly blowerFlow: Float64Array;
  readonly slipFlow: Float64Array;
  /** Gas torque of all pistons, both sides, at the crank, and the blowers' demand there [N m]. */
  readonly gasTorque: Float64Array;
  readonly blowerTorque: Float64Array;
  /** What these add up to since the period began: of the gas on all pistons, of the blowers on the gas [J]. */
  readonly gasWork: Float64Array;
  readonly blowerWork: Float64Array;
  /** Of blower torque and work, the second stage's part; null without one. */
  readonly second: { readonly torque: Float64Array; readonly work: Float64Array } | null;
}

export interface GasTrace {
  /** [Pa], [K]. */
  readonly pressure: Float64Array;
  readonly temperature: Float64Array;
  /** Mass fraction of air and fuel vapour [-]. */
  readonly purity: Float64Array;
}

export interface CylinderTrace extends GasTrace {
  /** [m^3]; uncovered areas, no discharge coefficient [m^2]. */
  readonly volume: Float64Array;
  readonly exhaustArea: Float64Array;
  readonly transferArea: Float64Array;
  /** Out of the passage into the cylinder, and out of the cylinder into the collector [kg/s]. */
  readonly transferFlow: Float64Array;
  readonly exhaustFlow: Float64Array;
}
