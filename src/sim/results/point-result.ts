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
  readonly blower: BlowerFigures;
  readonly plenum: GasFigures;
  readonly inletBox: GasFigures;
  readonly collectors: readonly GasFigures[];
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
  readonly sweptVolume: number;
  /** Air and fuel through the throttle [kg/s]. */
  readonly airFlow: number;
  readonly fuelFlow: number;
  readonly deliveryRatio: number;
  readonly scavengingEfficiency: number;
  readonly trappingEfficiency: number;
  readonly chargingEfficiency: number;
  readonly imep: number;
  readonly fmep: number;
  readonly bmep: number;
  readonly torque: number;
  readonly brakePower: number;
  /** Fuel over brake power [kg/J]; null where there is no brake power. */
  readonly bsfc: number | null;
  readonly wallHeat: number;
  /** Where the fuel's energy goes [W]. */
  readonly balance: EnergyBalance;
}

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
  readonly rotorSpeed: number;
  readonly tipSpeed: number;
  /** Net mass delivered to the plenum [kg/s]. */
  readonly massFlow: number;
  /** Flow back through the clearances over flow displaced [-]. */
  readonly slipFraction: number;
  readonly shaftPower: number;
  /** Work on the gas [W]. */
  readonly fluidPower: number;
  readonly outletTemperature: number;
  readonly pressureRise: number;
}

export interface GasFigures {
  readonly meanPressure: number;
  readonly minPressure: number;
  readonly maxPressure: number;
  readonly meanTemperature: number;
}

export interface CylinderFigures {
  readonly row: number;
  readonly number: number;
  readonly trappedMass: number;
  readonly trappedAir: number;
  readonly purity: number;
  readonly deliveryRatio: number;
  readonly trappingEfficiency: number;
  readonly chargingEfficiency: number;
  readonly imep: number;
  readonly peakPressure: number;
  /** Crank angle after own top dead centre of the peak [rad]. */
  readonly peakPressureAngle: number;
  readonly peakTemperature: number;
  readonly pressureAtExhaustClosing: number;
  readonly burnDuration: number;
  readonly misfire: boolean;
  readonly wallHeat: { readonly crown: number; readonly head: number; readonly liner: number };
  /** Flow-weighted mean temperature of what leaves through the exhaust windows [K]. */
  readonly exhaustTemperature: number;
  /** Mass per turn that flows back through the transfer and the exhaust windows [kg]. */
  readonly transferBackflow: number;
  readonly exhaustBackflow: number;
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
  readonly blowerFlow: Float64Array;
  readonly slipFlow: Float64Array;
  /** Gas torque of all cylinders at the crank, and the blowers' demand there [N m]. */
  readonly gasTorque: Float64Array;
  readonly blowerTorque: Float64Array;
}

export interface GasTrace {
  readonly pressure: Float64Array;
  readonly temperature: Float64Array;
  /** Mass fraction of air and fuel vapour [-]. */
  readonly purity: Float64Array;
}

export interface CylinderTrace extends GasTrace {
  readonly volume: Float64Array;
  readonly exhaustArea: Float64Array;
  readonly transferArea: Float64Array;
  /** Out of the passage into the cylinder, and out of the cylinder into the collector [kg/s]. */
  readonly transferFlow: Float64Array;
  readonly exhaustFlow: Float64Array;
}
