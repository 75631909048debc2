/** What a figure is: a row of the tables in docs/conventions.md, with what helps to read it. */
export interface Definition {
  /** As in code and in the document: `deliveryRatio`. */
  readonly id: string;
  /** In words, with its symbol where it has one: `delivery ratio δ`. */
  readonly name: string;
  /** Definition and equation, in the document's own marks. */
  readonly formula: string;
  /** What there is one of it for, such as `cylinder`; empty where the document does not say. */
  readonly per: string;
  readonly symbols: readonly SymbolMeaning[];
  readonly source: string;
}
export interface SymbolMeaning {
  readonly symbol: string;
  readonly meaning: string;
}

/**
 * Every figure that the document defines, by its name in code. A table's source is the line `Source: …` after it; a
 * row may define several figures at once.
 */
export function readDefinitions(document: string): ReadonlyMap<string, Definition> {
  const symbols = rowsOf(sectionOf(document, '## Symbols', '## ')).map(
    ([symbol = '', meaning = '']): SymbolMeaning => ({ symbol, meaning }),
  );
  const found = new Map<string, Definition>();
  for (const part of sectionOf(document, '## Reported figures', '## ').split(/^### /m).slice(1)) {
    const source = /^Source: (.*)$/m.exec(part)?.[1] ?? '';
    for (const [figures = '', formula = '', per = ''] of rowsOf(part)) {
      for (const [, id, sign] of figures.matchAll(/`\.?([\w.]+)`(?: ([^\s`,|]+))?/g)) {
        const name = `${inWords(id!)}${sign ? ` ${sign}` : ''}`;
        found.set(id!, { id: id!, name, formula, per, source, symbols: used(symbols, formula) });
      }
    }
  }
  return found;
}

function sectionOf(document: string, heading: string, next: string): string {
  const from = document.indexOf(`${heading}\n`);
  if (from < 0) return '';
  const to = document.indexOf(`\n${next}`, from + heading.length);
  return document.slice(from + heading.length, to < 0 ? undefined : to);
}

/** The cells of every table row, without headings and rules. */
const rowsOf = (text: string): string[][] =>
  text
    .split('\n')
    .filter((line, i, lines) => line.startsWith('|') && !isRule(line) && !isRule(lines[i + 1] ?? ''))
    .map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
const isRule = (line: string): boolean => /^\|[\s|:-]+\|$/.test(line);

const inWords = (id: string): string =>
  id
    .replace(/^.*\./, '')
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .trim();

/** Symbols that stand in a formula, units aside. */
function used(symbols: readonly SymbolMeaning[], formula: string): SymbolMeaning[] {
  const bare = formula.replace(/\[[^\]]*\]/g, '');
  return symbols.filter(({ symbol }) =>
    new RegExp(`(?<![\\p{L}\\p{N}_])${symbol}(?![\\p{L}\\p{N}_₀])`, 'u').test(bare),
  );
}
