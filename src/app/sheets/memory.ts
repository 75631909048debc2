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

/** What another window of the same browser has kept, as it is offered here. */
export interface Elsewhere {
  readonly window: string;
  readonly name: string;
  readonly at_ms: number;
}

export interface Memory {
  readonly last: Remembered | null;
  /** False where the browser lets nothing be kept; all else works as ever. */
  readonly works: boolean;
  keep(state: Remembered): Promise<void>;
  /** Told when another window keeps something of its own. */
  watch(told: (other: Elsewhere) => void): void;
  /** What that window kept last. */
  read(window: string): Promise<Remembered | null>;
}

export const noMemory: Memory = {
  last: null,
  works: false,
  keep: () => Promise.resolve(),
  watch: () => undefined,
  read: () => Promise.resolve(null),
};

/** A busy machine answers late, and a page that gave up would open without what was entered. */
const patience_ms = 5000;
/** Windows whose work is kept beside the present one's. */
const mostWindows = 8;

/** The browser's own store on this machine; nothing leaves it. Waits some seconds at most, where the store does not answer at all. */
export async function openMemory(): Promise<Memory> {
  const late = new Promise<Memory>((resolve) => setTimeout(() => resolve(noMemory), patience_ms));
  return Promise.race([openStore().catch(() => noMemory), late]);
}

/**
 * Each window keeps its own record, and what was kept last by any is what a new window takes up: two windows on one
 * browser never write over each other.
 */
async function openStore(): Promise<Memory> {
  const store = await openDB('umbel', 1, { upgrade: (db) => void db.createObjectStore('bench') });
  const own = await ownName();
  const found: unknown = (await store.get('bench', own)) ?? (await store.get('bench', 'present'));
  const channel = new BroadcastChannel('umbel');
  await forgetOldest(store, own);
  return {
    last: isRemembered(found) ? found : null,
    works: true,
    keep: async (state) => {
      const at_ms = Date.now();
      const change = store.transaction('bench', 'readwrite');
      await Promise.all([
        change.store.put({ ...state, at_ms }, own),
        change.store.put(state, 'present'),
        change.done,
      ]);
      channel.postMessage({ window: own, name: state.draft.design.name, at_ms } satisfies Elsewhere);
    },
    watch: (told) => (channel.onmessage = ({ data }: MessageEvent<Elsewhere>) => told(data)),
    read: async (window) => {
      const kept: unknown = await store.get('bench', window);
      return isRemembered(kept) ? kept : null;
    },
  };
}

/**
 * The name of this window, which outlives a reload. A duplicated window begins with the name of its original, which is
 * then still held, and takes a new one.
 */
async function ownName(): Promise<string> {
  const place = 'umbel.window';
  const known = sessionStorage.getItem(place);
  if (known !== null && (await hold(known))) return known;
  const name = `window ${crypto.getRandomValues(new Uint32Array(2)).join('-')}`;
  sessionStorage.setItem(place, name);
  await hold(name);
  return name;
}

/** Holds a name for as long as the window lives; false when another one holds it. */
const hold = (name: string): Promise<boolean> =>
  new Promise((resolve, reject) => {
    // Browsers give locks to pages from this machine or over https only; elsewhere a duplicated window is not told apart.
    if (!('locks' in navigator)) {
      resolve(true);
      return;
    }
    navigator.locks
      .request(name, { ifAvailable: true }, (lock) => {
        resolve(lock !== null);
        return lock === null ? undefined : new Promise<void>(() => undefined);
      })
      .catch(reject);
  });

async function forgetOldest(store: Awaited<ReturnType<typeof openDB>>, own: string): Promise<void> {
  const names = (await store.getAllKeys('bench')).map(String).filter((key) => key.startsWith('window '));
  const kept = await Promise.all(
    names
      .filter((name) => name !== own)
      .map(async (name) => ({ name, at_ms: Number((await store.get('bench', name))?.at_ms ?? 0) })),
  );
  const old = kept.sort((a, b) => b.at_ms - a.at_ms).slice(mostWindows);
  await Promise.all(old.map(({ name }) => store.delete('bench', name)));
}

/** Whether a record has this form; the design in it is checked by those who take it up. */
function isRemembered(found: unknown): found is Remembered {
  return typeof found === 'object' && found !== null && (found as Partial<Remembered>).form === 1;
}
