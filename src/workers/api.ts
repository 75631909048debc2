/**
 * The whole contract between the page and the workers: plain data in, values out. An expected failure is a reply
 * like any other; only a bug throws.
 */
import type { Engine, Fault, OperatingPoint, SolvedPoint, SolvedStart, UnsolvedPoint } from '../sim/index.ts';
import type { AnyStudyAnswer, StudyQuestion } from './study-questions.ts';

export interface PointRequest {
  /** Never used twice by one client: a reply or a report belongs to the request of the same number. */
  readonly runId: number;
  readonly engine: Engine;
  /** Equal numbers promise equal engines, so that a worker can keep the model it built last. */
  readonly engineId: number;
  readonly operating: OperatingPoint;
  /**
   * Where to go on from: a neighbour's solution, or null for the cold start. It travels with the request, so that the
   * reply depends on the request alone and not on what the worker did before. A neighbour that leads to no answer
   * gives way to the cold start.
   */
  readonly start: SolvedStart | null;
  /** Also wants preliminary figures on the way, once, as soon as they are worth a glance. */
  readonly preview: boolean;
}

/** The result's traces arrive by transfer: whoever gets the reply owns them. */
export type PointReply =
  | {
      readonly runId: number;
      readonly status: 'solved';
      readonly result: SolvedPoint;
      /** What a later request may start from. */
      readonly next: SolvedStart | null;
    }
  | {
      readonly runId: number;
      readonly status: 'unsolved';
      readonly reason: string;
      readonly result: UnsolvedPoint;
    }
  | { readonly runId: number; readonly status: 'dropped'; readonly reason: string }
  | {
      readonly runId: number;
      readonly status: 'refused';
      readonly reason: string;
      readonly faults: readonly Fault[];
    }
  | { readonly runId: number; readonly status: 'broken'; readonly reason: string };

/** Said between turns: periods stepped so far, and the largest relative change over the last one. */
export interface TurnReport {
  readonly runId: number;
  readonly cycle: number;
  readonly change: number;
  /** Preliminary figures, once, where they were asked for; they arrive by transfer, too. */
  readonly preview: SolvedPoint | null;
  /** With the preview: what a later request may start from. */
  readonly near: SolvedStart | null;
}

/** A question that takes many points: see study-questions.ts. */
export interface StudyRequest {
  readonly runId: number;
  readonly engine: Engine;
  readonly engineId: number;
  readonly question: StudyQuestion;
}

export type StudyReply =
  | { readonly runId: number; readonly status: 'answered'; readonly answer: AnyStudyAnswer }
  | { readonly runId: number; readonly status: 'dropped' | 'broken'; readonly reason: string }
  | {
      readonly runId: number;
      readonly status: 'refused';
      readonly reason: string;
      readonly faults: readonly Fault[];
    };

/** Said between turns: what a study is at. */
export interface StudyReport {
  readonly runId: number;
  readonly doing: string;
}

/** What a worker offers. The remote side of each method returns a promise. */
export interface SimService {
  /** Where reports between turns go; once per worker. */
  watch(listener: (report: TurnReport) => void): void;
  watchStudies(listener: (report: StudyReport) => void): void;
  solve(request: PointRequest): Promise<PointReply>;
  study(request: StudyRequest): Promise<StudyReply>;
  /** Ends a run at its next turn; it then replies `dropped`. A run that is unknown or over is no fault. */
  drop(runId: number): void;
}
