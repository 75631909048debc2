import { MOST_TURNS } from '../cycle/model.ts';
import type { Model } from '../cycle/model.ts';
import { trapAngle } from '../cycle/schedule.ts';
import { restOfTurn } from '../geometry/angles.ts';
import { FROZEN_BELOW } from '../gas/dissociation.ts';
import { beyondTables } from './beyond-tables.ts';
import { blowerNotes } from './blower-notes.ts';
import { inertiaNotes } from './inertia-notes.ts';
import { knockNotes } from './knock-notes.ts';
import { misfireNotes } from './misfire-notes.ts';
import { mixtureNotes } from './mixture-notes.ts';
import type { Note, SolvedPoint } from './point-result.ts';
import { reliefNotes } from './relief-notes.ts';
import { wallNotes } from './wall-notes.ts';

/** Share of the fuel that may be liquid at the spark before it is said [-]. */
const LITTLE = 0.05;

/** Share of the delivery from which what a bypass lets out is worth a word [-]. */
const LEAST_SPILLED = 0.001;

/**
 * What a reader must know beside the figures.
 *
 * @param liquidAtSpark - share of the fuel that is still liquid then, worst cylinder [-]
 */
export function notesFor(model: Model, result: Omit<SolvedPoint, 'notes'>, liquidAtSpark: number): Note[] {
  const { combustion } = model.engine;
  const notes: Note[] = [];
  const note = (kind: Note['kind'], text: string) => notes.push({ kind, text });
  if (model.drive.phaseAveraged) {
    note(
      'assumption',
      `With these teeth blower and engine repeat only after ${model.drive.truePeriod} turns, more than ${MOST_TURNS}: the blower's ripple is averaged over its phase.`,
    );
  }
  notes.push(...mixtureNotes(model, result));
  const { second } = model.drive;
  if (second?.phaseAveraged && !model.drive.phaseAveraged) {
    note(
      'assumption',
      `With the second stage’s teeth blowers and engine repeat only after more than ${MOST_TURNS} turns: the second stage's ripple is averaged over its phase.`,
    );
  }
  notes.push(...misfireNotes(combustion, result.cylinders));
  if (liquidAtSpark > LITTLE) {
    note(
      'assumption',
      `At the spark up to ${(100 * liquidAtSpark).toFixed(0)} % of a cylinder’s fuel is still liquid; what has not evaporated when its turn comes does not burn. Finer drops or an earlier injection would help.`,
    );
  }
  const late = injectedLate(model);
  if (late > 0) {
    note(
      'caution',
      `In ${late} of ${result.cylinders.length} cylinders injection goes on after the spark: what comes then does not burn.`,
    );
  }
  const { stages } = result;
  const behind = stages?.interstage ?? result.plenum;
  notes.push(...blowerNotes(model.engine, stages?.first ?? result.blower, behind.meanTemperature));
  const { secondStage } = model.engine;
  if (stages && secondStage) {
    const second = { ...model.engine, blower: secondStage.blower };
    const ofSecond = blowerNotes(second, stages.second, result.plenum.meanTemperature);
    notes.push(...ofSecond.map(({ kind, text }) => ({ kind, text: `Second stage: ${text}` })));
  }
  const { relief } = model.engine.plenum;
  if (result.relief && relief) {
    const leastGauge = result.plenum.minPressure - model.engine.ambient.pressure;
    notes.push(...reliefNotes(result.relief, relief, leastGauge));
  }
  if (result.bypass && model.engine.plenum.bypass?.into === 'air' && result.bypass.share > LEAST_SPILLED) {
    note(
      'caution',
      `The bypass lets ${(100 * result.bypass.share).toPrecision(2)} % of what the blower delivers out into the air${model.engine.charge.feed === 'carburettor' ? ', fuel with it: keep it away from fire' : ''}.`,
    );
  }
  notes.push(...knockNotes(model, result));
  notes.push(...wallNotes(model, result));
  const hottest = Math.max(...result.cylinders.map((c) => c.peakTemperature));
  // Source: this model solved both ways, see docs/model.md.
  if (hottest > 2500 && model.dissociation === null) {
    note(
      'assumption',
      `Burned gas is kept from dissociating: above 2500 K the peak temperature (${hottest.toFixed(0)} K) is over-stated by some 1 to 4 %, the peak pressure by ½ to 2 %, IMEP by ⅓ to 1 %, most where lean. Equilibrium is a choice under burning.`,
    );
  } else if (model.dissociation !== null && hottest > FROZEN_BELOW) {
    note(
      'assumption',
      'Burned gas is in equilibrium above 1500 to 1800 K, at the mean temperature of its cylinder. Against frozen gas that takes some ½ to 2 % off the peak pressure and ⅓ to 1 % off IMEP; burned gas beside a flame is hotter than the mean and dissociates more.',
    );
  }
  notes.push(...beyondTables(model, result), ...inertiaNotes(model, result));
  return notes;
}

/** Cylinders whose spark comes before injection has ended. */
function injectedLate({ engine, geometry }: Model): number {
  const { feed, injection } = engine.charge;
  if (feed !== 'cylinders' || !engine.combustion.enabled) return 0;
  return geometry.cylinders.filter(
    (each) => restOfTurn(each.sparkAngle - trapAngle(each)) < injection.delay + injection.duration,
  ).length;
}
