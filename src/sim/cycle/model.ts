import { gearRatio, leastCommonMultiple, periodTurns, trainEfficiency } from '../blower/gear-train.ts';
import type { Engine } from '../engine.ts';
import type { ConstituentSet } from '../gas/constituent-set.ts';
import type { Dissociation } from '../gas/dissociation.ts';
import type { DesignMixture } from '../gas/mixture.ts';
import { designMixture, PRODUCTS_INDEX } from '../gas/mixture.ts';
import { crankcaseFaults } from '../geometry/check-crankcase.ts';
import { geometryOf } from '../geometry/geometry-of.ts';
import type { EngineGeometry } from '../geometry/cylinder-geometry.ts';
import type { Outcome } from '../outcome.ts';
import { failure, success } from '../outcome.ts';
import { OutflowPurity } from '../scavenging/outflow-purity.ts';
import { gasOf } from './gas-of.ts';
import type { Network } from './network.ts';
import { buildNetwork } from './network.ts';

/** Turns a period may span before the blower's phase is averaged instead. */
export const MOST_TURNS = 8;

/** All that does not depend on the operating point, worked out once per design. Immutable. */
export interface Model {
  readonly engine: Engine;
  readonly geometry: EngineGeometry;
  readonly mixture: DesignMixture;
  readonly set: ConstituentSet;
  /** What dissociation adds to the products; null where the design keeps them frozen. */
  readonly dissociation: Dissociation | null;
  /** Which constituents count as fresh charge, in the order of the set. */
  readonly fresh: readonly boolean[];
  readonly network: Network;
  readonly outflow: OutflowPurity;
  readonly drive: {
    /** Rotor speed over crank speed [-]. */
    readonly ratio: number;
    readonly efficiency: number;
    /** Crank turns after which engine and rotors stand as before. */
    readonly truePeriod: number;
    /** Turns of the period that is solved: the true one, or 1 with the ripple averaged over phase. */
    readonly turns: number;
    readonly phaseAveraged: boolean;
    /** Of the second stage; null without one. */
    readonly second: StageDrive | null;
  };
}

/** How a second stage is driven. */
export interface StageDrive {
  readonly ratio: number;
  readonly efficiency: number;
  /** Crank turns after which engine and its rotors stand as before, and whether they are averaged over phase. */
  readonly truePeriod: number;
  readonly phaseAveraged: boolean;
}

/** Builds what a design's points share, or says everything that is wrong with it. */
export function buildModel(engine: Engine): Outcome<Model> {
  const geometry = geometryOf(engine);
  const mixture = designMixture(engine.charge, engine.ambient);
  if (!geometry.ok || !mixture.ok) {
    return failure([...(geometry.ok ? [] : geometry.faults), ...(mixture.ok ? [] : mixture.faults)]);
  }
  const tight = crankcaseFaults(engine, geometry.value);
  if (tight.length > 0) return failure([...tight]);
  const { blower } = engine;
  const ratio = gearRatio(blower.gears);
  const truePeriod = blower.rippleDepth > 0 ? periodTurns(ratio, blower.lobes) : 1;
  const phaseAveraged = truePeriod > MOST_TURNS;
  const turns = phaseAveraged ? 1 : truePeriod;
  const second = secondDrive(engine, turns);
  return success({
    engine,
    geometry: geometry.value,
    ...gasOf(mixture.value, engine.combustion),
    fresh: mixture.value.constituents.map((_, k) => k !== PRODUCTS_INDEX),
    network: buildNetwork(engine),
    outflow: new OutflowPurity(engine.scavenging),
    drive: {
      ratio: ratio.numerator / ratio.denominator,
      efficiency: trainEfficiency(blower.gears),
      truePeriod,
      turns: second && !second.phaseAveraged ? leastCommonMultiple(turns, second.truePeriod) : turns,
      phaseAveraged,
      second,
    },
  });
}

/** The second stage's ripple is averaged where both stages and the engine together repeat too late. */
function secondDrive({ secondStage }: Engine, firstTurns: number): StageDrive | null {
  if (!secondStage) return null;
  const { gears, lobes, rippleDepth } = secondStage.blower;
  const ratio = gearRatio(gears);
  const truePeriod = rippleDepth > 0 ? periodTurns(ratio, lobes) : 1;
  return {
    ratio: ratio.numerator / ratio.denominator,
    efficiency: trainEfficiency(gears),
    truePeriod,
    phaseAveraged: leastCommonMultiple(firstTurns, truePeriod) > MOST_TURNS,
  };
}
