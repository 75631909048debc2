import { LEAST_OPEN, warmGaps } from '../blower/slip/warm-gap.ts';
import { DRAWING_TEMPERATURE } from '../blower/rotors/heat-growth.ts';
import type { Engine } from '../engine.ts';
import { rpm } from '../units.ts';
import type { BlowerFigures, Note } from './point-result.ts';

/** Share of the choking flow from which a wheel is said to choke: its line falls steeply from there [-]. */
const NEAR_CHOKE = 0.95;
/** Power lost to a built-in ratio that does not fit, over the fluid power, from which it is worth a word [-]. */
const WORTH_A_WORD = 0.1;

/** Open share of a gap at which it counts as closed [-]. */
const NEARLY_CLOSED = 0.1;

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;

/**
 * Cautions of the blower's kind: limits passed, surge, choking, compression that does not fit, gaps that close.
 *
 * @param plenum - mean temperature of its gas [K]
 */
export function blowerNotes({ blower, ambient }: Engine, figures: BlowerFigures, plenum: number): Note[] {
  const notes: Note[] = [];
  const caution = (text: string) => notes.push({ kind: 'caution', text });
  const { tipSpeed, rotorSpeed, wheel, builtIn, fluidPower } = figures;
  const centrifugal = blower.kind === 'centrifugal';
  if (tipSpeed > blower.maxTipSpeed) {
    const [tips, these] = centrifugal ? ['impeller', 'this wheel'] : ['rotor', 'these rotors'];
    caution(
      `The ${tips} tips run at ${tipSpeed.toFixed(0)} m/s, above the ${blower.maxTipSpeed.toFixed(0)} m/s stated for ${these}.`,
    );
  }
  if (rotorSpeed > blower.maxSpeed) {
    caution(
      `The ${centrifugal ? 'impellers' : 'rotors'} turn at ${(rotorSpeed / rpm).toFixed(0)} rpm, above their limit of ${(blower.maxSpeed / rpm).toFixed(0)} rpm.`,
    );
  }
  if (wheel && wheel.flow < wheel.surge) {
    caution(
      `The centrifugal blower surges: ${percent(wheel.flow)} of its best flow goes through, and below ${percent(wheel.surge)} the flow would collapse and return by turns. ` +
        'The figures are those of a blower that does not surge.',
    );
  }
  if (wheel && wheel.ofChoke > NEAR_CHOKE) {
    caution(
      `The inlet of the centrifugal blower chokes: ${percent(wheel.ofChoke)} of what can pass its throat goes through.`,
    );
  }
  if (builtIn && fluidPower > 0 && builtIn.mismatchPower > WORTH_A_WORD * fluidPower) {
    const over = builtIn.pressureRatio > builtIn.neededRatio;
    caution(
      `The blower compresses ${over ? 'more' : 'less'} than is needed: to ${builtIn.pressureRatio.toFixed(2)} times the inlet's pressure where ${builtIn.neededRatio.toFixed(2)} are wanted. ` +
        `${over ? 'Over' : 'Under'}-compression takes ${percent(builtIn.mismatchPower / fluidPower)} of the work on the gas.`,
    );
  }
  const { slip } = blower;
  if (slip?.closeWithHeat) {
    const gaps = warmGaps(blower, slip.filmShare, true, ambient.temperature);
    const closed = (['tip', 'mesh', 'end'] as const).filter((key) => {
      const { cold, lost, perKelvin } = gaps[key];
      return cold - lost - perKelvin * (plenum - DRAWING_TEMPERATURE) < NEARLY_CLOSED * cold;
    });
    if (closed.length > 0) {
      const names = closed.map((key) => ({ tip: 'the tips', mesh: 'the mesh', end: 'the ends' })[key]);
      caution(
        `Heat closes the gap at ${names.join(' and ')}: rotors and casing would touch. The model leaves ${percent(LEAST_OPEN)} of it open.`,
      );
    }
  }
  return notes;
}
