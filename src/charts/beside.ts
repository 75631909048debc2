import type { Attachment } from 'svelte/attachments';

/** Keep a popover by the element that opened it, within the window: under it, or above where there is no room below. */
export function placeBeside(popover: HTMLElement, opener: Element): void {
  const from = opener.getBoundingClientRect();
  const { offsetWidth: width, offsetHeight: height } = popover;
  const fits = from.left + width <= innerWidth - 8;
  const left = Math.max(8, fits ? from.left : Math.min(from.right, innerWidth - 8) - width);
  const below = from.bottom + 4;
  const top = below + height > innerHeight - 8 && from.top - height - 4 > 8 ? from.top - height - 4 : below;
  popover.style.inset = `${top}px auto auto ${left}px`;
}

/** Places a popover each time it opens. */
export const beside =
  (opener: () => Element | undefined): Attachment<HTMLElement> =>
  (popover) => {
    const place = (event: ToggleEvent): void => {
      const from = opener();
      if (event.newState === 'open' && from) placeBeside(popover, from);
    };
    popover.addEventListener('toggle', place);
    return () => popover.removeEventListener('toggle', place);
  };
