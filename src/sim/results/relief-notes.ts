import type { Plenum } from '../engine.ts';
import { sticksAtAll } from '../cycle/flows/relief-valve.ts';
import type { Note, ReliefFigures } from './point-result.ts';

/** Share of the delivery from which what the valve lets out is worth a word [-]. */
const LITTLE = 0.001;
/** Swing of the lift below which it stands still [-]. */
const STILL = 1e-6;

/**
 * What must be said of a relief valve that opens at a running point, or sticks.
 *
 * @param leastGauge - lowest pressure of the plenum less ambient [Pa]
 */
export function reliefNotes(
  figures: ReliefFigures,
  spring: NonNullable<Plenum['relief']>,
  leastGauge: number,
): readonly Note[] {
  const { share, leastLift, greatestLift, openings } = figures;
  const notes: Note[] = [];
  if (share > LITTLE) {
    const chatters =
      openings > 0
        ? ` It opens and shuts ${times(openings)}: it chatters, which wears its seat, and by its own mass it would flutter more than the model knows of.`
        : '';
    notes.push({
      kind: 'caution',
      text: `The relief valve lets out ${(100 * share).toPrecision(2)} % of what the blower delivers, fuel with it.${chatters}`,
    });
  }
  const still = greatestLift - leastLift < STILL;
  if (sticksAtAll(spring) && still && greatestLift > 0 && greatestLift < 1) {
    notes.push({
      kind: 'assumption',
      text: `Friction holds the relief valve at ${(100 * greatestLift).toPrecision(2)} % of its lift all the time, as far as rising pressure has opened it: after a higher pressure it would stand further open.`,
    });
  }
  if (sticksAtAll(spring) && greatestLift === 0 && leastGauge > spring.reseatingPressure) {
    notes.push({
      kind: 'assumption',
      text: 'The plenum stands above the pressure at which the relief valve shuts: it is taken to be shut still, but once opened by a higher pressure it would not shut here.',
    });
  }
  return notes;
}

function times(openings: number): string {
  if (openings === 1) return 'once a turn';
  return openings > 1
    ? `${openings.toFixed(openings % 1 ? 1 : 0)} times a turn`
    : `once in ${(1 / openings).toFixed(0)} turns`;
}
