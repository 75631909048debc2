import { describe, expect, it } from 'vitest';
import {
  atLimitText,
  beforeAndAfter,
  shopColumns,
  spreadText,
} from '../../../../src/app/pages/even/shop-list.ts';
import { UNIT_SETS } from '../../../../src/app/units/shown-units.ts';
import { USUAL_AIMS } from '../../../../src/sim/study/even/aims.ts';
import type { EvenedOut } from '../../../../src/sim/study/even/even-out.ts';
import { usualMeans } from '../../../../src/sim/study/even/means.ts';
import { SHARE_FIGURES } from '../../../../src/sim/study/even/share-figures.ts';
import type { CylinderShare, ShareFigure } from '../../../../src/sim/study/even/share-figures.ts';
import { deg, mm } from '../../../../src/sim/units.ts';

const [metric] = UNIT_SETS;
const labels = ['A1', 'A2'];

/** One in every figure, but for those named. */
const share = (own: Partial<Record<ShareFigure, number>>): CylinderShare => ({
  row: 1,
  number: 1,
  tdc: 0,
  bdc: 0,
  ...(Object.fromEntries(SHARE_FIGURES.map((each) => [each, 1])) as Record<ShareFigure, number>),
  ...own,
});

const spacer = { cylinder: 1, means: 'barrel', from: 0, to: 0.2 * mm } as const;
const found: EvenedOut = {
  speed: 1,
  throttle: 1,
  aims: USUAL_AIMS,
  means: [usualMeans('barrel')],
  items: [spacer],
  before: [
    share({ trappedMass: 0.95, exhaustOpening: 90 * deg }),
    share({ trappedMass: 1.05, exhaustOpening: 92.5 * deg }),
  ],
  after: [share({}), share({})],
  deck: [0.8 * mm, 0.6 * mm],
  reached: true,
  atLimit: [spacer],
};

describe('shopColumns', () => {
  it('says of each cylinder what is done to it, and what stays under the deck', () => {
    expect(shopColumns(found, labels, metric!).map(({ values }) => values)).toEqual([
      labels,
      ['as it is', '+0.20\u00a0mm'],
      ['0.800', '0.600'],
    ]);
  });
});

describe('spreadText', () => {
  it('takes 0.95 and 1.05 for 10 % of their mean, and nothing for alike', () => {
    expect(spreadText(found, 'trappedMass', 'before', metric!)).toBe('10\u202f%');
    expect(spreadText(found, 'trappedMass', 'after', metric!)).toMatch(/^0/);
  });
});

describe('beforeAndAfter', () => {
  it('shows an angle in degrees, and the tolerance where a figure is asked for', () => {
    const [figures, before, , asked] = beforeAndAfter(found, metric!).map(({ values }) =>
      Array.from(values as readonly string[]),
    );
    const row = (name: RegExp) => figures!.findIndex((each) => name.test(each));
    expect(before![row(/exhaust/i)]).toBe('2.50°');
    expect(asked![row(/exhaust/i)]).toBe('not asked');
    expect(asked![row(/trapped mass/i)]).toBe('1.0\u202f%');
  });
});

describe('atLimitText', () => {
  it('names cylinder, means and change, and is empty where nothing stops', () => {
    expect(atLimitText(found, labels, metric!)).toMatch(/^A2 .+, \+0\.20\u00a0mm$/);
    expect(atLimitText({ ...found, atLimit: [] }, labels, metric!)).toBe('');
  });
});
