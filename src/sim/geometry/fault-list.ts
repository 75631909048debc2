import type { Fault } from '../outcome.ts';
import { cc, deg, mm } from '../units.ts';

/** A unit to show a value in: its symbol and its size in base SI. */
export interface ShownUnit {
  readonly symbol: string;
  readonly size: number;
}
export const LENGTH: ShownUnit = { symbol: ' mm', size: mm };
export const VOLUME: ShownUnit = { symbol: ' cc', size: cc };
export const ANGLE: ShownUnit = { symbol: '°', size: deg };
export const NUMBER: ShownUnit = { symbol: '', size: 1 };

export interface Limits {
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
  readonly whole?: boolean;
}

/** Six significant digits, in the unit people use. */
export const show = (value: number, unit: ShownUnit): string =>
  `${Number((value / unit.size).toPrecision(6))}${unit.symbol}`;

export const rowName = (rowIndex: number): string => `row ${String.fromCharCode(65 + rowIndex)}`;
export const cylinderName = (rowIndex: number, cylinderIndex: number): string =>
  `cylinder ${cylinderIndex + 1} of ${rowName(rowIndex)}`;

/** Gathers what is wrong, so that all of it is told at once. */
export class FaultList {
  readonly faults: Fault[] = [];

  get length(): number {
    return this.faults.length;
  }

  add(path: string, message: string): void {
    this.faults.push({ path, message });
  }

  /** Adds a fault unless `value` is finite and within the limits; returns whether it is. */
  number(path: string, name: string, value: number, unit: ShownUnit, limits: Limits = {}): boolean {
    const ok =
      Number.isFinite(value) &&
      value > (limits.above ?? -Infinity) &&
      value >= (limits.atLeast ?? -Infinity) &&
      value < (limits.below ?? Infinity) &&
      value <= (limits.atMost ?? Infinity) &&
      (!limits.whole || Number.isInteger(value));
    if (!ok) this.add(path, `${name} is ${show(value, unit)}: it must be ${allowed(value, limits, unit)}`);
    return ok;
  }
}

function allowed(value: number, limits: Limits, unit: ShownUnit): string {
  const kinds: string[] = [];
  if (!Number.isFinite(value)) kinds.push('a finite number');
  if (limits.whole) kinds.push('a whole number');
  const bounds: string[] = [];
  if (limits.above !== undefined) bounds.push(`above ${show(limits.above, unit)}`);
  if (limits.atLeast !== undefined) bounds.push(`at least ${show(limits.atLeast, unit)}`);
  if (limits.below !== undefined) bounds.push(`below ${show(limits.below, unit)}`);
  if (limits.atMost !== undefined) bounds.push(`at most ${show(limits.atMost, unit)}`);
  return [...kinds, ...(bounds.length > 0 ? [bounds.join(' and ')] : [])].join(', ');
}
