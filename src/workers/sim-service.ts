import type {
  Engine,
  Fault,
  OperatingPoint,
  Outcome,
  Progress,
  Solution,
  SolveOptions,
  Study,
} from '../sim/index.ts';
import type {
  PointReply,
  PointRequest,
  SimService,
  StudyReply,
  StudyReport,
  StudyRequest,
  TurnReport,
} from './api.ts';
import type { AnyStudyAnswer, StudyQuestion } from './study-questions.ts';

/** What the service needs of the model; a test hands in a fake. */
export interface Solver<Model> {
  build(engine: Engine): Outcome<Model>;
  /** Yields after every period stepped. */
  solve(
    model: Model,
    operating: OperatingPoint,
    options: Pick<SolveOptions, 'start' | 'preview'>,
  ): Generator<Progress, Solution>;
}

/** Works on a study of a model, yielding as it goes. */
export type Student<Model> = (model: Model, question: StudyQuestion) => Study<Outcome<AnyStudyAnswer>>;

const learnsNothing: Student<unknown> = () => {
  throw new Error('this service takes no studies');
};

export interface Pace {
  /** Milliseconds, from any origin. */
  now(): number;
  /** Lets waiting messages in. */
  breathe(): Promise<void>;
  /** Longest stretch of work between two breaths [ms]. */
  readonly longestStretch_ms: number;
}

/**
 * One run at a time, step by step, letting messages in between turns. A new request drops the one before it: the
 * model's buffers serve one run, and whoever asks again no longer wants the old answer.
 */
export function createSimService<Model>(
  solver: Solver<Model>,
  pace: Pace,
  student: Student<Model> = learnsNothing,
): SimService {
  let listener: (report: TurnReport) => void = () => undefined;
  let studyListener: (report: StudyReport) => void = () => undefined;
  let kept: { readonly engineId: number; readonly outcome: Outcome<Model> } | null = null;
  let wanted = Number.NaN;
  let tail: Promise<unknown> = Promise.resolve();

  function modelFor(request: PointRequest | StudyRequest): Outcome<Model> {
    if (kept?.engineId !== request.engineId) {
      kept = { engineId: request.engineId, outcome: solver.build(request.engine) };
    }
    return kept.outcome;
  }

  async function run(request: PointRequest): Promise<PointReply> {
    const { runId } = request;
    const dropped: PointReply = { runId, status: 'dropped', reason: newer };
    if (wanted !== runId) return dropped;
    const model = modelFor(request);
    if (!model.ok) return refused(runId, model.faults);
    const { operating, preview, start } = request;
    const turns = solver.solve(model.value, operating, { start, preview });
    let stretchBegan = pace.now();
    for (;;) {
      const turn = turns.next();
      if (turn.done) {
        return replyOf(runId, turn.value);
      }
      const { cycle, change, preview: glance = null, near = null } = turn.value;
      if (glance === null && pace.now() - stretchBegan < pace.longestStretch_ms) continue;
      listener({ runId, cycle, change, preview: glance, near });
      await pace.breathe();
      if (wanted !== runId) return dropped;
      stretchBegan = pace.now();
    }
  }

  async function learn({ runId, question, ...request }: StudyRequest): Promise<StudyReply> {
    const dropped: StudyReply = { runId, status: 'dropped', reason: newer };
    if (wanted !== runId) return dropped;
    const model = modelFor({ runId, question, ...request });
    if (!model.ok) return refused(runId, model.faults);
    const steps = student(model.value, question);
    let stretchBegan = pace.now();
    for (;;) {
      const step = steps.next();
      if (step.done) {
        const answer = step.value;
        return answer.ok
          ? { runId, status: 'answered', answer: answer.value }
          : refused(runId, answer.faults);
      }
      if (pace.now() - stretchBegan < pace.longestStretch_ms) continue;
      studyListener({ runId, doing: step.value.doing });
      await pace.breathe();
      if (wanted !== runId) return dropped;
      stretchBegan = pace.now();
    }
  }

  /** After whatever runs, which a newer request lets go at its next turn. */
  function next<Reply>(runId: number, work: () => Promise<Reply>): Promise<Reply> {
    wanted = runId;
    const reply = tail.then(work);
    tail = reply.catch(() => undefined);
    return reply;
  }

  return {
    watch(heard) {
      listener = heard;
    },
    watchStudies(heard) {
      studyListener = heard;
    },
    solve: (request) => next(request.runId, () => run(request)),
    study: (request) => next(request.runId, () => learn(request)),
    drop(runId) {
      if (wanted === runId) wanted = Number.NaN;
    },
  };
}

const newer = 'Something newer was asked for.';

const refused = (runId: number, faults: readonly Fault[]) => ({
  runId,
  status: 'refused' as const,
  reason: faults.map((fault) => fault.message).join(' '),
  faults,
});

const replyOf = (runId: number, { result, next }: Solution): PointReply =>
  result.converged
    ? { runId, status: 'solved', result, next }
    : { runId, status: 'unsolved', reason: result.reason, result };
