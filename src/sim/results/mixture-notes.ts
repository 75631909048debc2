import { REFERENCE_LAMBDA } from '../combustion/burn-timing.ts';
import { jetBoreFor, JET_LAMBDAS, lambdaOfJet } from '../cycle/jet-mixture.ts';
import type { Model } from '../cycle/model.ts';
import { mm, rpm } from '../units.ts';
import type { Note, SolvedPoint } from './point-result.ts';

/** Where λ is not what the design's table or jet says. */
export function mixtureNotes(
  model: Model,
  { speed, engine: { airFlow, lambda } }: Pick<SolvedPoint, 'speed' | 'engine'>,
): Note[] {
  const { jet, lambdaOverSpeed: table } = model.engine.charge;
  const shown = lambda.toFixed(2);
  const notes: Note[] = [];
  if (table && (speed < table.speeds[0]! || speed > table.speeds.at(-1)!)) {
    const [from, to] = [table.speeds[0]!, table.speeds.at(-1)!].map((each) => (each / rpm).toFixed(0));
    notes.push({
      kind: 'assumption',
      text: `The table of λ runs from ${from} to ${to} rpm; at ${(speed / rpm).toFixed(0)} rpm λ of its nearer end holds, ${shown}.`,
    });
  }
  if (jet) {
    const drawn = lambdaOfJet(model, airFlow);
    const [richest, leanest] = JET_LAMBDAS;
    const bore = jetBoreFor(model, REFERENCE_LAMBDA, airFlow);
    const other =
      bore === null
        ? ''
        : ` A main jet of ${(bore / mm).toFixed(2)} mm would give λ ${REFERENCE_LAMBDA} here.`;
    const held = `so λ ${shown} is held.${other} What feeds an engine where the main jet gives little, a slow-running jet or a needle, is not modelled.`;
    if (drawn === Infinity)
      notes.push({
        kind: 'caution',
        text: `The air draws no fuel through the main jet: its depression in the venturi does not lift fuel to the nozzle, ${held}`,
      });
    else if (drawn < richest || drawn > leanest)
      notes.push({
        kind: 'caution',
        text: `The main jet gives λ ${drawn.toFixed(2)}, which is beyond ${richest} to ${leanest}, ${held}`,
      });
  }
  return notes;
}
