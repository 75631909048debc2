/** Every buffer that typed arrays anywhere inside a plain value stand on, each once: the transfer list of a reply. */
export function buffersOf(value: unknown): ArrayBuffer[] {
  const found = new Set<ArrayBuffer>();
  const visit = (part: unknown): void => {
    if (ArrayBuffer.isView(part)) {
      if (part.buffer instanceof ArrayBuffer) found.add(part.buffer);
    } else if (typeof part === 'object' && part !== null) {
      for (const inner of Object.values(part)) visit(inner);
    }
  };
  visit(value);
  return [...found];
}
