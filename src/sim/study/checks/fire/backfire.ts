import { withLambda } from '../../../cycle/mixture-at.ts';
import type { Model } from '../../../cycle/model.ts';
import { flameOf, flameSpeed } from '../../../combustion/flame.ts';
import { plenumVolume } from '../../../geometry/plenum-volume.ts';
import type { SolvedPoint } from '../../../results/point-result.ts';
import { bar } from '../../../units.ts';
import { ChargeFire } from './charge-fire.ts';
import { USUAL_DEFLAGRATION_INDEX, ventArea } from './vent-area.ts';
import { ventedPressure } from './vented.ts';

/** One space full of mixture, before and after it burns shut in. */
export interface FireIn {
  readonly space: 'inlet box' | 'between the stages' | 'plenum' | 'passages' | 'crankcase';
  /** Of all passages together [m^3]. */
  readonly volume: number;
  /** Before the fire [Pa]. */
  readonly pressure: number;
  /** [kg], and the lower heating value of the fuel in it [J]. */
  readonly mass: number;
  readonly energy: number;
  /** Highest pressure, shut in: all of it burns at constant volume [Pa]. */
  readonly closedPressure: number;
}

/** What mixture stands between throttle and cylinders, and what it would do if it burned there. */
export interface Backfire {
  /** Where fuel stands: inlet box, what is between two stages, plenum, passages behind a carburettor, passages behind their injectors; the crankcase where its volume is known. */
  readonly spaces: readonly FireIn[];
  /** Mixture in inlet box, plenum and passages [kg], and the lower heating value of the fuel in it [J]. */
  readonly tractMass: number;
  readonly energy: number;
  /** Whether the plenum holds mixture: not where fuel joins the air behind it. */
  readonly plenumBurns: boolean;
  /** Of the plenum, with its relief valve venting; null without one, or without mixture [Pa]. */
  readonly relievedPressure: number | null;
  /** What the vented figure took for the time in which a flame crosses the plenum [s]. */
  readonly burnTime: number;
  /** A passage whose mixture the burning plenum compresses before it burns itself; null where the plenum does not burn [Pa]. */
  readonly piledPressure: number | null;
  /** Relief that would hold the plenum, by a law of explosion venting; null where the law ends, or where there is no mixture [m^2]. */
  readonly reliefNeeded: number | null;
  /** What that relief holds the plenum to [Pa]. */
  readonly held: number;
}

export interface BackfireOptions {
  /** Flame in a plenum over a laminar one [-]. */
  readonly flameFactor?: number;
  /** Of the crankcase at its smallest [m^3]; null where it is not known. */
  readonly crankcaseVolume?: number | null;
  /** Pressure above ambient to which relief is to hold the plenum [Pa]. */
  readonly heldAbove?: number;
}

/** 1 is laminar; crowded plenums full of swirl burn several times faster. Typical [-]. */
export const USUAL_FLAME_FACTOR = 3;
/** Above ambient: what a stout thin-walled plenum may stand. Typical; only a test of the plenum itself tells [Pa]. */
export const USUAL_HELD = 1 * bar;
/** Spaces that hold fuel, by where it joins the air. */
const FUEL_STANDS_IN: Readonly<Record<Model['engine']['charge']['feed'], readonly FireIn['space'][]>> = {
  carburettor: ['inlet box', 'between the stages', 'plenum', 'passages'],
  passages: ['passages'],
  cylinders: [],
};
/** Above the plenum's working pressure: where a disc for it would burst [Pa]. */
const DISC_OPENS = 0.1 * bar;

