import type { Design } from '../../design/schema/design.ts';

/** Answers by the design and the question they belong to; they go when their design does. */
export class KeptAnswers<Answer> {
  readonly #byDesign = new WeakMap<Design, Map<string, Answer>>();

  get(design: Design, key: string): Answer | undefined {
    return this.#byDesign.get(design)?.get(key);
  }

  keep(design: Design, key: string, answer: Answer): void {
    const known = this.#byDesign.get(design) ?? new Map<string, Answer>();
    this.#byDesign.set(design, known.set(key, answer));
  }
}
