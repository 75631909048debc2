import { HELP } from '../help.ts';
import { SOLVED } from '../streams.ts';
import type { Streams } from '../streams.ts';
import type { StudyName } from '../study-names.ts';
import { runEven } from './even/run-even.ts';
import { runAir } from './run-air.ts';
import { runBackfire } from './run-backfire.ts';
import { runBlowers } from './run-blowers.ts';
import { runFit } from './run-fit.ts';
import { runLeak } from './run-leak.ts';
import { runMatch } from './run-match.ts';
import { runPulses } from './run-pulses.ts';
import { runRotors } from './run-rotors.ts';
import { runSpark } from './run-spark.ts';
import { runStart } from './run-start.ts';
import { runTurns } from './run-turns.ts';
import { runWalls } from './run-walls.ts';

const STUDIES: Readonly<Record<StudyName, (argv: readonly string[], streams: Streams) => number>> = {
  air: runAir,
  match: runMatch,
  even: runEven,
  fit: runFit,
  pulses: runPulses,
  rotors: runRotors,
  leak: runLeak,
  backfire: runBackfire,
  start: runStart,
  turns: runTurns,
  walls: runWalls,
  blowers: runBlowers,
  spark: runSpark,
};

export const isStudy = (name: string | undefined): name is StudyName =>
  name !== undefined && Object.hasOwn(STUDIES, name);

/** Runs a study from its command line, its name first; returns the exit code. */
export function runStudy(argv: readonly string[], streams: Streams): number {
  const [name, ...rest] = argv;
  if (rest.includes('--help') || rest.includes('-h')) {
    streams.out(HELP);
    return SOLVED;
  }
  return STUDIES[name as StudyName](rest, streams);
}
