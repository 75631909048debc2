import { percent } from '../../units.ts';
import type { Undersides } from './undersides.ts';

/** Share of the swept volume from which a crankcase may be said to pump [-]. A simple crankcase-scavenged engine has 1. */
const PUMPS = 0.2;

const share = (value: number): string =>
  value < 0.0005 ? 'less than 0.1 %' : `${(value / percent).toFixed(value < 0.1 ? 1 : 0)} %`;

/** What the shares say, in a sentence or two. */
export function crankcaseSentence({ own, even }: Undersides, cylinders: number): string {
  if (cylinders === 1) return 'One piston moves its whole swept volume below it: its crankcase would pump.';
  const strongest = own.harmonics.indexOf(Math.max(...own.harmonics)) + 1;
  const order =
    strongest === 1 ? 'once a turn' : strongest === 2 ? 'twice a turn' : `${strongest} times a turn`;
  if (own.swing > PUMPS)
    return `The ${cylinders} pistons do not cancel: together they move ${share(own.swing)} of what they sweep, most of it ${order}. This crankcase pumps.`;
  const left = `What one piston takes, the others give back: all ${cylinders} together move ${share(own.swing)} of what they sweep, most of it ${order}. This crankcase pumps nothing worth having, so a blower must.`;
  return even.swing < 0.5 * own.swing
    ? `${left} Evenly spaced plain rods would leave ${share(even.swing)}; the rest comes of the articulated ones, whose strokes and dead centres differ.`
    : left;
}
