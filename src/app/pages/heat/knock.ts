import { figure } from '../../../charts/format.ts';
import { FITTED_OCTANES } from '../../../sim/combustion/knock.ts';
import type { SolvedPoint } from '../../../sim/index.ts';
import type { ShownUnits } from '../../units/shown-units.ts';

export interface KnockColumns {
  /** Octane number that each cylinder needs; NaN where nothing burns. */
  readonly needed: readonly number[];
  /** What the fuel counts as. */
  readonly octane: number;
}

/** Octane numbers by cylinder; null where nothing burns at all. */
export function knockColumns({ cylinders, engine }: SolvedPoint): KnockColumns | null {
  const needed = cylinders.map(({ knock }) => knock?.octaneNeeded ?? NaN);
  return needed.some(Number.isFinite) ? { needed, octane: engine.octane } : null;
}

/** Which cylinder comes nearest to knock, how far it is, and how much that can be believed. */
export function knockSentence(
  { cylinders, engine }: SolvedPoint,
  labels: readonly string[],
  units: ShownUnits,
): string {
  const { octane, knockMargin: margin } = engine;
  if (margin === null) return '';
  const needs = octane - margin;
  const nearest = cylinders.findIndex(({ knock }) => knock?.octaneNeeded === Math.max(...needed(cylinders)));
  const endGas = cylinders[nearest]?.knock?.endGasTemperature ?? NaN;
  const [fittedFrom, fittedTo] = FITTED_OCTANES;
  const outside =
    needs < fittedFrom
      ? ` Below ${fittedFrom} the law is extrapolated: read it as “far below”.`
      : needs > fittedTo
        ? ` Above ${fittedTo} the law is extrapolated.`
        : '';
  return (
    `Cylinder ${labels[nearest]} comes nearest: its end gas reaches ${units.text('temperature', endGas)} and needs ${figure(needs, 2)}, ` +
    `${margin >= 0 ? `${figure(margin, 2)} below` : `${figure(-margin, 2)} above`} what the fuel counts as.${outside} ` +
    'Engines differ by several numbers, hot spots and carbon are not in it: listen, and read plugs and crowns.'
  );
}

const needed = (cylinders: SolvedPoint['cylinders']): number[] =>
  cylinders.flatMap(({ knock }) => (knock ? [knock.octaneNeeded] : []));
