import { SpeedLine } from '../../blower/centrifugal/speed-line.ts';
import { helixAttenuation, ripplesTogether } from '../../blower/roots-ripple.ts';
import type { Impeller } from '../../engine.ts';
import { TURN } from '../../units.ts';
import type { BlowerFlow } from '../flows/blower-flow.ts';
import { CentrifugalBlower } from '../flows/centrifugal-blower.ts';
import { DisplacementBlower } from '../flows/displacement-blower.ts';
import type { Parts } from './flow-elements.ts';

/** The blowers of a design, whatever makes their pressure. */
export function blowerOf(parts: Parts): BlowerFlow {
  const { impeller } = parts.model.engine.blower;
  return impeller ? centrifugal(parts, impeller) : displacement(parts);
}

function displacement({ model, instant, gas, edges }: Parts): DisplacementBlower {
  const { drive, network } = model;
  const { blower } = model.engine;
  const displacementPerRadian = (blower.count * blower.displacement * drive.ratio) / TURN;
  const together = ripplesTogether(blower);
  return new DisplacementBlower(
    network.through.blower,
    network.through.carriedBack,
    {
      displacementPerRadian,
      carriedBackPerRadian: blower.carriedBackShare * displacementPerRadian,
      lobes: blower.lobes,
      ratio: drive.ratio,
      rippleDepth: drive.phaseAveraged
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

function centrifugal({ model, instant, gas, edges }: Parts, impeller: Impeller): CentrifugalBlower {
  const { drive, network, engine } = model;
  const { blower } = engine;
  const rotorSpeed = instant.omega * drive.ratio;
  const { ambient } = network.at;
  return new CentrifugalBlower(
    network.through.blower,
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
