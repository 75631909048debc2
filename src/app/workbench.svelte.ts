import { toEngine } from '../design/to-engine.ts';
import { rpm } from '../sim/units.ts';
import type { SimClient } from '../workers/sim-client.ts';
import { Crank } from './crank.svelte.ts';
import { DesignStore } from './design-store.svelte.ts';
import { Pin } from './pin/pin.svelte.ts';
import { FitView } from './fit-view.svelte.ts';
import { PointRun } from './point-run.svelte.ts';
import { presets } from './presets.ts';
import type { Bench } from './presets.ts';
import { sameLayout } from './same-layout.ts';
import type { Draft } from './sheets/draft.ts';
import { noMemory } from './sheets/memory.ts';
import type { Elsewhere, Memory } from './sheets/memory.ts';
import { OpenSheet } from './sheets/open-sheet.svelte.ts';
import type { ShownUnits } from './units/shown-units.ts';
import { sweepSpeeds } from './speeds.ts';
import { Studies } from './studies/studies.ts';
import { SweepRun } from './sweep-run.svelte.ts';
import { UnitChoice } from './units/unit-choice.svelte.ts';

const sweepPoints = 12;
/** How long typing must pause before the range is asked for anew. */
const sweepPause_ms = 400;
/** Steps that can be undone after the page was opened anew. */
const mostKeptSteps = 40;

/** What is on the bench: a design, where it runs, and what is known of it. */
export class Workbench {
  readonly store: DesignStore;
  readonly sheet = new OpenSheet();
  speed_rpm = $state(0);
  /** 0 shut to 1 open. */
  throttle = $state(1);
  /** Index of the cylinder that is looked at. */
  chosen = $state(0);

  readonly crank = new Crank();
  readonly fit = new FitView(() => this.bench);
  readonly point: PointRun;
  readonly sweep: SweepRun;
  readonly pin: Pin;
  readonly studies: Studies;
  readonly unitChoice = new UnitChoice();

  /** What another window saved last, until it has been read. */
  elsewhere = $state.raw<Elsewhere | null>(null);

  readonly #memory: Memory;
  /** Windows whose saving the reader knows of. */
  #heardOf: readonly string[] = [];
  #sweepTimer = 0;
  #writing = false;
  #changedMeanwhile = false;

