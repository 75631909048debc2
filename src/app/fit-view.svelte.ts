import type { FitMark } from '../charts/engine-shapes.ts';
import { fitOf } from '../sim/fit/fit-of.ts';
import type { Contact, FitCheck, FitKind } from '../sim/fit/fit-check.ts';
import { byRoom, verdictWords } from '../sim/fit/fit-words.ts';
import { deg } from '../sim/units.ts';
import { lengthText } from './pages/fit/fit.ts';
import { onPage } from './engine-picture.ts';
import type { Bench } from './presets.ts';
import type { ShownUnits } from './units/shown-units.ts';

/** Whether the engine on the bench goes together, and what of it is looked at. */
export class FitView {
  /** A line of the table is being read: the drawing shows where its parts are. */
  open = $state(false);
  kind = $state<FitKind | null>(null);

  readonly #bench: () => Bench;
  #model = $derived.by(() => fitOf(this.#bench().engine, this.#bench().geometry));

  constructor(bench: () => Bench) {
    this.#bench = bench;
  }

  get report() {
    return this.#model.report;
  }

  /** The one that was chosen, or the one with least room. */
  get check(): FitCheck | null {
    const { checks } = this.report;
    return checks.find(({ kind }) => kind === this.kind) ?? byRoom(checks)[0] ?? null;
  }

  /** What collides as the crank stands, the worst of it in words; else the nearest parts of what is looked at. */
  marksAt(angle_deg: number, units: ShownUnits): FitMark[] {
    const { collisions, nearest } = this.#model.contactsAt(angle_deg * deg, this.open ? this.check : null);
    const worst = collisions.reduce<Contact | null>(
      (most, each) => (most === null || each.gap < most.gap ? each : most),
      null,
    );
    const said = nearest ?? worst;
    const shown = nearest && nearest.gap >= 0 ? [...collisions, nearest] : collisions;
    const isSaid = (each: Contact): boolean =>
      said !== null && each.kind === said.kind && each.parts.join() === said.parts.join();
    return shown.map((each) => this.#mark(each, isSaid(each) ? contactWords(each, units) : []));
  }

  #mark({ rowIndex, a, b, gap }: Contact, lines: readonly string[]): FitMark {
    const stagger = this.#bench().engine.train.rows[rowIndex]!.staggerAngle;
    return { a: onPage(a, stagger), b: onPage(b, stagger), collides: gap < 0, lines };
  }
}

export function contactWords({ kind, parts, gap }: Contact, units: ShownUnits): string[] {
  const long = lengthText(units, Math.abs(gap));
  const how =
    gap >= 0
      ? `${long} ${kind === 'covers' ? 'covered' : 'apart'}`
      : `${verdictWords({ kind, verdict: 'collides' })}, by ${long}`;
  return [`${parts[0]}, ${parts[1]}`, how];
}
