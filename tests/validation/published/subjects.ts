import { blower } from './blower.ts';
import { burning } from './burning.ts';
import type { Subject } from './comparison.ts';
import { crankTrain } from './crank-train.ts';
import { energy } from './energy.ts';
import { fire } from './fire.ts';
import { flow } from './flow.ts';
import { friction } from './friction.ts';
import { gas } from './gas.ts';
import { heat } from './heat.ts';
import { scavenging } from './scavenging.ts';

/** Everything that is held against print, in the order of docs/validation.md. A new file of comparisons is one line here. */
export const subjects = (): readonly Subject[] => [
  blower(),
  flow(),
  gas(),
  heat(),
  scavenging(),
  crankTrain(),
  burning(),
  fire(),
  friction(),
  energy(),
];