/**
 * What the mixture in the tract of a solved point would do if it caught fire, space by space, each shut off from the others.
 *
 *   shut in: `ChargeFire.shutIn`;   vented: `ventedPressure`, the relief valve wide open above cracking;   relief needed: `ventArea`
 *   t_b = r / (S F R_2 T_2 / (R_1 T_1)),   r = (3 V / (4 pi))^(1/3)
 *   piled up: a passage is compressed isentropically to the plenum's shut-in pressure, then burns shut in itself
 *
 * S laminar flame speed [m/s], F how much faster it runs here [-]; V plenum, with the crankcase where that is part of it [m^3]. A
 * crankcase apart from it is taken as full of charge at ambient pressure and temperature, the most it can hold.
 *
 * Valid: upper bounds for spaces that burn one at a time, dissociation and heat left out; no pressure waves, no detonation, which go far
 * beyond. The vented figure stands and falls with F. None is a strength to design for.
 * Source: first law; pressure piling in linked vessels: Bartknecht, Explosions, 1981, ch. 1.
 */
export function backfire(design: Model, point: SolvedPoint, options: BackfireOptions = {}): Backfire {
  const { flameFactor = USUAL_FLAME_FACTOR, crankcaseVolume = null, heldAbove = USUAL_HELD } = options;
  const model = withLambda(design, point.engine.lambda);
  const { engine } = model;
  const { ambient, charge, intake, passages, secondStage } = engine;
  const volume = plenumVolume(engine);
  const fire = new ChargeFire(model);
  const space = (name: FireIn['space'], volume: number, pressure: number, temperature: number): FireIn => {
    const mass = (pressure * volume) / (fire.freshGasConstant * temperature);
    const closedPressure = fire.shutIn(pressure, temperature).pressure;
    return { space: name, volume, pressure, mass, energy: mass * fire.energy, closedPressure };
  };
  const { meanPressure: p1, meanTemperature: T1 } = point.plenum;
  const standing = FUEL_STANDS_IN[charge.feed];
  const plenumBurns = standing.includes('plenum');
  const tract = [
    space('inlet box', intake.boxVolume, point.inletBox.meanPressure, point.inletBox.meanTemperature),
    ...(secondStage && point.stages
      ? [
          space(
            'between the stages',
            secondStage.volume + (secondStage.cooler?.volume ?? 0),
            point.stages.interstage.meanPressure,
            point.stages.beforeSecond.meanTemperature,
          ),
        ]
      : []),
    space('plenum', volume, p1, T1),
    space('passages', model.geometry.cylinders.length * passages.volume, p1, T1),
  ].filter((each) => standing.includes(each.space));
  const spaces =
    crankcaseVolume === null
      ? tract
      : [...tract, space('crankcase', crankcaseVolume, ambient.pressure, ambient.temperature)];

  const burned = fire.shutIn(p1, T1);
  const laminar = flameSpeed(flameOf(charge), T1, p1, charge.lambda, 0);
  const radius = Math.cbrt((3 * volume) / (4 * Math.PI));
  const burnTime = radius / ((laminar * flameFactor * burned.pressure) / p1);
  const held = ambient.pressure + heldAbove;
  const { relief } = engine.plenum;
  const sum = (of: (each: FireIn) => number) => tract.reduce((total, each) => total + of(each), 0);
  return {
    spaces,
    tractMass: sum(({ mass }) => mass),
    energy: sum(({ energy }) => energy),
    plenumBurns,
    relievedPressure:
      relief && plenumBurns
        ? ventedPressure(fire, {
            volume,
            pressure: p1,
            temperature: T1,
            area: relief.area * relief.dischargeCoefficient,
            cracking: ambient.pressure + relief.crackingPressure,
            outside: ambient.pressure,
            burnTime,
          })
        : null,
    burnTime,
    piledPressure: plenumBurns
      ? fire.shutIn(burned.pressure, fire.compressed(p1, T1, burned.pressure)).pressure
      : null,
    reliefNeeded: plenumBurns
      ? ventArea({
          volume,
          start: p1,
          holds: held,
          opens: DISC_OPENS,
          index: USUAL_DEFLAGRATION_INDEX,
        })
      : null,
    held,
  };
}
