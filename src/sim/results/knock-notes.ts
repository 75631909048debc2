import { FITTED_OCTANES } from '../combustion/knock.ts';
import { fuelName, fuelParts } from '../gas/charge-fuel.ts';
import type { Model } from '../cycle/model.ts';
import type { Note, SolvedPoint } from './point-result.ts';

/** Fuels that the knock law was fitted to. */
const FITTED_FUELS: readonly string[] = ['petrol', 'isooctane'];

/** What a reader must know of the knock margin: that end gas lights, and where the law is beyond its fit. */
export function knockNotes(
  { engine }: Model,
  { engine: figures, cylinders }: Pick<SolvedPoint, 'engine' | 'cylinders'>,
): Note[] {
  const { octane, knockMargin } = figures;
  if (knockMargin === null) return [];
  const notes: Note[] = [];
  const knocking = cylinders.filter(({ knock }) => knock !== null && knock.integral >= 1).length;
  if (knocking > 0) {
    const needed = (octane - knockMargin).toFixed(0);
    notes.push({
      kind: 'caution',
      text: `By the knock integral the end gas of ${knocking} of ${cylinders.length} cylinders lights by itself: they need an octane number of up to ${needed}, the fuel counts as ${octane.toFixed(0)}. What knock does to pressure, heat and crowns is not in these figures.`,
    });
  }
  if (fuelParts(engine.charge).some(({ key }) => !FITTED_FUELS.includes(key))) {
    notes.push({
      kind: 'assumption',
      text: `The knock integral was fitted to petrol of octane ${FITTED_OCTANES[0]} to ${FITTED_OCTANES[1]}; ${fuelName(engine.charge)} lies outside.`,
    });
  }
  return notes;
}
