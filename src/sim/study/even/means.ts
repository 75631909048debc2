import type { CrankTrain, Engine, RowCylinder } from '../../engine.ts';
import { cc, deg, mm } from '../../units.ts';

/** What a builder can alter in one cylinder, named as in the corrections of a design. */
export const MEANS = [
  'knuckle',
  'knuckleRadius',
  'rod',
  'barrel',
  'exhaustTrim',
  'transferTrim',
  'head',
] as const;
export type MeansName = (typeof MEANS)[number];

/** One way to alter a cylinder, as a number in base SI. */
export interface Means {
  readonly what: 'length' | 'angle' | 'volume';
  /** Whether the master's cylinder has it, too: it hangs on no knuckle pin. */
  readonly ofMaster: boolean;
  /** As it is. */
  readonly now: (train: CrankTrain, cylinder: RowCylinder) => number;
  readonly set: (value: number) => Partial<RowCylinder>;
  /** To what it can be made, and how far it may be moved either way, unless the builder says otherwise. */
  readonly step: number;
  readonly furthest: number;
  /** A change that costs as much as a millimetre of another means. */
  readonly worth: number;
}

const length = (furthest: number): Pick<Means, 'what' | 'step' | 'furthest' | 'worth'> => ({
  what: 'length',
  step: 0.05 * mm,
  furthest,
  worth: mm,
});

/** Steps and ways are usual practice: what a lathe and shims hold, and what barrels and rods have room for. */
export const MEANS_BY_NAME: Readonly<Record<MeansName, Means>> = {
  knuckle: {
    what: 'angle',
    step: 0.1 * deg,
    furthest: 3 * deg,
    worth: 2 * deg,
    ofMaster: false,
    now: (_, { knuckleAngle }) => knuckleAngle,
    set: (knuckleAngle) => ({ knuckleAngle }),
  },
  knuckleRadius: {
    ...length(1 * mm),
    ofMaster: false,
    now: (train, { knuckleRadius }) => knuckleRadius ?? train.knuckleRadius,
    set: (knuckleRadius) => ({ knuckleRadius }),
  },
  rod: {
    ...length(1 * mm),
    ofMaster: false,
    now: (_, { rodLength }) => rodLength,
    set: (rodLength) => ({ rodLength }),
  },
  barrel: {
    ...length(1.5 * mm),
    ofMaster: true,
    now: (_, { barrelOffset }) => barrelOffset,
    set: (barrelOffset) => ({ barrelOffset }),
  },
  exhaustTrim: {
    ...length(2 * mm),
    ofMaster: true,
    now: (_, { exhaustTrim }) => exhaustTrim,
    set: (exhaustTrim) => ({ exhaustTrim }),
  },
  transferTrim: {
    ...length(2 * mm),
    ofMaster: true,
    now: (_, { transferTrim }) => transferTrim,
    set: (transferTrim) => ({ transferTrim }),
  },
  head: {
    what: 'volume',
    step: 0.05 * cc,
    furthest: 1.5 * cc,
    worth: cc,
    ofMaster: true,
    now: (_, { headVolume }) => headVolume,
    set: (headVolume) => ({ headVolume }),
  },
};

/** What is used unless the builder says otherwise: shims under barrels, and a file at the windows. */
export const USUAL_MEANS: readonly MeansName[] = ['barrel', 'exhaustTrim', 'transferTrim'];

/** A means that may be used, how finely, and how far from what is there [unit of the means]. */
export interface AllowedMeans {
  readonly name: MeansName;
  readonly step: number;
  readonly least: number;
  readonly most: number;
}

export const usualMeans = (name: MeansName): AllowedMeans => {
  const { step, furthest } = MEANS_BY_NAME[name];
  return { name, step, least: -furthest, most: furthest };
};

/** One change in one cylinder, counted row by row from 0: from what it is to what it is to be [unit of the means]. */
export interface ShopItem {
  readonly cylinder: number;
  readonly means: MeansName;
  readonly from: number;
  readonly to: number;
}

/** The engine with changes made. */
export function withShopItems(engine: Engine, items: readonly ShopItem[]): Engine {
  let at = 0;
  const rows = engine.train.rows.map((row) => ({
    ...row,
    cylinders: row.cylinders.map((cylinder) => {
      const index = at++;
      return items
        .filter((item) => item.cylinder === index)
        .reduce((changed, item) => ({ ...changed, ...MEANS_BY_NAME[item.means].set(item.to) }), cylinder);
    }),
  }));
  return { ...engine, train: { ...engine.train, rows } };
}
