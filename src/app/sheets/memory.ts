import { openDB } from 'idb';
import type { Draft } from './draft.ts';

/** Everything that is taken up again when the page is opened anew. */
export interface Remembered {
  /** Of the form of this record. */
  readonly form: 1;
  readonly draft: Draft;
  readonly past: readonly Draft[];
  readonly speed_rpm: number;
  readonly throttle: number;
}

export interface Memory {
  readonly last: Remembered | null;
  /** False where the browser lets nothing be kept; all else works as ever. */
  readonly works: boolean;
  keep(state: Remembered): Promise<void>;
}

export const noMemory: Memory = { last: null, works: false, keep: () => Promise.resolve() };

const patience_ms = 500;

/** The browser's own store on this machine; nothing leaves it. Waits no longer than a moment. */
export async function openMemory(): Promise<Memory> {
  const late = new Promise<Memory>((resolve) => setTimeout(() => resolve(noMemory), patience_ms));
  return Promise.race([openStore().catch(() => noMemory), late]);
}

async function openStore(): Promise<Memory> {
  const store = await openDB('umbel', 1, { upgrade: (db) => void db.createObjectStore('bench') });
  const found: unknown = await store.get('bench', 'present');
  return {
    last: isRemembered(found) ? found : null,
    works: true,
    keep: async (state) => void (await store.put('bench', state, 'present')),
  };
}

/** Whether a record has this form; the design in it is checked by those who take it up. */
function isRemembered(found: unknown): found is Remembered {
  return typeof found === 'object' && found !== null && (found as Partial<Remembered>).form === 1;
}
