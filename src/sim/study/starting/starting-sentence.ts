import type { Engine } from '../../engine.ts';
import { rpm, TURN } from '../../units.ts';
import type { Starting } from './starting.ts';

const newtonMetres = (torque: number): string => `${Number(torque.toPrecision(2))}\u00a0N\u00a0m`;

/**
 * How starting goes, in words: whether and when it fires and catches, and whether the starter turns it.
 *
 * @param newton - writes a torque [N m]
 */
export function startingSentence(
  { turns, firstFiring, catches, torqueNeeded, peakTorque, slowest, broke }: Starting,
  { wanted, combustion }: Pick<Engine, 'wanted' | 'combustion'>,
  newton: (torque: number) => string = newtonMetres,
): string {
  const speed = `${Math.round(turns[0]!.speed / rpm)}\u00a0rpm`;
  return [howItGoes(), howItTurns()].join(' ');

  function howItGoes(): string {
    const after = (turn: number) =>
      turns
        .slice(0, turn)
        .reduce((time, each) => time + TURN / each.speed, 0)
        .toFixed(1);
    if (catches !== null)
      return firstFiring === null || firstFiring === catches
        ? `Cranked at ${speed} it catches in turn ${catches}, after ${after(catches)}\u00a0s.`
        : `Cranked at ${speed} it fires first in turn ${firstFiring} and catches in turn ${catches}, after ${after(catches)}\u00a0s.`;
    const last = turns.length;
    const ended = broke === null ? '' : ` (${broke})`;
    if (firstFiring !== null)
      return `Cranked at ${speed} it fires first in turn ${firstFiring}, but does not turn itself within ${last} turns${ended}.`;
    if (!combustion.enabled) return `Cranked at ${speed}, burning switched off: ${last} turns${ended}.`;
    const { richest } = turns.at(-1)!;
    return richest === null || richest > combustion.leanLimit
      ? `Cranked at ${speed} it does not fire within ${last} turns: ${
          richest === null
            ? 'no fuel has reached a cylinder'
            : `the richest charge has λ ${richest.toFixed(2)}, and above ${combustion.leanLimit} none burns`
        }${ended}.`
      : `Cranked at ${speed} it does not fire within ${last} turns: charges are too stale${ended}.`;
  }

  function howItTurns(): string {
    const asks = `Turning it over takes ${newton(torqueNeeded)} on the mean of a turn and ${newton(peakTorque)} at the peak`;
    const { starterTorque } = wanted;
    if (starterTorque !== null && starterTorque < torqueNeeded)
      return `${asks}: the starter’s ${newton(starterTorque)} do not turn it at that speed.`;
    const carried =
      slowest === null
        ? 'what turns cannot carry it over a compression, so the starter must give the peak'
        : `what turns carries it over, slowing to ${Math.round(slowest / rpm)}\u00a0rpm`;
    if (starterTorque !== null && starterTorque >= peakTorque)
      return `${asks}; the starter’s ${newton(starterTorque)} give that.`;
    return starterTorque === null
      ? `${asks}; ${carried}.`
      : `${asks}; the starter gives ${newton(starterTorque)}, and ${carried}.`;
  }
}

/** What the turns leave out, for whoever stands at the engine. */
export const STARTING_CAUTION =
  'A cold tract holds back a film of fuel, which this leaves out: a real start takes a choke, priming or more turns. Fuel that collects there, and ' +
  'unburned mixture in the exhaust, can fire all at once. Chock and tie down what moves, stand clear of the propeller’s plane and of whatever the crank ' +
  'drives, and let nobody turn it by hand with the ignition on.';
