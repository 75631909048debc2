import type {
  KnobName,
  Model,
  OperatingPoint,
  Outcome,
  RangeFix,
  RotorPair,
  Study,
  SupplyDemand,
  Target,
} from '../sim/index.ts';
import { matchRange, rotorPair, supplyDemand } from '../sim/index.ts';
import type { Charge } from '../sim/engine.ts';
import { failure, success } from '../sim/outcome.ts';
import type { AirLimitFound } from '../sim/study/air/find-limit.ts';
import { findLimit } from '../sim/study/air/find-limit.ts';
import type { BlowerKinds } from '../sim/study/air/blower-kinds.ts';
import { blowerKinds } from '../sim/study/air/blower-kinds.ts';
import type { FeedFigures } from '../sim/study/air/fuel-feed.ts';
import { withFeed } from '../sim/study/air/fuel-feed.ts';
import type { GainLine } from '../sim/study/air/gains-over-speed.ts';
import { gainsOverSpeed } from '../sim/study/air/gains-over-speed.ts';
import type { Snap } from '../sim/study/checks/snapped-throttle.ts';
import { snappedThrottle } from '../sim/study/checks/snapped-throttle.ts';
import type { Starting } from '../sim/study/starting/starting.ts';
import { starting } from '../sim/study/starting/starting.ts';
import type { RunningTurns } from '../sim/study/turns/running-turns.ts';
import { runningTurns } from '../sim/study/turns/running-turns.ts';
import type { SparkStudy } from '../sim/study/spark/spark-study.ts';
import { sparkStudy } from '../sim/study/spark/spark-study.ts';
import type { Aims } from '../sim/study/even/aims.ts';
import { alternatives } from '../sim/study/even/alternatives.ts';
import type { Alternatives } from '../sim/study/even/alternatives.ts';
import { evenOut } from '../sim/study/even/even-out.ts';
import type { EvenedOut } from '../sim/study/even/even-out.ts';
import { evenness } from '../sim/study/even/evenness.ts';
import type { Evenness } from '../sim/study/even/evenness.ts';
import type { AllowedMeans } from '../sim/study/even/means.ts';
import { reach } from '../sim/study/even/reach.ts';
import type { Reach } from '../sim/study/even/reach.ts';
import type { AirNeeded, WallPart } from '../sim/study/walls/air-needed.ts';
import { airNeeded } from '../sim/study/walls/air-needed.ts';
import type { CoatingEffect } from '../sim/study/walls/coating-effect.ts';
import { coatingEffect } from '../sim/study/walls/coating-effect.ts';
import type { Least } from '../sim/study/match/match-range.ts';

interface Questions {
  /** What limits the air at a point, and the plenum pressure that would do. */
  limit: { readonly asked: { readonly point: OperatingPoint }; readonly answer: AirLimitFound };
  /** What one more tooth brings, speed by speed. */
  gains: {
    readonly asked: { readonly speeds: readonly number[]; readonly throttle: number };
    readonly answer: readonly GainLine[];
  };
  supply: { readonly asked: { readonly point: OperatingPoint }; readonly answer: SupplyDemand };
  /** One thing varied until the target holds at every speed; null where nothing can be said of it. */
  fix: {
    readonly asked: {
      readonly vary: KnobName;
      readonly target: Target;
      readonly speeds: readonly number[];
      readonly throttle: number;
      /** Where the design as it is comes nearest to failing, where that is known. */
      readonly worst: Least | null;
    };
    readonly answer: RangeFix | null;
  };
  rotors: { readonly asked: object; readonly answer: RotorPair };
  /** The same point with fuel that joins the air elsewhere. */
  feed: {
    readonly asked: { readonly point: OperatingPoint; readonly feed: Charge['feed'] };
    readonly answer: FeedFigures;
  };
  /** The same engine with every kind of blower. */
  kinds: { readonly asked: { readonly point: OperatingPoint }; readonly answer: BlowerKinds };
  /** The throttle shut within an instant from a running point. */
  snap: { readonly asked: { readonly point: OperatingPoint }; readonly answer: Snap };
  /** Cranked from rest until it catches. */
  start: { readonly asked: { readonly point: OperatingPoint }; readonly answer: Starting };
  /** Followed turn by turn: which turns fire. */
  turns: { readonly asked: { readonly point: OperatingPoint }; readonly answer: RunningTurns };
  /** The spark of most torque, of the octane number, and what an even cam costs. */
  spark: { readonly asked: { readonly point: OperatingPoint }; readonly answer: SparkStudy };
  /** How unequal the cylinders are, and why. */
  evenness: { readonly asked: { readonly point: OperatingPoint }; readonly answer: Evenness };
  /** A shop list that evens them out. */
  evenOut: {
    readonly asked: {
      readonly point: OperatingPoint;
      readonly aims: Aims;
      readonly means: readonly AllowedMeans[];
    };
    readonly answer: EvenedOut;
  };
  /** Whose exhaust reaches whom. */
  reach: { readonly asked: { readonly point: OperatingPoint }; readonly answer: Reach };
  /** Ways to put the engine together. */
  alternatives: { readonly asked: { readonly point: OperatingPoint }; readonly answer: Alternatives };
  /** The air speed that holds crowns, heads or liners to a limit. */
  airNeeded: {
    readonly asked: { readonly point: OperatingPoint; readonly part: WallPart; readonly limit: number };
    readonly answer: AirNeeded;
  };
  /** Crowns with and without a ceramic layer. */
  coating: { readonly asked: { readonly point: OperatingPoint }; readonly answer: CoatingEffect };
}

export type StudyKind = keyof Questions;
export type StudyAsked<Kind extends StudyKind> = { readonly kind: Kind } & Questions[Kind]['asked'];
export type StudyAnswer<Kind extends StudyKind> = Questions[Kind]['answer'];
export type StudyQuestion = { [Kind in StudyKind]: StudyAsked<Kind> }[StudyKind];
export type AnyStudyAnswer = StudyAnswer<StudyKind>;

/** Works on a question about a model. */
export function* answerStudy(model: Model, question: StudyQuestion): Study<Outcome<AnyStudyAnswer>> {
  switch (question.kind) {
    case 'limit':
      return yield* findLimit(model, question.point);
    case 'gains':
      return success(yield* gainsOverSpeed(model, question.speeds, question.throttle));
    case 'supply':
      return yield* supplyDemand(model, question.point);
    case 'fix': {
      const { speeds, throttle, target, vary, worst } = question;
      const [found] = yield* matchRange(model, speeds, throttle, target, [vary], worst);
      return success(found ?? null);
    }
    case 'rotors': {
      const pair = rotorPair(model.engine.blower);
      return pair.ok ? pair : failure(pair.faults);
    }
    case 'feed':
      return yield* withFeed(model, question.point, question.feed);
    case 'kinds':
      return yield* blowerKinds(model, question.point);
    case 'airNeeded':
      return yield* airNeeded(model, question.point, question.part, question.limit);
    case 'coating':
      return yield* coatingEffect(model, question.point);
    case 'snap':
      return yield* snappedThrottle(model, question.point);
    case 'start':
      return yield* starting(model, question.point);
    case 'turns':
      return yield* runningTurns(model, question.point);
    case 'spark':
      return yield* sparkStudy(model, question.point);
    case 'evenness':
      return yield* evenness(model, question.point);
    case 'evenOut':
      return yield* evenOut(model, question.point, question.aims, question.means);
    case 'reach':
      return yield* reach(model, question.point);
    case 'alternatives':
      return success(yield* alternatives(model, question.point));
  }
}
