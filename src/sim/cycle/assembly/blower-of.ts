import { SpeedLine } from '../../blower/centrifugal/speed-line.ts';
import { helixAttenuation, ripplesTogether } from '../../blower/roots-ripple.ts';
import type { Blower, Impeller } from '../../engine.ts';
import { TURN } from '../../units.ts';
import type { BlowerFlow } from '../flows/blower-flow.ts';
import { CentrifugalBlower } from '../flows/centrifugal-blower.ts';
import { DisplacementBlower } from '../flows/displacement-blower.ts';
import type { Parts } from './flow-elements.ts';

/** One stage: its blowers, how they turn, and the edges of what they carry and what their mesh takes back. */
interface Stage {
  readonly blower: Blower;
  readonly ratio: number;
  readonly phaseAveraged: boolean;
  readonly edge: number;
  readonly carriedBack: number;
}

/** The blowers of the first stage, whatever makes their pressure. */
export function blowerOf(parts: Parts): BlowerFlow {
  const { engine, drive, network } = parts.model;
  const { blower: edge, carriedBack } = network.through;
  return flowOf(parts, { blower: engine.blower, ...drive, edge, carriedBack });
}

/** Null without a second stage. */
export function secondBlowerOf(parts: Parts): BlowerFlow | null {
  const { engine, drive, network } = parts.model;
  if (!engine.secondStage || !drive.second) return null;
  const { ratio } = drive.second;
  // Studies even the ripple by the first stage's drive.
  const phaseAveraged = drive.phaseAveraged || drive.second.phaseAveraged;
  const { second: edge } = network.through;
  const { blower } = engine.secondStage;
  return flowOf(parts, { blower, ratio, phaseAveraged, edge, carriedBack: -1 });
}

const flowOf = (parts: Parts, stage: Stage): BlowerFlow =>
  stage.blower.impeller ? centrifugal(parts, stage, stage.blower.impeller) : displacement(parts, stage);

function displacement({ instant, gas, edges }: Parts, stage: Stage): DisplacementBlower {
  const { blower, ratio } = stage;
  const displacementPerRadian = (blower.count * blower.displacement * ratio) / TURN;
  const together = ripplesTogether(blower);
  return new DisplacementBlower(
    stage.edge,
    stage.carriedBack,
    {
      displacementPerRadian,
      carriedBackPerRadian: blower.carriedBackShare * displacementPerRadian,
      lobes: blower.lobes,
      ratio,
      rippleDepth: stage.phaseAveraged
        ? 0
        : blower.rippleDepth * helixAttenuation(blower.lobes, blower.helixAngle) * together.share,
      phase: together.phase,
      volumeRatio: blower.volumeRatio,
    },
    blower.casingHeatShare,
    instant,
    gas,
    edges,
  );
}

function centrifugal(
  { model, instant, gas, edges }: Parts,
  { blower, ratio, edge }: Stage,
  impeller: Impeller,
): CentrifugalBlower {
  const rotorSpeed = instant.omega * ratio;
  const { ambient } = model.network.at;
  return new CentrifugalBlower(
    edge,
    {
      bestFlow: (blower.count * blower.displacement * rotorSpeed) / TURN,
      tipSpeed: 0.5 * blower.tipDiameter * rotorSpeed,
      throatArea: blower.count * impeller.throatArea,
    },
    new SpeedLine(impeller, blower.displacement, blower.tipDiameter),
    blower.casingHeatShare,
    instant,
    gas,
    edges,
    {
      temperature: gas.temperature[ambient],
      gasConstant: gas.gasConstant[ambient],
      gamma: gas.gamma[ambient],
    },
  );
}
