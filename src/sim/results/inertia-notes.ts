import type { Model } from '../cycle/model.ts';
import { AIR_INDEX } from '../gas/mixture.ts';
import { millisecond, percent, TURN } from '../units.ts';
import type { GasFigures, Note, SolvedPoint } from './point-result.ts';

/** Ratio of specific heats that waves are timed by; they are not computed [-]. */
const GAMMA = { charge: 1.39, exhaust: 1.33 };
/** Inertance number from which a column's inertia shows in what is delivered [-]; see docs/model.md for how much. */
const SHOWS = 0.1;
/** Time of a wave to and fro over that in which pressures change, beyond which a column no longer moves as one [-]. Usual practice. */
const MOVES_AS_ONE = 0.2;

type Result = Pick<SolvedPoint, 'speed' | 'engine' | 'plenum' | 'collectors'>;

/**
 * What columns of gas with inertia mean, and where a model without length ends: for passages
 *
 *   inertance number  I = (L/A) mdot / (t_open dp) = 2 Cd^2 rho A L / m      m: mass that passes in a turn [kg]
 *
 * the time in which the driving pressure speeds the gas up over that for which windows are open [-]; and the time 2 L/c of a wave to and
 * fro over that. For tail pipes the frequency of collector and pipe, (c / 2 pi) sqrt(A / (V L)), beside that of the pulses.
 *
 * Source: ratio of the terms of the lumped momentum equation, see InertialPassages; Blevins, 1979, ch. 13.
 */
export function inertiaNotes(model: Model, result: Result): Note[] {
  return [...passageNote(model, result), ...pipeNotes(model, result)];
}

function passageNote({ engine, geometry, set }: Model, { speed, engine: figures, plenum }: Result): Note[] {
  const { length, entryArea, entryDischarge } = engine.passages;
  if (length === null) return [];
  const RT = set.gasConstants[AIR_INDEX]! * plenum.meanTemperature;
  const column = (plenum.meanPressure / RT) * entryArea * length;
  const perTurn = ((figures.airFlow + figures.fuelFlow) * TURN) / speed / geometry.cylinders.length;
  if (!(perTurn > 0)) return [];
  const number = (2 * entryDischarge.forward ** 2 * column) / perTurn;
  const open = Math.min(
    ...geometry.cylinders.map(({ transfer }) => transfer.closesAfterOwnTdc - transfer.opensAfterOwnTdc),
  );
  const wave = (2 * length) / Math.sqrt(GAMMA.charge * RT);
  const share = (wave * speed) / open;
  const weight =
    number < SHOWS
      ? 'their inertia is of no account'
      : 'their inertia may show, most where gas blows back as the windows open';
  return [
    {
      kind: 'assumption',
      text: `Columns of gas in the passages: inertance number ${number.toPrecision(2)}, ${weight}. ${waves(wave, share, 'the time that the transfer windows are open')}`,
    },
  ];
}

function pipeNotes({ engine, geometry, set, network }: Model, { speed, collectors }: Result): Note[] {
  return engine.collectors.flatMap(({ pipe, volume }, i): Note[] => {
    if (!pipe) return [];
    const c = soundIn(collectors[i]!, set.gasConstants[AIR_INDEX]!);
    const pulses = network.through.exhausts.filter(
      (edge) => network.edges[edge]!.to === network.at.collectors[i],
    );
    const firing = (pulses.length * speed) / TURN;
    const own = (c / TURN) * Math.sqrt(pipe.area / (volume * pipe.length));
    const wave = (2 * pipe.length) / c;
    const of = geometry.cylinders.length > 0 && engine.collectors.length > 1 ? ` ${i + 1}` : '';
    return [
      {
        kind: 'assumption',
        text:
          `Collector${of} and its tail pipe swing at ${own.toFixed(0)} Hz by themselves, the pulses come at ${firing.toFixed(0)} Hz. ` +
          waves(wave, wave * firing, 'the time from pulse to pulse'),
      },
    ];
  });
}

const soundIn = ({ meanTemperature }: GasFigures, R: number): number =>
  Math.sqrt(GAMMA.exhaust * R * meanTemperature);

function waves(wave: number, share: number, of: string): string {
  const times = `A wave runs to and fro in ${(wave / millisecond).toPrecision(2)} ms, ${Math.round(share / percent)} % of ${of}`;
  return share > MOVES_AS_ONE
    ? `${times}: too long for a column that moves as one. Waves in it would show, and this model has none.`
    : `${times}, so that the column moves nearly as one.`;
}
