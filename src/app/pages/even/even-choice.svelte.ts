import { figure } from '../../../charts/format.ts';
import type { Unit } from '../../../design/unit-table.ts';
import { UNIT_OF_SUFFIX } from '../../../design/unit-table.ts';
import type { Outcome } from '../../../sim/outcome.ts';
import { AIMS, USUAL_AIMS } from '../../../sim/study/even/aims.ts';
import type { AimName, Aims } from '../../../sim/study/even/aims.ts';
import { MEANS, MEANS_BY_NAME, USUAL_MEANS, usualMeans } from '../../../sim/study/even/means.ts';
import type { AllowedMeans, MeansName } from '../../../sim/study/even/means.ts';
import type { ShownUnits } from '../../units/shown-units.ts';
import { readQuantity } from '../part/read-quantity.ts';

/** The step in which something is altered, as it is typed and as it is read. */
interface Step {
  readonly name: MeansName;
  readonly text: string;
  readonly unit: Unit;
  readonly read: Outcome<number>;
}

const UNIT_OF = { length: UNIT_OF_SUFFIX.mm, angle: UNIT_OF_SUFFIX.deg, volume: UNIT_OF_SUFFIX.cc };

const ofAll = <Name extends string, Value>(names: readonly Name[], value: (name: Name) => Value) =>
  Object.fromEntries(names.map((name) => [name, value(name)])) as Record<Name, Value>;

/** What may be altered, in which steps, and what is to become alike, as someone chooses it. */
export class EvenChoice {
  used = $state(ofAll(MEANS, (name) => USUAL_MEANS.includes(name)));
  weight = $state(ofAll(AIMS, (aim) => USUAL_AIMS[aim].weight));
  #typed = $state<Partial<Record<MeansName, string>>>({});

  readonly steps = $derived.by(() => MEANS.map((name) => this.#step(name)));
  readonly means: readonly AllowedMeans[] = $derived.by(() =>
    this.steps.flatMap(({ name, read }) =>
      this.used[name] && read.ok ? [{ ...usualMeans(name), step: read.value }] : [],
    ),
  );
  readonly aims: Aims = $derived.by(() =>
    ofAll<AimName, Aims[AimName]>(AIMS, (aim) => ({ ...USUAL_AIMS[aim], weight: this.weight[aim] })),
  );
  /** Why nothing can be worked out from this; empty where something can. */
  readonly trouble = $derived.by(() => {
    if (this.steps.some(({ name, read }) => this.used[name] && !read.ok)) return 'A step cannot be read.';
    if (this.means.length === 0) return 'Nothing may be altered: allow at least one.';
    if (AIMS.every((aim) => this.weight[aim] === 0))
      return 'Nothing is to be made alike: choose at least one.';
    return '';
  });

  readonly #units: () => ShownUnits;

  constructor(units: () => ShownUnits) {
    this.#units = units;
  }

  type(name: MeansName, text: string): void {
    this.#typed = { ...this.#typed, [name]: text };
  }

  #step(name: MeansName): Step {
    const { what, step, furthest } = MEANS_BY_NAME[name];
    const unit = this.#units().ofField(UNIT_OF[what]);
    const text = this.#typed[name] ?? String(Number((step / unit.factor).toPrecision(3)));
    const most = `${figure(furthest / unit.factor, 2)} ${unit.symbol}`;
    const read = readQuantity(text, unit, [1e-3 * furthest, furthest], `above 0, up to ${most}`);
    return { name, text, unit, read };
  }
}
