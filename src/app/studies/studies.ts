import { KNOBS } from '../../sim/study/match/knobs.ts';
import type { KnobName } from '../../sim/study/match/knobs.ts';
import type { SimClient } from '../../workers/sim-client.ts';
import { SweepRun } from '../sweep-run.svelte.ts';
import { StudyRun } from './study-run.svelte.ts';

/** The studies of all pages. They outlive a page, so that going away and back loses nothing. */
export class Studies {
  readonly limit;
  readonly gains;
  readonly supply;
  /** The same at other speeds. */
  readonly family;
  readonly rotors;
  readonly snap;
  readonly airNeeded;
  readonly coating;
  readonly feed;
  readonly kinds;
  readonly start;
  readonly turns;
  readonly spark;
  readonly cranking;
  readonly evenness;
  readonly evenOut;
  readonly reach;
  readonly alternatives;
  readonly fixes: readonly { readonly vary: KnobName; readonly run: StudyRun<'fix'> }[];

  constructor(client: SimClient) {
    this.limit = new StudyRun(client, 'limit');
    this.gains = new StudyRun(client, 'gains');
    this.supply = new StudyRun(client, 'supply');
    this.family = Array.from({ length: FAMILY }, () => new StudyRun(client, 'supply'));
    this.rotors = new StudyRun(client, 'rotors');
    this.snap = new StudyRun(client, 'snap');
    this.airNeeded = new StudyRun(client, 'airNeeded');
    this.coating = new StudyRun(client, 'coating');
    this.kinds = new StudyRun(client, 'kinds');
    this.feed = new StudyRun(client, 'feed');
    this.start = new StudyRun(client, 'start');
    this.turns = new StudyRun(client, 'turns');
    this.spark = new StudyRun(client, 'spark');
    this.cranking = new SweepRun(client);
    this.evenness = new StudyRun(client, 'evenness');
    this.evenOut = new StudyRun(client, 'evenOut');
    this.reach = new StudyRun(client, 'reach');
    this.alternatives = new StudyRun(client, 'alternatives');
    this.fixes = KNOBS.map((vary) => ({ vary, run: new StudyRun(client, 'fix') }));
  }

  /** Another design stands: nobody waits for answers on the old one. */
  stop(): void {
    const { limit, gains, supply, family, rotors, snap, feed, start, cranking, fixes, airNeeded, coating } =
      this;
    const studies = [
      limit,
      gains,
      supply,
      ...family,
      rotors,
      snap,
      feed,
      start,
      cranking,
      airNeeded,
      coating,
    ];
    for (const run of studies) run.stop();
    for (const { run } of fixes) run.stop();
    for (const run of [
      this.kinds,
      this.turns,
      this.spark,
      this.evenness,
      this.evenOut,
      this.reach,
      this.alternatives,
    ])
      run.stop();
  }
}

/** Speeds for which supply and demand are drawn together. */
export const FAMILY = 4;
