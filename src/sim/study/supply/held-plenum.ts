import type { Model } from '../../cycle/model.ts';
import type { OperatingPoint } from '../../cycle/operating-point.ts';
import type { Solution, SolvedStart } from '../../cycle/solve.ts';
import { nodesLast, solveHeldNodes } from '../held-nodes.ts';
import type { HeldGas } from '../held-nodes.ts';

/**
 * The cylinders, passages and collectors of a model with its plenum held: the same network and laws, but the plenum is a
 * reservoir, and there is no blower, slip, relief or bypass. What flows through the transfer windows is then what the
 * cylinders swallow at that plenum pressure.
 *
 * Valid: exact within the model. The plenum's ripple, which goes with a real one, is missing on purpose.
 */
export function withHeldPlenum(model: Model): Model {
  const { engine } = model;
  const network = nodesLast(model.network, [model.network.at.plenum]);
  return {
    ...model,
    engine: {
      ...engine,
      // Nothing may reach the plenum but its flows: a reservoir owns no stretch of the state.
      blower: {
        ...engine.blower,
        impeller: null,
        displacement: 0,
        clearanceArea: 0,
        slip: null,
        carriedBackShare: 0,
        rippleDepth: 0,
        dragTorque: 0,
        dragWithSpeed: 0,
        dragWithSquare: 0,
      },
      secondStage: null,
      plenum: { ...engine.plenum, relief: null, bypass: null, wall: { ...engine.plenum.wall, area: 0 } },
      // The pistons do no net work on a plenum of constant pressure.
      crankcase: engine.crankcase?.isPlenum ? null : engine.crankcase,
      intake: { ...engine.intake, boxWall: { ...engine.intake.boxWall, area: 0 } },
    },
    network: { ...network, through: { ...network.through, relief: -1, bypass: -1, carriedBack: -1 } },
    drive: { ...model.drive, truePeriod: 1, turns: 1, phaseAveraged: true, second: null },
  };
}

/**
 * Periodic state of the cylinders with the plenum held.
 *
 * @param held  - a model made by `withHeldPlenum`
 * @param start - solution of the same held model at another pressure, or null for the cold start
 */
export const solveHeld = (
  held: Model,
  point: OperatingPoint,
  plenum: HeldGas,
  start: SolvedStart | null,
): Generator<void, Solution> =>
  solveHeldNodes(held, point, [{ node: held.network.at.plenum, ...plenum }], 'the plenum', start);