  constructor(client: SimClient, memory: Memory = noMemory) {
    this.point = new PointRun(client);
    this.sweep = new SweepRun(client);
    this.pin = new Pin(this.sweep);
    this.studies = new Studies(client);
    this.#memory = memory;
    this.store = new DesignStore((before, opened) => this.#changed(before, opened), memory.last);
    this.store.kept = memory.works;
    const { last } = memory;
    memory.watch((other) => {
      if (!this.#heardOf.includes(other.window)) this.elsewhere = other;
    });
    this.speed_rpm = this.#shownFirst();
    if (last !== null && this.store.draft === last.draft) {
      this.throttle = last.throttle;
      if (this.#mayRunAt(last.speed_rpm)) this.speed_rpm = last.speed_rpm;
    }
    this.point.held = this.store.heldPaths.length > 0;
    this.#askPoint();
    this.#askSweep();
  }

  /** The last good design with what follows from it. */
  get bench(): Bench {
    return this.store.bench;
  }

  /** What is shown leaves out something typed, or the range is about to be worked out anew. */
  get behind(): boolean {
    return this.point.held || this.sweep.stale;
  }

  /** The units that figures are shown in. */
  get units(): ShownUnits {
    return this.unitChoice.shown;
  }

  /** Only a settled answer to what stands can be pinned. */
  get canPin(): boolean {
    return this.point.state === 'solved' && !this.point.behind && !this.sweep.stale;
  }

  pinThis(): void {
    const { bench, speed_rpm, throttle } = this;
    const { result } = this.point;
    if (this.canPin && result !== null) this.pin.take({ bench, speed_rpm, throttle, point: result });
  }

  /** The speeds by which the design is judged [rad/s]: cranking, then the wanted range. */
  get judgedSpeeds(): readonly number[] {
    return sweepSpeeds(this.bench.engine.wanted, sweepPoints);
  }

  get presetId(): string | null {
    return this.store.draft.presetId;
  }

  /** What stands on the bench in words; one that left its preset says so. */
  get designName(): string {
    return `${this.bench.design.name}${this.presetId === null ? ', changed' : ''}`;
  }

  choose(presetId: string): void {
    this.store.openPreset(presets.find((each) => each.id === presetId)!);
  }

  /** The reader knows that the other window saves, too. */
  passOver(): void {
    if (this.elsewhere) this.#heardOf = [...this.#heardOf, this.elsewhere.window];
    this.elsewhere = null;
  }

  /** Takes up what the other window saved; undo leads back. */
  async openElsewhere(): Promise<void> {
    const other = this.elsewhere && (await this.#memory.read(this.elsewhere.window));
    this.passOver();
    if (other) this.store.openDraft(other.draft);
  }

  setSpeed(speed_rpm: number): void {
    this.speed_rpm = speed_rpm;
    this.#askPoint();
    this.#keep();
  }

  setThrottle(throttle: number): void {
    this.throttle = throttle;
    this.#askPoint();
    this.#askSweep();
    this.#keep();
  }

  /** Keep all this on the machine, now or as soon as the last writing is over, so that even a sudden end loses nothing. */
  #keep(): void {
    if (this.#writing) {
      this.#changedMeanwhile = true;
      return;
    }
    this.#writing = true;
    this.#changedMeanwhile = false;
    const { draft, past } = this.store;
    const { speed_rpm, throttle } = this;
    void this.#memory
      .keep({ form: 1, draft, past: past.slice(-mostKeptSteps), speed_rpm, throttle })
      .catch(() => (this.store.kept = false))
      .finally(() => {
        this.#writing = false;
        if (this.#changedMeanwhile) this.#keep();
      });
  }

  /** The design was typed at, another was opened, or a step was taken back. */
  #changed(before: Draft, opened: boolean): void {
    this.#keep();
    const { design } = this.store.draft;
    this.point.held = this.store.heldPaths.length > 0;
    if (design === before.design) return;
    this.studies.stop();
    this.pin.freeze();
    if (opened) this.throttle = 1;
    if (opened || !this.#mayRunAt(this.speed_rpm)) this.speed_rpm = this.#shownFirst();
    this.chosen = opened ? 0 : Math.min(this.chosen, this.bench.geometry.cylinders.length - 1);
    if (opened || this.store.draft.origin !== before.origin) {
      this.point.forget();
      this.sweep.forget();
    }
    this.#askPoint();
    this.sweep.expire();
    clearTimeout(this.#sweepTimer);
    if (opened || !sameLayout(this.bench.engine, toEngine(before.design))) this.#askSweep();
    else this.#sweepTimer = window.setTimeout(() => this.#askSweep(), sweepPause_ms);
  }

  #shownFirst(): number {
    return Math.round(this.bench.engine.wanted.speed / rpm);
  }

  #mayRunAt(speed_rpm: number): boolean {
    const { crankingSpeed, minSpeed, maxSpeed } = this.bench.engine.wanted;
    const speed = speed_rpm * rpm;
    return speed >= Math.min(crankingSpeed, minSpeed) - 1 && speed <= maxSpeed + 1;
  }

  #askPoint(): void {
    this.point.ask(this.bench.engine, { speed: this.speed_rpm * rpm, throttle: this.throttle });
  }

  #askSweep(): void {
    clearTimeout(this.#sweepTimer);
    this.pin.freeze();
    const { throttle } = this;
    this.sweep.ask(
      this.bench.engine,
      this.judgedSpeeds.map((speed) => ({ speed, throttle })),
    );
  }
}
