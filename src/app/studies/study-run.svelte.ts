import type { Design } from '../../design/schema/design.ts';
import type { StudyReply } from '../../workers/api.ts';
import type { Running, SimClient } from '../../workers/sim-client.ts';
import type { StudyAnswer, StudyAsked, StudyKind, StudyQuestion } from '../../workers/study-questions.ts';
import type { Bench } from '../presets.ts';
import { KeptAnswers } from './kept-answers.ts';

export type Asked<Kind extends StudyKind> = Omit<StudyAsked<Kind>, 'kind'>;

/**
 * One kind of study, worked out away from the page. Answers are kept by the design they belong to, so that a step back
 * finds them again.
 */
export class StudyRun<Kind extends StudyKind> {
  state = $state<'idle' | 'working' | 'done' | 'stopped' | 'failed'>('idle');
  /** What it is at, or why it failed. */
  doing = $state('');
  reason = $state('');
  /** Counts answers, so that whoever looks one up sees the next. */
  #arrived = $state(0);

  readonly #kind: Kind;
  readonly #client: SimClient;
  readonly #answers = new KeptAnswers<StudyAnswer<Kind>>();
  #running: Running | null = null;
  #asked: { readonly design: Design; readonly key: string } | null = null;

  constructor(client: SimClient, kind: Kind) {
    this.#client = client;
    this.#kind = kind;
  }

  /** What is known of a question; undefined where nothing is. */
  answerTo({ design }: Bench, asked: Asked<Kind>): StudyAnswer<Kind> | undefined {
    void this.#arrived;
    return this.#answers.get(design, JSON.stringify(asked));
  }

  /** Whether it works on this question, or ended it without an answer. */
  isAt({ design }: Bench, asked: Asked<Kind>): boolean {
    void this.state;
    return this.#asked?.design === design && this.#asked.key === JSON.stringify(asked);
  }

  /**
   * Drops what it was at, unless that is the same, and works on this; at once done where it is known.
   *
   * @param known - what helps to answer and is no part of the question, such as where to look first
   */
  ask(bench: Bench, asked: Asked<Kind>, known: Partial<Asked<Kind>> = {}): void {
    const { design, engine } = bench;
    const key = JSON.stringify(asked);
    if (this.state === 'working' && this.isAt(bench, asked)) return;
    this.#running?.stop();
    this.#asked = { design, key };
    this.reason = '';
    this.doing = '';
    if (this.answerTo(bench, asked) !== undefined) {
      this.state = 'done';
      return;
    }
    this.state = 'working';
    this.#running = this.#client.study(engine, { kind: this.#kind, ...asked, ...known } as StudyQuestion, {
      onStep: (doing) => (this.doing = doing),
      onReply: (reply) => this.#end(design, key, reply),
      onTrouble: (reason) => (this.doing = `started again: ${reason}`),
    });
  }

  stop(): void {
    this.#running?.stop();
    this.#running = null;
    if (this.state === 'working') this.state = 'stopped';
  }

  #end(design: Design, key: string, reply: StudyReply): void {
    this.#running = null;
    if (reply.status !== 'answered') {
      this.reason = reply.reason;
      this.state = 'failed';
      return;
    }
    this.#answers.keep(design, key, reply.answer as StudyAnswer<Kind>);
    this.#arrived += 1;
    this.state = 'done';
  }
}
