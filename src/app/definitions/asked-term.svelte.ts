import type { Definition } from './read-definitions.ts';

/** The figure whose definition lies open. The document is loaded when the first is asked for. */
export class AskedTerm {
  definition = $state.raw<Definition | null>(null);
  /** What was asked from, to stand beside and to go back to. */
  opener = $state.raw<HTMLElement | null>(null);

  #all: Promise<ReadonlyMap<string, Definition>> | null = null;

  async ask(term: string, opener: HTMLElement): Promise<void> {
    this.#all ??= load();
    const all = await this.#all;
    const definition = all.get(term);
    if (!definition) throw new Error(`docs/conventions.md defines no ${term}`);
    this.definition = definition;
    this.opener = opener;
  }

  close(): void {
    this.opener?.focus();
    this.definition = null;
    this.opener = null;
  }
}

async function load(): Promise<ReadonlyMap<string, Definition>> {
  const [{ default: document }, { readDefinitions }] = await Promise.all([
    import('../../../docs/conventions.md?raw'),
    import('./read-definitions.ts'),
  ]);
  return readDefinitions(document);
}
