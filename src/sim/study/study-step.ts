/** What a study is at; yielded after every period, so that whoever drives it may stop it. */
export interface StudyStep {
  readonly doing: string;
}

/** A study: yields while it works, returns its answer. */
export type Study<T> = Generator<StudyStep, T>;

/** Runs a study to its end. */
export function finishStudy<T>(study: Generator<unknown, T>): T {
  for (;;) {
    const step = study.next();
    if (step.done) return step.value;
  }
}

/** Passes a solver's periods on as steps of a study. */
export function* doing<T>(what: string, run: Generator<unknown, T>): Study<T> {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
    yield { doing: what };
  }
}
