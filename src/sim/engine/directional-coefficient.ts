export interface DirectionalCoefficient {
  readonly forward: number;
  readonly backward: number;
}
