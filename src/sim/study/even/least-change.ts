import type { Engine } from '../../engine.ts';
import { leastWithin, ontoGrid, sumOfSquares } from '../../numerics/bounded-least-squares.ts';
import type { Quadratic } from '../../numerics/bounded-least-squares.ts';
import { AIMED_FIGURES, allowedRange } from './aims.ts';
import type { AimedFigure, Aims } from './aims.ts';
import { MEANS_BY_NAME } from './means.ts';
import type { AllowedMeans, MeansName, ShopItem } from './means.ts';
import type { AimedShape, Answers } from './sensitivity.ts';
import { spreadOf } from './spread.ts';

/** A means in one cylinder: an unknown. */
interface Slot extends AllowedMeans {
  readonly cylinder: number;
  readonly now: number;
  readonly worth: number;
}

/** Prices tried, from dear to cheap [tolerances squared for a worth squared]. */
const PRICES = Array.from({ length: 13 }, (_, i) => 10 ** (1 - i / 2));
/** Share of a tolerance that the linear answer may use: the rest is for what it does not know. */
const MARGIN = 0.85;

/** The linear part of evening out: from what is found at one change to the next one. */
export class LeastChange {
  /** The unknowns, cylinder by cylinder. */
  readonly slots: readonly Slot[];
  private readonly count: number;
  private readonly steps: Float64Array;
  private readonly low: Float64Array;
  private readonly high: Float64Array;

  constructor(
    engine: Engine,
    private readonly aims: Aims,
    means: readonly AllowedMeans[],
  ) {
    const seats = engine.train.rows.flatMap((row) =>
      row.cylinders.map((cylinder, j) => ({ cylinder, isMaster: j === row.master })),
    );
    this.count = seats.length;
    this.slots = seats.flatMap(({ cylinder, isMaster }, index) =>
      means
        .filter(({ name }) => MEANS_BY_NAME[name].ofMaster || !isMaster)
        .map((allowed) => {
          const { now, worth } = MEANS_BY_NAME[allowed.name];
          return { ...allowed, cylinder: index, now: now(engine.train, cylinder), worth };
        }),
    );
    this.steps = Float64Array.from(this.slots, (slot) => slot.step);
    this.low = Float64Array.from(this.slots, (slot) => slot.least);
    this.high = Float64Array.from(this.slots, (slot) => slot.most);
  }

  /**
   * The next change, in steps.
   *
   * @param cylinders - what was found with the change so far
   * @param shapes    - how shapes answer there, by means
   * @param masses    - how all trapped masses answer, unknown by unknown; what has no answer is taken to do nothing
   */
  from(
    cylinders: readonly Readonly<Record<AimedFigure['figure'], number>>[],
    soFar: readonly ShopItem[],
    shapes: ReadonlyMap<MeansName, readonly AimedShape[]>,
    masses: readonly (Answers | null)[],
  ): readonly ShopItem[] {
    const { slots } = this;
    const at = this.slots.map((slot) => {
      const item = soFar.find((each) => each.cylinder === slot.cylinder && each.means === slot.name);
      return item ? item.to - item.from : 0;
    });
    const answersOf = ({ figure }: AimedFigure): Answers[] =>
      slots.map(({ name, cylinder }, k) =>
        Array.from({ length: this.count }, (_, i) => {
          if (figure === 'trappedMass') return masses[k]?.[i] ?? 0;
          return i === cylinder ? (shapes.get(name)?.[i]?.[figure] ?? 0) : 0;
        }),
      );
    const weighed = AIMED_FIGURES.filter(({ aim }) => this.aims[aim].weight > 0);
    const blocks = weighed.map((aimed) => this.rowsOf(aimed, cylinders, at, answersOf(aimed)));
    const rows = blocks.flatMap(({ rows, weight }) => rows.map((row) => row.map((each) => each * weight)));
    let place = new Float64Array(slots.length);
    for (const price of PRICES) {
      const quadratic = this.priced(rows, price);
      place = ontoGrid(
        quadratic,
        leastWithin(quadratic, this.low, this.high),
        this.steps,
        this.low,
        this.high,
      ) as Float64Array<ArrayBuffer>;
      if (blocks.every(({ rows }) => rangeLeft(rows, place) <= MARGIN)) break;
    }
    return this.itemsAt(place);
  }

  /** Changes that stand at the end of their way. */
  atLimit(items: readonly ShopItem[]): readonly ShopItem[] {
    return items.filter((item) => {
      const slot = this.slots.find((each) => each.cylinder === item.cylinder && each.name === item.means)!;
      const by = item.to - item.from;
      const near = 0.999 * slot.step;
      return by < slot.least + near || by > slot.most - near;
    });
  }

  /**
   * Residuals of one figure in tolerances, linear in the whole change x: value - mean of all.
   *
   *   r_i = sum over unknowns k (a_ki - mean over i of a_ki) x_k  -  b_i,     b_i = the same at the change so far, less what was found there
   */
  private rowsOf(
    aimed: AimedFigure,
    cylinders: readonly Readonly<Record<AimedFigure['figure'], number>>[],
    at: readonly number[],
    answers: readonly Answers[],
  ): { rows: readonly Float64Array[]; weight: number } {
    const { slots } = this;
    const values = cylinders.map((each) => each[aimed.figure]);
    const { mean } = spreadOf(values);
    const scale = 1 / allowedRange(this.aims, aimed, mean);
    const common = answers.map((each) => spreadOf(each).mean);
    const rows = values.map((value, i) => {
      const row = new Float64Array(slots.length + 1);
      let held = -scale * (value - mean);
      slots.forEach((_, k) => {
        row[k] = scale * (answers[k]![i]! - common[k]!);
        held += row[k]! * at[k]!;
      });
      row[slots.length] = held;
      return row;
    });
    return { rows, weight: this.aims[aimed.aim].weight };
  }

  private priced(rows: readonly Float64Array[], price: number): Quadratic {
    return sumOfSquares(
      rows,
      Float64Array.from(this.slots, ({ worth }) => price / worth ** 2),
    );
  }

  private itemsAt(place: Float64Array): readonly ShopItem[] {
    return this.slots.flatMap(({ cylinder, name, now, step }, k) =>
      Math.abs(place[k]!) < 0.5 * step ? [] : [{ cylinder, means: name, from: now, to: now + place[k]! }],
    );
  }
}

/** Range of the residuals that rows leave at a place. */
function rangeLeft(rows: readonly Float64Array[], place: Float64Array): number {
  const left = rows.map((row) => place.reduce((sum, x, k) => sum + row[k]! * x, -row[place.length]!));
  return Math.max(...left) - Math.min(...left);
}
