import type { Attachment } from 'svelte/attachments';

export interface Scrub {
  /** From distances to the element's left and upper edge [px] to a value; called with the latest scales. */
  readonly valueAt: (x_px: number, y_px: number) => number;
  readonly onhover: (value: number | null) => void;
  /** Moves the cursor; without it pointing only reads. */
  readonly onmove?: ((value: number) => void) | undefined;
}

/** Reads values under the pointer, and moves a cursor while the pointer is held down. Scrolling up and down stays. */
export function scrub(scrubbing: () => Scrub): Attachment<SVGElement> {
  return (element) => {
    const valueOf = ({ clientX, clientY }: PointerEvent): number => {
      const { left, top } = element.getBoundingClientRect();
      return scrubbing().valueAt(clientX - left, clientY - top);
    };

    const press = (event: PointerEvent): void => {
      const { onmove } = scrubbing();
      if (event.button !== 0 || onmove === undefined) return;
      element.setPointerCapture(event.pointerId);
      onmove(valueOf(event));
    };
    const move = (event: PointerEvent): void => {
      const { onhover, onmove } = scrubbing();
      if (onmove !== undefined && element.hasPointerCapture(event.pointerId)) onmove(valueOf(event));
      else onhover(valueOf(event));
    };
    const leave = (): void => scrubbing().onhover(null);

    element.style.touchAction = 'pan-y';
    element.addEventListener('pointerdown', press);
    element.addEventListener('pointermove', move);
    element.addEventListener('pointerleave', leave);
    return () => {
      element.removeEventListener('pointerdown', press);
      element.removeEventListener('pointermove', move);
      element.removeEventListener('pointerleave', leave);
    };
  };
}
