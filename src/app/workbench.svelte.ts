import { rpm } from '../sim/units.ts';
import type { SimClient } from '../workers/sim-client.ts';
import { Crank } from './crank.svelte.ts';
import { PointRun } from './point-run.svelte.ts';
import { openPreset, presets } from './presets.ts';
import type { Bench } from './presets.ts';
import { sweepSpeeds } from './speeds.ts';
import { SweepRun } from './sweep-run.svelte.ts';

const sweepPoints = 12;

/** What is on the bench: a design, where it runs, and what is known of it. */
export class Workbench {
  presetId = $state(presets[0]!.id);
  bench = $state.raw<Bench>(openPreset(presets[0]!));
  speed_rpm = $state(0);
  /** 0 shut to 1 open. */
  throttle = $state(1);
  /** Index of the cylinder that is looked at. */
  chosen = $state(0);

  readonly crank = new Crank();
  readonly point: PointRun;
  readonly sweep: SweepRun;

  constructor(client: SimClient) {
    this.point = new PointRun(client);
    this.sweep = new SweepRun(client);
    this.choose(this.presetId);
  }

  choose(presetId: string): void {
    const preset = presets.find((each) => each.id === presetId)!;
    this.presetId = presetId;
    this.bench = openPreset(preset);
    this.speed_rpm = Math.round(this.bench.engine.wanted.speed / rpm);
    this.throttle = 1;
    this.chosen = 0;
    this.point.forget();
    this.#askPoint();
    this.#askSweep();
  }

  setSpeed(speed_rpm: number): void {
    this.speed_rpm = speed_rpm;
    this.#askPoint();
  }

  setThrottle(throttle: number): void {
    this.throttle = throttle;
    this.#askPoint();
    this.#askSweep();
  }

  #askPoint(): void {
    this.point.ask(this.bench.engine, { speed: this.speed_rpm * rpm, throttle: this.throttle });
  }

  #askSweep(): void {
    const { throttle } = this;
    const speeds = sweepSpeeds(this.bench.engine.wanted, sweepPoints);
    this.sweep.ask(
      this.bench.engine,
      speeds.map((speed) => ({ speed, throttle })),
    );
  }
}
