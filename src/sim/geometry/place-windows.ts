import type { RowCylinder, WindowGroup } from '../engine.ts';
import { ANGLE, LENGTH, cylinderName, show } from './fault-list.ts';
import type { FaultList } from './fault-list.ts';
import type { TrainCylinder } from './solve-train.ts';
import type { WindowInCylinder } from './window-profile.ts';
import { clearWidth, developedWidth, slantFactor } from './window-width.ts';

/** A piston with its deck: depths of the crown edge below the deck at its own dead centres [m]. */
export interface DeckedCylinder extends TrainCylinder {
  readonly design: RowCylinder;
  readonly depthAtTdc: number;
  readonly depthAtBdc: number;
}

/** The nominal master: row A's, without barrel offset or trim. Angles of windows are counted on it. */
export interface NominalMaster {
  readonly cylinder: TrainCylinder;
  readonly deckClearance: number;
}

/** Round-off allowed where two typed lengths may meet exactly, share of the length. */
const SLACK = 1e-9;

/** Top edge below the deck, before trim [m]: typed, or where the nominal master's crown stands at the opening angle. */
export function nominalTopDepth(group: WindowGroup, master: NominalMaster): number {
  if (group.top.kind === 'depth') return group.top.depth;
  const { motion, topPin, topHeight } = master.cylinder;
  motion.evaluate(topPin + group.top.opensAfterTdc);
  return master.deckClearance + topHeight - motion.height;
}

/** Floor below the deck [m]: typed, or flush with the nominal master's crown at bottom dead centre. */
export function floorDepth(group: WindowGroup, master: NominalMaster): number {
  return group.floorDepth ?? master.deckClearance + master.cylinder.topHeight - master.cylinder.bottomHeight;
}

/**
 * One window group in every cylinder, trim included; null, with faults told, if it does not fit one of them.
 *
 * The top edge must stand within the stroke of every cylinder and above the floor, and the corners must fit the height
 * that the trim leaves. A typed floor may not lie deeper than any crown goes; what a single cylinder's crown does not
 * reach simply never opens there.
 */
export function placeWindow(
  path: string,
  name: string,
  group: WindowGroup,
  trim: 'exhaustTrim' | 'transferTrim',
  cylinders: readonly DeckedCylinder[],
  master: NominalMaster,
  bore: number,
  list: FaultList,
): readonly WindowInCylinder[] | null {
  const before = list.length;
  const top = nominalTopDepth(group, master);
  const floor = floorDepth(group, master);
  const topPath = group.top.kind === 'depth' ? `${path}.top.depth` : `${path}.top.opensAfterTdc`;
  const opening = group.top.kind === 'angle' ? ` (opening at ${show(group.top.opensAfterTdc, ANGLE)})` : '';
  const where = `the top edge of ${name}, ${show(top, LENGTH)} below the deck${opening},`;
  const named = (those: readonly DeckedCylinder[]): string =>
    those.map((one) => cylinderName(one.rowIndex, one.cylinderIndex)).join(', ');

  const outside = cylinders.filter((one) => {
    const depth = top + one.design[trim];
    return !(depth > one.depthAtTdc && depth < one.depthAtBdc);
  });
  if (outside.length > 0) {
    const high = Math.max(...cylinders.map((one) => one.depthAtTdc - one.design[trim]));
    const low = Math.min(...cylinders.map((one) => one.depthAtBdc - one.design[trim]));
    const remedy =
      high < low
        ? `to suit all cylinders it must lie between ${show(high, LENGTH)} and ${show(low, LENGTH)}`
        : 'no one depth suits all cylinders with these trims and barrels';
    list.add(topPath, `${where} lies outside the stroke of ${named(outside)}: ${remedy}`);
  }

  const upsideDown = cylinders.filter((one) => !(top + one.design[trim] < floor));
  if (upsideDown.length > 0)
    list.add(
      topPath,
      `${where} is not above the floor in ${named(upsideDown)}: with the trim it must be above ${show(floor, LENGTH)}`,
    );

  const deepest = Math.max(
    floorDepth({ ...group, floorDepth: null }, master),
    ...cylinders.map((one) => one.depthAtBdc),
  );
  if (group.floorDepth !== null && floor > deepest * (1 + SLACK))
    list.add(
      `${path}.floorDepth`,
      `the floor of ${name} is ${show(floor, LENGTH)} below the deck: no crown goes deeper than ${show(deepest, LENGTH)}, ` +
        'and it must not lie below that',
    );

  const tight = cylinders.filter(
    (one) => group.cornerRadius > 0.5 * (floor - top - one.design[trim]) * (1 + SLACK),
  );
  if (tight.length > 0 && upsideDown.length === 0) {
    const lowest = Math.min(...cylinders.map((one) => floor - top - one.design[trim]));
    list.add(
      `${path}.cornerRadius`,
      `the corner radius of ${name} is ${show(group.cornerRadius, LENGTH)}: in ${named(tight)} it must be at most half ` +
        `the window's height, ${show(0.5 * lowest, LENGTH)}`,
    );
  }

  if (list.length > before) return null;
  return cylinders.map((one) => ({
    count: group.count,
    clearWidth: clearWidth(group, bore),
    topDepth: top + one.design[trim],
    floorDepth: floor,
    cornerRadius: group.cornerRadius,
    slantFactor: slantFactor(group),
  }));
}

/** A group's place in one cylinder, for the sum of widths. */
interface Belt {
  readonly topDepth: number;
  readonly floorDepth: number;
  readonly width: number;
}

/** All windows that share a height must fit round the bore: bridges between windows may shrink to nothing, not below. */
export function checkWidthSum(
  cylinders: readonly DeckedCylinder[],
  groups: readonly { readonly group: WindowGroup; readonly placed: readonly WindowInCylinder[] }[],
  bore: number,
  list: FaultList,
): void {
  const around = Math.PI * bore;
  let widest = 0;
  let at: DeckedCylinder | undefined;
  cylinders.forEach((cylinder, i) => {
    const belts: Belt[] = groups.map(({ group, placed }) => ({
      topDepth: placed[i]!.topDepth,
      floorDepth: placed[i]!.floorDepth,
      width: group.count * developedWidth(group, bore),
    }));
    for (const { topDepth } of belts) {
      const sum = belts
        .filter((belt) => belt.topDepth <= topDepth && topDepth < belt.floorDepth)
        .reduce((total, belt) => total + belt.width, 0);
      if (sum > widest) {
        widest = sum;
        at = cylinder;
      }
    }
  });
  if (at && widest > around * (1 + SLACK))
    list.add(
      'windows',
      `the windows that share a height in ${cylinderName(at.rowIndex, at.cylinderIndex)} take ${show(widest, LENGTH)} ` +
        `round the bore: together they must take at most its circumference, ${show(around, LENGTH)}`,
    );
}
