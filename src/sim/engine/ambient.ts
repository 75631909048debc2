export interface Ambient {
  readonly pressure: number;
  readonly temperature: number;
  /** Relative, 0 to 1 [-]. */
  readonly humidity: number;
}
