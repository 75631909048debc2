/** One of the figures that lead a page. */
export interface KeyFigure {
  readonly label: string;
  readonly text: string;
  /** Against what it is held, such as a limit. */
  readonly beside?: string;
  /** It is beyond that limit. */
  readonly beyond?: boolean;
  /** What it is called where it is defined. */
  readonly term?: string;
  /** How far it is from the pinned result; empty where nothing is pinned. */
  readonly against?: string;
}
