import type { Column, Domain } from './scales.ts';

/** Room that a drawing has on the page [px]. */
export interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Axis {
  /** What is plotted, and in which unit; both stand at the axis. An empty unit is a plain number. */
  readonly quantity: string;
  readonly unit: string;
  /** Values the axis must take in, such as zero or a wanted level. */
  readonly include?: readonly number[];
  /** Fixes the axis whatever the figures are. */
  readonly domain?: Domain;
  /** Crank angle in degrees: marks divide the turn. */
  readonly turn?: boolean;
  readonly format?: (value: number) => string;
}

export interface Line {
  readonly label: string;
  readonly ys: Column;
  /** A custom property of colours.css, such as `var(--fresh)`. */
  readonly colour: string;
  readonly dashed?: boolean;
  readonly band?: { readonly low: Column; readonly high: Column };
  /** Where along x the label stands by the line; its last point when left out. */
  readonly labelAt?: number;
  /** What the figure is called where it is defined. */
  readonly term?: string;
  /** The same of an earlier result, which this one is held against. */
  readonly pinned?: Curve | undefined;
}

export interface Curve {
  readonly xs: ArrayLike<number>;
  readonly ys: Column;
}

/** A value that something is held against, drawn across the chart. */
export interface Level {
  readonly y: number;
  readonly label: string;
  readonly colour: string;
}

/** Something that happens at one x. */
export interface Mark {
  readonly x: number;
  readonly label: string;
  readonly colour: string;
}

/** What reaches a line at one x, named where it does. */
export interface Landing {
  readonly x: number;
  readonly label: string;
  /** Label of the line on which it stands. */
  readonly line: string;
}

/** A stretch of x over which something lasts, drawn as a bar under the lines. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly label: string;
  readonly colour: string;
}

export interface TableColumn {
  readonly heading: string;
  readonly values: Column | readonly string[];
  /** Significant digits for reading; four when left out. */
  readonly digits?: number;
  /** What the figure is called where it is defined. */
  readonly term?: string | undefined;
}

/** A line under a table's rows: its label stands in the first column, the cells in the others. */
export interface TableFoot {
  readonly label: string;
  readonly cells: readonly string[];
}

/** What a colour or a way of drawing stands for, said beside a drawing that is saved. */
export interface Key {
  readonly label: string;
  readonly colour: string;
  readonly mark: 'line' | 'dashed' | 'area';
}

/** The one x that charts share, and how a reader moves it. */
export interface Cursor {
  readonly value: number;
  /** What it is, for those who do not see it. */
  readonly name: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly format: (value: number) => string;
  readonly onmove: (value: number) => void;
}

/** A curve over places of its own. */
export interface OwnCurve extends Curve {
  readonly label: string;
  readonly colour: string;
  readonly dashed?: boolean;
  /** One of several that stand behind what is looked at. */
  readonly faint?: boolean;
  readonly labelAt?: 'start' | 'end';
  /** Named in the table alone. */
  readonly unlabelled?: boolean;
  readonly term?: string;
}

/** A single point among curves. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly label: string;
  readonly colour: string;
  /** A ring rather than a dot. */
  readonly open?: boolean;
}
