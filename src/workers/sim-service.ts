import type { Engine, OperatingPoint, Outcome, Progress, Solution, SolveOptions } from '../sim/index.ts';
import type { PointReply, PointRequest, SimService, TurnReport } from './api.ts';

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
export function createSimService<Model>(solver: Solver<Model>, pace: Pace): SimService {
  let listener: (report: TurnReport) => void = () => undefined;
  let kept: { readonly engineId: number; readonly outcome: Outcome<Model> } | null = null;
  let wanted = Number.NaN;
  let tail: Promise<unknown> = Promise.resolve();

  function modelFor(request: PointRequest): Outcome<Model> {
    if (kept?.engineId !== request.engineId) {
      kept = { engineId: request.engineId, outcome: solver.build(request.engine) };
    }
    return kept.outcome;
  }

  async function run(request: PointRequest): Promise<PointReply> {
    const { runId } = request;
    const dropped: PointReply = { runId, status: 'dropped', reason: 'Something newer was asked for.' };
    if (wanted !== runId) return dropped;
    const model = modelFor(request);
    if (!model.ok) {
      const reason = model.faults.map((fault) => fault.message).join(' ');
      return { runId, status: 'refused', reason, faults: model.faults };
    }
    const { operating, preview } = request;
    let { start } = request;
    let turns = solver.solve(model.value, operating, { start, preview });
    let stretchBegan = pace.now();
    for (;;) {
      const turn = turns.next();
      if (turn.done) {
        if (turn.value.result.converged || start === null) return replyOf(runId, turn.value);
        start = null;
        turns = solver.solve(model.value, operating, { start, preview });
        continue;
      }
      const { cycle, change, preview: glance = null, near = null } = turn.value;
      if (glance === null && pace.now() - stretchBegan < pace.longestStretch_ms) continue;
      listener({ runId, cycle, change, preview: glance, near });
      await pace.breathe();
      if (wanted !== runId) return dropped;
      stretchBegan = pace.now();
    }
  }

  return {
    watch(next) {
      listener = next;
    },
    solve(request) {
      wanted = request.runId;
      const reply = tail.then(() => run(request));
      tail = reply.catch(() => undefined);
      return reply;
    },
    drop(runId) {
      if (wanted === runId) wanted = Number.NaN;
    },
  };
}

const replyOf = (runId: number, { result, next }: Solution): PointReply =>
  result.converged
    ? { runId, status: 'solved', result, next }
    : { runId, status: 'unsolved', reason: result.reason, result };
