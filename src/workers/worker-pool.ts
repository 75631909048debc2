import type { PointReply, PointRequest, StudyReply, StudyReport, StudyRequest, TurnReport } from './api.ts';

/** A worker as the pool sees it; the browser's own is made in spawn-worker.ts, a test makes a fake. */
export interface WorkerHandle {
  solve(request: PointRequest): Promise<PointReply>;
  study(request: StudyRequest): Promise<StudyReply>;
  drop(runId: number): void;
  terminate(): void;
}

export interface WorkerEvents {
  onTurn(report: TurnReport): void;
  onStudy(report: StudyReport): void;
  /** The worker is gone, and what it was doing with it. */
  onCrash(reason: string): void;
}

export type SpawnWorker = (events: WorkerEvents) => WorkerHandle;

/** Work that a person watches goes ahead of work in the background. */
export type Urgency = 'now' | 'background';

/** What a worker gave back: handed on unless the task gave way on purpose. */
export interface Ended {
  readonly dropped: boolean;
  handOn(): void;
}

/** A piece of work: a point or a study, which the pool need not tell apart. */
export interface Task {
  readonly runId: number;
  readonly urgency: Urgency;
  begin(worker: WorkerHandle): Promise<Ended>;
  onReport(report: TurnReport | StudyReport): void;
  /** Its worker crashed a second time: there will be no answer. */
  onBroken(reason: string): void;
  /** Its worker crashed and the task starts again on a new one. */
  onRetry(reason: string): void;
}

interface Slot {
  worker: WorkerHandle;
  task: Task | null;
  /** Set when the running task gives way to an urgent one and must start again later. */
  givesWay: boolean;
  /** Ticks since its worker last said anything while it had work. */
  silentFor: number;
}

/**
 * Ticks of about a second without a word after which a busy worker is given up. A worker speaks after every period it
 * steps, which takes well under a second even for many cylinders on a slow machine.
 */
const PATIENCE = 10;

/**
 * Hands tasks to a fixed number of workers. An urgent task waits for nobody: when all are busy, one background task
 * gives way between turns and starts again afterwards. A worker that crashes or falls silent is replaced and its task
 * tried once more.
 */
export class WorkerPool {
  readonly #slots: Slot[] = [];
  readonly #waiting: Record<Urgency, Task[]> = { now: [], background: [] };
  readonly #crashedOnce = new WeakSet<Task>();
  readonly #spawn: SpawnWorker;

  constructor(spawn: SpawnWorker, size: number) {
    this.#spawn = spawn;
    for (let i = 0; i < size; i++) this.#slots.push(this.#newSlot());
  }

  get size(): number {
    return this.#slots.length;
  }

  add(task: Task): void {
    this.#waiting[task.urgency].push(task);
    this.#handOut();
  }

  /** Takes the task back, waiting or running; its reply, if one still comes, is not passed on. */
  drop(task: Task): void {
    const queue = this.#waiting[task.urgency];
    const place = queue.indexOf(task);
    if (place >= 0) queue.splice(place, 1);
    const slot = this.#slots.find((each) => each.task === task);
    if (slot === undefined) return;
    slot.task = null;
    slot.worker.drop(task.runId);
    this.#handOut();
  }

  /**
   * One more second has passed. Counting ticks instead of reading a clock keeps a machine that slept, or a page that
   * was held back, from being taken for a worker that stopped.
   */
  tick(): void {
    for (const slot of this.#slots) {
      if (slot.task === null) continue;
      slot.silentFor += 1;
      if (slot.silentFor >= PATIENCE) this.#replace(slot, `A worker gave no sign of life for ${PATIENCE} s.`);
    }
  }

  close(): void {
    for (const slot of this.#slots) slot.worker.terminate();
    this.#slots.length = 0;
    this.#waiting.now.length = 0;
    this.#waiting.background.length = 0;
  }

  #newSlot(): Slot {
    const slot: Slot = { worker: null as never, task: null, givesWay: false, silentFor: 0 };
    this.#start(slot);
    return slot;
  }

  #start(slot: Slot): void {
    const heard = (report: TurnReport | StudyReport): void => {
      if (slot.worker !== worker) return;
      slot.silentFor = 0;
      if (slot.task?.runId === report.runId) slot.task.onReport(report);
    };
    const worker = this.#spawn({
      onTurn: heard,
      onStudy: heard,
      onCrash: (reason) => {
        if (slot.worker === worker) this.#replace(slot, reason);
      },
    });
    slot.worker = worker;
  }

  #handOut(): void {
    for (const slot of this.#slots) {
      if (slot.task !== null) continue;
      const task = this.#waiting.now.shift() ?? this.#waiting.background.shift();
      if (task === undefined) return;
      this.#run(slot, task);
    }
    const yielding = this.#slots.filter((slot) => slot.givesWay).length;
    for (let short = this.#waiting.now.length - yielding; short > 0; short--) {
      const slot = this.#slots.find((each) => each.task?.urgency === 'background' && !each.givesWay);
      if (slot === undefined || slot.task === null) return;
      slot.givesWay = true;
      slot.worker.drop(slot.task.runId);
    }
  }

  #run(slot: Slot, task: Task): void {
    slot.task = task;
    slot.givesWay = false;
    slot.silentFor = 0;
    const worker = slot.worker;
    task.begin(worker).then(
      (ended) => {
        if (slot.worker === worker && slot.task === task) this.#settle(slot, task, ended);
      },
      (error: unknown) => {
        if (slot.worker === worker && slot.task === task) {
          this.#replace(slot, error instanceof Error ? error.message : String(error));
        }
      },
    );
  }

  #settle(slot: Slot, task: Task, ended: Ended): void {
    const gaveWay = slot.givesWay && ended.dropped;
    slot.task = null;
    slot.givesWay = false;
    if (gaveWay) this.#waiting[task.urgency].unshift(task);
    else ended.handOn();
    this.#handOut();
  }

  #replace(slot: Slot, reason: string): void {
    const { task } = slot;
    slot.worker.terminate();
    slot.task = null;
    slot.givesWay = false;
    this.#start(slot);
    if (task !== null && this.#crashedOnce.has(task)) {
      task.onBroken(reason);
    } else if (task !== null) {
      this.#crashedOnce.add(task);
      this.#waiting[task.urgency].unshift(task);
      task.onRetry(reason);
    }
    this.#handOut();
  }
}
