import type { WindowGroup, Windows } from '../../sim/engine.ts';
import { nominal } from '../../sim/exchange/discharge-table.ts';
import type { Si } from './si.ts';

export function windowsOf({ windows }: Si): Windows {
  const { exhaust, transfer, exhaustTable, transferTable } = windows;
  return {
    exhaust: exhaust.map(windowGroup),
    transfer: transfer.map(windowGroup),
    exhaustDischarge: exhaustTable ? nominal(exhaustTable) : windows.exhaustDischarge,
    transferDischarge: transferTable ? nominal(transferTable) : windows.transferDischarge,
    exhaustTable,
    transferTable,
  };
}

function windowGroup(group: Si['windows']['exhaust'][number]): WindowGroup {
  return {
    count: group.count,
    width: group.width,
    widthAlong: group.widthAlong,
    bridgeWidth: group.bridge,
    top:
      group.top !== undefined
        ? { kind: 'depth', depth: group.top }
        : { kind: 'angle', opensAfterTdc: group.opens ?? NaN },
    floorDepth: group.floor ?? null,
    cornerRadius: group.corner,
    planAngle: group.plan,
    elevationAngle: group.elevation,
  };
}
