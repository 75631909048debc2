import { readDesign, writeDesign } from '../design/read-design.ts';
import { validate } from '../design/validate.ts';
import type { Fault, Outcome } from '../sim/outcome.ts';
import { benchOf, presetDesign, presets } from './presets.ts';
import type { Bench, Preset } from './presets.ts';
import { enter, freshDraft, reset, whyHeld } from './sheets/draft.ts';
import type { Draft } from './sheets/draft.ts';
import { fileName } from './sheets/file-name.ts';

const mostSteps = 100;
const mostFileBytes = 1_000_000;

/** A file that was not opened, and everything that is wrong with it. */
export interface Refused {
  readonly name: string;
  readonly faults: readonly Fault[];
}

/** The design that stands on the page, every step that led to it, and what is typed for it. */
export class DesignStore {
  draft = $state.raw<Draft>(freshDraft(presetDesign(presets[0]!), presets[0]!.id));
  past = $state.raw<readonly Draft[]>([]);
  #future = $state.raw<readonly Draft[]>([]);
  /** The last file that could not be opened. */
  refused = $state.raw<Refused | null>(null);
  /** Why the last change of a list was not made, and of which. */
  unmade = $state.raw<{ readonly path: string; readonly faults: readonly Fault[] } | null>(null);
  /** Whether the browser keeps all this until the page is opened anew. */
  kept = $state(true);
  /** What was done last, for those who do not see it. */
  said = $state('');

  /** The last good design with what follows from it. */
  readonly bench: Bench = $derived(benchOf(this.draft.design));
  readonly whyHeld = $derived(whyHeld(this.draft));
  readonly heldPaths = $derived(Object.keys(this.draft.held));
  readonly canUndo = $derived(this.past.length > 0);
  readonly canRedo = $derived(this.#future.length > 0);

  /** The field in which typing goes on; its letters make one step. */
  #typingAt: string | null = null;
  readonly #onchange: (before: Draft, opened: boolean) => void;

  /**
   * @param onchange - told after each change: what was before, and whether another design was opened
   * @param last     - where to go on; a design that this program no longer takes is passed over
   */
  constructor(
    onchange: (before: Draft, opened: boolean) => void,
    last: { draft: Draft; past: readonly Draft[] } | null,
  ) {
    this.#onchange = onchange;
    if (last === null || !isSound(last.draft)) return;
    this.draft = last.draft;
    this.past = last.past;
  }

  type(path: string, text: string): void {
    const goesOn = this.#typingAt === path;
    this.#put(enter(this.draft, path, text), { goesOn });
    this.#typingAt = path;
  }

  /** The typing is over: what comes next is a step of its own. */
  pause(): void {
    this.#typingAt = null;
  }

  reset(path: string): void {
    this.change(path, reset(this.draft, path));
  }

  /** Take a change that was worked out, or say at its place why it cannot be made. */
  change(path: string, changed: Outcome<Draft>): void {
    if (!changed.ok) this.unmade = { path, faults: changed.faults };
    else this.#put(changed.value);
  }

  /** A change that a button asks for, and what to say of it once it is made. */
  take(path: string, changed: Outcome<Draft>, said: string): void {
    this.change(path, changed);
    if (changed.ok) this.said = said;
  }

  /** Why the last change asked for at a place was not made; nothing where it was. */
  whyUnmade(path: string): readonly Fault[] {
    return this.unmade?.path === path ? this.unmade.faults : [];
  }

  undo(): void {
    const before = this.past.at(-1);
    if (!before) return;
    const from = this.draft;
    this.past = this.past.slice(0, -1);
    this.#future = [...this.#future, from];
    this.#show(before, from);
    this.said = 'Undone.';
  }

  redo(): void {
    const next = this.#future.at(-1);
    if (!next) return;
    const from = this.draft;
    this.#future = this.#future.slice(0, -1);
    this.past = [...this.past, from];
    this.#show(next, from);
    this.said = 'Done again.';
  }

  openPreset(preset: Preset): void {
    this.#put(freshDraft(presetDesign(preset), preset.id), { opened: true });
    this.said = `${preset.name} is open.`;
  }

  /** A design as it was being worked on elsewhere; one that this program no longer takes is passed over. */
  openDraft(draft: Draft): void {
    if (!isSound(draft)) return;
    this.#put(draft, { opened: true });
    this.said = `${draft.design.name} is open.`;
  }

  /** All of a file, or nothing of it. */
  async openFile(file: File): Promise<void> {
    const tooLarge = `the file has ${Math.round(file.size / 1000)} kB; allowed up to ${mostFileBytes / 1000} kB, a design has a few`;
    const read: Outcome<Draft['design']> =
      file.size > mostFileBytes
        ? { ok: false, faults: [{ path: '', message: tooLarge }] }
        : readDesign(await file.text());
    if (!read.ok) {
      this.refused = { name: file.name, faults: read.faults };
      return;
    }
    this.refused = null;
    this.#put(freshDraft(read.value, null), { opened: true });
    this.said = `${file.name} is open.`;
  }

  /** The last good design as a file. */
  save(): void {
    const { design } = this.draft;
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([writeDesign(design)], { type: 'application/json' }));
    link.download = fileName(design.name);
    link.click();
    URL.revokeObjectURL(link.href);
    const waiting = this.heldPaths.length;
    this.said = `Saved as ${link.download}${waiting > 0 ? `, without ${waiting} that cannot be used yet` : ''}.`;
  }

  #put(next: Draft, { goesOn = false, opened = false } = {}): void {
    const from = this.draft;
    if (!goesOn) this.past = [...this.past, from].slice(-mostSteps);
    this.#future = [];
    this.#show(next, from, opened);
  }

  #show(next: Draft, from: Draft, opened = false): void {
    this.#typingAt = null;
    this.unmade = null;
    this.draft = next;
    this.#onchange(from, opened);
  }
}

const isSound = ({ design }: Draft): boolean => validate(design).ok;
