/** What the rest of the project may use of the model. */
export type { Engine } from './engine.ts';
export type { Fault, Outcome } from './outcome.ts';
export type { Model } from './cycle/model.ts';
export { buildModel } from './cycle/model.ts';
export type { OperatingPoint } from './cycle/operating-point.ts';
export type { Progress, Solution, SolvedStart, SolveOptions } from './cycle/solve.ts';
export { solve, solvePoint, solveToEnd } from './cycle/solve.ts';
export type { Turn, TurnsEnd } from './study/turn-by-turn.ts';
export { turnByTurn } from './study/turn-by-turn.ts';
export type * from './results/point-result.ts';
