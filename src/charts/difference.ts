import { figure, percent } from './format.ts';

const signed = (value: number, text: string): string => (value > 0 ? `+${text}` : text);

/** A change of a share in percent: whole ones, below one percent a single figure so that it never reads as nothing. */
function shareText(share: number): string {
  return signed(share, Math.abs(share) < 0.01 ? `${figure(100 * share, 1)}\u202f%` : percent(share));
}

/**
 * How far a figure is from an earlier one: `+0.021 (+2 %)`. Two figures of the change; no share where the earlier one
 * is zero, where zero means nothing, as with degrees Celsius, or from tenfold on. Empty where either is missing.
 */
export function difference(now: number | null, before: number | null, relative = true): string {
  if (now === null || before === null || !Number.isFinite(now) || !Number.isFinite(before)) return '';
  const change = now - before;
  // What rounding leaves is no change.
  if (Math.abs(change) <= 1e-9 * Math.max(Math.abs(now), Math.abs(before))) return 'the same';
  const text = signed(change, figure(change, 2));
  const share = change / Math.abs(before);
  return relative && Math.abs(share) < 10 ? `${text} (${shareText(share)})` : text;
}
