import type { Attachment } from 'svelte/attachments';

/** Tells once when an element comes into sight, or is about to be printed. */
export const inSight =
  (onseen: () => void): Attachment<Element> =>
  (element) => {
    const end = (): void => {
      watcher.disconnect();
      removeEventListener('beforeprint', seen);
    };
    const seen = (): void => {
      end();
      onseen();
    };
    const watcher = new IntersectionObserver((entries) => {
      if (entries.some((entry) => entry.isIntersecting)) seen();
    });
    watcher.observe(element);
    addEventListener('beforeprint', seen);
    return end;
  };
