import { UNIT_OF_SUFFIX } from '../../design/unit-table.ts';
import { solveToEnd } from '../../sim/index.ts';
import { backfire, USUAL_HELD } from '../../sim/study/checks/fire/backfire.ts';
import { snappedThrottle } from '../../sim/study/checks/snapped-throttle.ts';
import { finishStudy } from '../../sim/study/study-step.ts';
import { bar, cc, litre, rpm } from '../../sim/units.ts';
import { NO_ANSWER, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { backfireReport } from './backfire-report.ts';
import { readTyped } from './read-typed.ts';
import { faultsOf, POINT_OPTIONS, readPoint, readStudyArguments } from './study-arguments.ts';

/** `backfire FILE [--speed N] [--throttle 80%] [--crankcase 600cc] [--holds 1bar] [--json]`: fire in the tract, throttle snapped shut. */
export function runBackfire(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    ...POINT_OPTIONS,
    crankcase: { type: 'string' },
    holds: { type: 'string' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const text = (option: string) => values[option] as string | undefined;
  const asked = readPoint(values, model.engine.wanted.speed);
  const crankcase = readTyped('--crankcase', text('crankcase'), UNIT_OF_SUFFIX.cc, null);
  const held = readTyped('--holds', text('holds'), UNIT_OF_SUFFIX.barGauge, USUAL_HELD);
  if (!asked.ok || !crankcase.ok || !held.ok) return tell(faultsOf(asked, crankcase, held), streams);
  if (crankcase.value !== null && !(crankcase.value >= cc && crankcase.value <= 100 * litre))
    return tell(
      [{ path: '--crankcase', message: `is ${text('crankcase')}; allowed 1 cc to 100 l` }],
      streams,
    );
  if (!(held.value >= 0.1 * bar && held.value <= 20 * bar))
    return tell([{ path: '--holds', message: `is ${text('holds')}; allowed 0.1 to 20 bar` }], streams);

  const point = asked.value;
  const { result } = solveToEnd(model, point);
  if (!result.converged) {
    streams.err(`no answer at ${Math.round(result.speed / rpm)} rpm: ${result.reason}\n`);
    return NO_ANSWER;
  }
  const fire = backfire(model, result, { crankcaseVolume: crankcase.value, heldAbove: held.value });
  const snapped = finishStudy(snappedThrottle(model, point));
  const snap = snapped.ok ? snapped.value : null;
  streams.out(
    values['json']
      ? `${JSON.stringify(backfireJson(), null, 2)}\n`
      : backfireReport(design.name, model, point.speed, fire, snap),
  );
  return SOLVED;

  function backfireJson() {
    return {
      design: design.name,
      speed_rpm: Number((point.speed / rpm).toPrecision(12)),
      spaces: fire.spaces.map(({ space, volume, pressure, mass, energy, closedPressure }) => ({
        space,
        volume_m3: volume,
        pressure_Pa: pressure,
        mass_kg: mass,
        energy_J: energy,
        closedPressure_Pa: closedPressure,
      })),
      tractMass_kg: fire.tractMass,
      energy_J: fire.energy,
      relievedPressure_Pa: fire.relievedPressure,
      burnTime_s: fire.burnTime,
      piledPressure_Pa: fire.piledPressure,
      reliefNeeded_m2: fire.reliefNeeded,
      held_Pa: fire.held,
      snappedThrottle: snap && {
        boxDepression_Pa: snap.boxDepression,
        plenumDepression_Pa: snap.plenumDepression,
        settledAfterTurns: snap.settledAfter,
      },
    };
  }
}
