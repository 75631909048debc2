/** Parts that can be pointed at in the drawing of the engine. */
export type DrawnPart = 'crank' | 'cylinder' | 'windows' | 'plenum' | 'exhaust' | 'blower';

export interface PartHandles {
  /** What the part is called where it is listed. */
  readonly name: (part: DrawnPart) => string;
  /** `cylinder` is the index of the one that was pressed, where it was one. */
  readonly open: (part: DrawnPart, cylinder?: number) => void;
  /** The part that lies open, if any. */
  readonly opened: string | null;
}

/**
 * Attributes that make a group of a drawing something to press. It takes no tabulator stop: the list of parts below the
 * drawing does the same by keyboard.
 */
export function partHandle(parts: PartHandles | undefined, part: DrawnPart, cylinder?: number) {
  if (!parts) return {};
  return {
    role: 'button',
    'aria-label': `open ${parts.name(part)}`,
    'data-handle': part,
    'data-opened': parts.opened === part ? true : undefined,
    onclick: () => parts.open(part, cylinder),
  };
}
