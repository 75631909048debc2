import type { Design } from '../schema/design.ts';
import { fault } from './cross-fault.ts';
import type { CrossFault } from './cross-fault.ts';

export function* scavengingTable({ windows }: Design): Generator<CrossFault> {
  const { law, inside, leaving } = windows.scavenging;
  if (law !== 'table') return;
  const at = 'windows.scavenging';
  const uses = [`${at}.law`, `${at}.inside`, `${at}.leaving`];
  for (const [key, list] of [
    ['inside', inside],
    ['leaving', leaving],
  ] as const) {
    const path = `${at}.${key}`;
    if (!list || list.length < 2) {
      yield fault(
        path,
        `the law is “table”, which needs at least two numbers here, not ${list?.length ?? 0}`,
        ...uses,
      );
      continue;
    }
    if (list[0] !== 0 || list.at(-1) !== 1) {
      yield fault(path, `runs from ${list[0]} to ${list.at(-1)}; allowed: from 0 to 1`, ...uses);
    }
    const fallsAt = list.findIndex(
      (value, i) => i > 0 && (value < list[i - 1]! || (key === 'inside' && value === list[i - 1])),
    );
    if (fallsAt > 0) {
      const rule = key === 'inside' ? 'each above the one before' : 'none below the one before';
      yield fault(path, `${list[fallsAt]} follows ${list[fallsAt - 1]}; allowed: ${rule}`, ...uses);
    }
  }
  if (inside && leaving && inside.length !== leaving.length) {
    yield fault(
      `${at}.leaving`,
      `has ${leaving.length} numbers; allowed: as many as inside, ${inside.length}`,
      ...uses,
    );
  }
}
