export interface Run {
  readonly text: string;
  readonly kind: 'plain' | 'strong' | 'emphasis' | 'code' | 'lowered';
}

const marks = /\*\*(.+?)\*\*|(?<![\w\p{L}])_([^_]+)_(?![\w\p{L}])|`([^`]+)`|(?<=\p{L})_(\w+)/gu;

/** A line of the documents cut at its marks: **strong**, _emphasis_, `code`, and V_s with its index lowered. */
export function markedText(line: string): Run[] {
  const runs: Run[] = [];
  let at = 0;
  for (const found of line.matchAll(marks)) {
    const [all, strong, emphasis, code, lowered] = found;
    if (found.index > at) runs.push({ text: line.slice(at, found.index), kind: 'plain' });
    if (strong !== undefined) runs.push({ text: strong, kind: 'strong' });
    else if (emphasis !== undefined) runs.push({ text: emphasis, kind: 'emphasis' });
    else if (code !== undefined) runs.push({ text: code, kind: 'code' });
    else runs.push({ text: lowered!, kind: 'lowered' });
    at = found.index + all.length;
  }
  if (at < line.length) runs.push({ text: line.slice(at), kind: 'plain' });
  return runs;
}
