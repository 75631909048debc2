import type { CrankTrain, CylinderDimensions, WindowGroup } from '../engine.ts';
import { ANGLE, LENGTH, NUMBER, VOLUME, cylinderName, rowName } from './fault-list.ts';
import type { FaultList } from './fault-list.ts';
import { clearWidth } from './window-width.ts';

export const MAX_ROWS = 4;
export const MAX_CYLINDERS_IN_ROW = 14;

/** Every number of the crank train alone: finite, of the right sign, rods long enough for the crank. */
export function checkTrain(train: CrankTrain, list: FaultList): boolean {
  const before = list.length;
  list.number('train.crankRadius', 'the crank radius', train.crankRadius, LENGTH, { above: 0 });
  list.number('train.masterRodLength', 'the master rod', train.masterRodLength, LENGTH, {
    above: Number.isFinite(train.crankRadius) ? Math.max(train.crankRadius, 0) : 0,
  });
  list.number('train.knuckleRadius', 'the knuckle-pin radius', train.knuckleRadius, LENGTH, {
    atLeast: 0,
    ...(train.masterRodLength > 0 ? { below: train.masterRodLength } : {}),
  });
  list.number('train.rows', 'the number of rows', train.rows.length, NUMBER, {
    atLeast: 1,
    atMost: MAX_ROWS,
  });
  train.rows.forEach((row, i) => {
    const path = `train.rows[${i}]`;
    const count = row.cylinders.length;
    list.number(`${path}.throwAngle`, `the throw of ${rowName(i)}`, row.throwAngle, ANGLE);
    list.number(`${path}.staggerAngle`, `the stagger of ${rowName(i)}`, row.staggerAngle, ANGLE);
    list.number(`${path}.cylinders`, `the number of cylinders of ${rowName(i)}`, count, NUMBER, {
      atLeast: 1,
      atMost: MAX_CYLINDERS_IN_ROW,
    });
    list.number(`${path}.master`, `the index of the master of ${rowName(i)}`, row.master, NUMBER, {
      whole: true,
      atLeast: 0,
      below: Math.max(count, 1),
    });
    row.cylinders.forEach((cylinder, j) => {
      const at = `${path}.cylinders[${j}]`;
      const of = `of ${cylinderName(i, j)}`;
      list.number(`${at}.axisAngle`, `the axis angle ${of}`, cylinder.axisAngle, ANGLE);
      if (j !== row.master) {
        list.number(`${at}.knuckleAngle`, `the knuckle-pin angle ${of}`, cylinder.knuckleAngle, ANGLE);
        if (cylinder.knuckleRadius !== null)
          list.number(`${at}.knuckleRadius`, `the knuckle-pin radius ${of}`, cylinder.knuckleRadius, LENGTH, {
            atLeast: 0,
            ...(train.masterRodLength > 0 ? { below: train.masterRodLength } : {}),
          });
        list.number(`${at}.rodLength`, `the rod ${of}`, cylinder.rodLength, LENGTH, { above: 0 });
      }
      list.number(`${at}.barrelOffset`, `the barrel offset ${of}`, cylinder.barrelOffset, LENGTH);
      list.number(`${at}.headVolume`, `the head volume ${of}`, cylinder.headVolume, VOLUME);
      list.number(`${at}.exhaustTrim`, `the exhaust trim ${of}`, cylinder.exhaustTrim, LENGTH);
      list.number(`${at}.transferTrim`, `the transfer trim ${of}`, cylinder.transferTrim, LENGTH);
      list.number(`${at}.sparkAdvance`, `the spark advance ${of}`, cylinder.sparkAdvance, ANGLE);
    });
  });
  return list.length === before;
}

export function checkCylinder(cylinder: CylinderDimensions, list: FaultList): boolean {
  const before = list.length;
  list.number('cylinder.bore', 'the bore', cylinder.bore, LENGTH, { above: 0 });
  list.number('cylinder.compressionRatio', 'the compression ratio', cylinder.compressionRatio, NUMBER, {
    above: 1,
  });
  list.number('cylinder.deckClearance', 'the deck clearance', cylinder.deckClearance, LENGTH);
  return list.length === before;
}

/**
 * One window group by itself. Widths are held against the bore if that is known.
 *
 * @param path - of the group, such as `windows.exhaust[0]`
 * @param name - for people, such as `exhaust window 1`
 * @param bore - [m], or NaN while it is itself at fault
 */
export function checkWindow(
  path: string,
  name: string,
  group: WindowGroup,
  bore: number,
  list: FaultList,
): boolean {
  const before = list.length;
  const quarterTurn = 0.5 * Math.PI;
  list.number(`${path}.count`, `the count of ${name}`, group.count, NUMBER, { whole: true, atLeast: 1 });
  const widest = group.widthAlong === 'chord' ? bore : quarterTurn * bore;
  const widthOk = list.number(`${path}.width`, `the width of ${name}`, group.width, LENGTH, {
    above: 0,
    ...(bore > 0 ? { atMost: widest } : {}),
  });
  const bridgeLimit = widthOk && bore > 0 ? clearWidth({ ...group, bridgeWidth: 0 }, bore) : Infinity;
  const bridgeOk = list.number(`${path}.bridgeWidth`, `the bridge of ${name}`, group.bridgeWidth, LENGTH, {
    atLeast: 0,
    ...(bridgeLimit < Infinity ? { below: bridgeLimit } : {}),
  });
  list.number(`${path}.cornerRadius`, `the corner radius of ${name}`, group.cornerRadius, LENGTH, {
    atLeast: 0,
    ...(bridgeOk && bridgeLimit < Infinity ? { atMost: 0.5 * clearWidth(group, bore) } : {}),
  });
  if (group.top.kind === 'depth')
    list.number(`${path}.top.depth`, `the top edge of ${name} below the deck`, group.top.depth, LENGTH);
  else
    list.number(`${path}.top.opensAfterTdc`, `the opening of ${name}`, group.top.opensAfterTdc, ANGLE, {
      above: 0,
      below: Math.PI,
    });
  if (group.floorDepth !== null)
    list.number(`${path}.floorDepth`, `the floor of ${name} below the deck`, group.floorDepth, LENGTH);
  const slant = { above: -quarterTurn, below: quarterTurn };
  list.number(`${path}.planAngle`, `the plan angle of ${name}`, group.planAngle, ANGLE, slant);
  list.number(`${path}.elevationAngle`, `the elevation angle of ${name}`, group.elevationAngle, ANGLE, slant);
  return list.length === before;
}
