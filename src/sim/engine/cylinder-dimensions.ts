export interface CylinderDimensions {
  readonly bore: number;
  /** Of the master cylinder, from the full stroke or from the trapped volume at exhaust closing. */
  readonly compressionRatio: number;
  readonly compressionRatioFrom: 'full stroke' | 'exhaust closing';
  /** Crown edge below the deck at the master cylinder's top dead centre, no barrel offset [m]. */
  readonly deckClearance: number;
}
