import { describe, expect, it } from 'vitest';
import { finishStudy } from '../../../../src/sim/index.ts';
import { alternatives } from '../../../../src/sim/study/even/alternatives.ts';
import { candidates } from '../../../../src/sim/study/even/candidates.ts';
import { tradeOffs } from '../../../../src/sim/study/even/trade-offs.ts';
import { at, modelOf, presetEngine } from '../../../helpers/engines.ts';

const angelica = modelOf(presetEngine('angelica-14'));
const wanted = ['as built', '0.00/0.00 180.00/0.00', '0.00/0.00 0.00/25.71', '0.00/0.00 180.00/25.71'];
const { ways } = finishStudy(
  alternatives(
    angelica,
    at(6000),
    candidates(angelica).filter(({ key }) => wanted.includes(key)),
  ),
);
const measured = (key: string) => ways.find((way) => way.key === key)!.measures!;
const [built, inLine, onePin, opposed] = wanted.map(measured) as [
  ReturnType<typeof measured>,
  ReturnType<typeof measured>,
  ReturnType<typeof measured>,
  ReturnType<typeof measured>,
];

describe('tradeOffs', () => {
  it('shows why Angelica 14 is staggered: barrels in line fire as evenly but stand behind each other', () => {
    expect(inLine.torqueRipple).toBeCloseTo(built.torqueRipple, 2);
    expect(inLine.hiddenBarrels).toBe(1);
    expect(built.hiddenBarrels).toBeLessThan(1e-6);
    const found = tradeOffs(ways).find(({ way }) => way.key === wanted[1])!;
    expect(found.better).toContain('pinImbalance');
    expect(found.worse).toContain('hiddenBarrels');
  });

  it('shows why its pins are not quite opposed: opposed ones fire the rows in pairs, half again as much ripple', () => {
    expect(opposed.largestGap).toBeGreaterThan(1.3 * built.largestGap);
    expect(opposed.torqueRipple).toBeGreaterThan(1.5 * built.torqueRipple);
    expect(opposed.pinImbalance).toBeLessThan(1e-9);
  });

  it('shows why it has two pins: on one pin the rows’ rotating forces add', () => {
    expect(onePin.pinImbalance).toBeCloseTo(1, 12);
    expect(built.pinImbalance).toBeCloseTo(Math.abs(Math.cos((205.714285714 * Math.PI) / 360)), 9);
    expect(tradeOffs(ways).find(({ way }) => way.key === wanted[2])!.worse).toContain('pinImbalance');
  });
});
