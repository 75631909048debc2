import type { GasWorkPart } from './gas-work.ts';

/** What each part is called. */
export const GAS_WORK_LABELS: Readonly<Record<GasWorkPart, string>> = {
  rings: 'rings and pistons',
  bearings: 'bearings',
  windage: 'windage',
  oilPump: 'oil pump',
  starter: 'starter or generator',
  blowerGas: 'blower, on its gas',
  blowerDrag: 'blower’s gears and drag',
  crankcase: 'pumping of the crankcase',
  outputGears: 'output gears',
  brake: 'left at the output shaft',
};

/** Which form of friction is in use. */
export const FRICTION_LAWS = {
  'four terms': 'four terms after Chen & Flynn, with constants for rolling bearings',
  'stroke times speed': 'Blair’s line of rolling bearings, 105 Pa for each metre of stroke and turn a minute',
} as const;
