import { appendFileSync, closeSync, existsSync, openSync, truncateSync } from 'node:fs';
import { failure, success } from '../../sim/outcome.ts';
import type { Outcome } from '../../sim/outcome.ts';
import { readAnswer } from './answer-line.ts';
import type { Answer, Standing } from './answer-line.ts';
import { readLines } from './read-lines.ts';

export type Tally = Record<Standing, number>;

/** The answers of a study, on the disk line by line. In memory: names that were there before, and how many ended how. */
export class AnswersFile {
  readonly #file: number;

  private constructor(
    path: string,
    readonly before: ReadonlySet<string>,
    readonly tally: Tally,
  ) {
    this.#file = openSync(path, 'a');
  }

  /**
   * Opens a file of answers to go on with, or a new one. A last line that was torn when its writer was killed is cut off.
   *
   * @param asked - names that the study has; an answer to anything else means that the file belongs to another study
   */
  static async open(path: string, asked: ReadonlyMap<string, unknown>): Promise<Outcome<AnswersFile>> {
    const names = new Set<string>();
    const tally: Tally = { solved: 0, unsolved: 0, faulty: 0 };
    const refuse = (number: number, what: string) =>
      failure([{ path: `${path}, line ${number}`, message: `${what}; move the file or give another --out` }]);
    let torn: number | null = null;
    let sound = 0;
    for await (const { number, text, end, whole } of existsSync(path) ? readLines(path) : []) {
      if (torn !== null) return refuse(torn, 'is not an answer');
      const answer = whole ? readAnswer(text) : null;
      if (answer === null) {
        torn = number;
        continue;
      }
      sound = end;
      if (!asked.has(answer.name))
        return refuse(number, `answers “${answer.name}”, which the study does not ask`);
      if (names.has(answer.name)) return refuse(number, `answers “${answer.name}” once more`);
      names.add(answer.name);
      tally[answer.standing] += 1;
    }
    if (torn !== null) truncateSync(path, sound);
    return success(new AnswersFile(path, names, tally));
  }

  /** Appends an answer in one piece. */
  add({ text, standing }: Answer): void {
    appendFileSync(this.#file, `${text}\n`);
    this.tally[standing] += 1;
  }

  close(): void {
    closeSync(this.#file);
  }
}
