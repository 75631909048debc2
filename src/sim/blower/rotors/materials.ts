/** Density [kg/m^3] and linear expansion [1/K] near room temperature. */
export interface Material {
  readonly density: number;
  readonly expansion: number;
}

/**
 * What rotors and casings are made of.
 *
 * Source: rounded values common to engineering handbooks (Dubbel, Taschenbuch für den Maschinenbau); alloys differ by 5 %.
 */
export const ROTOR_MATERIALS = {
  aluminium: { density: 2700, expansion: 23e-6 },
  steel: { density: 7850, expansion: 12e-6 },
  'cast iron': { density: 7200, expansion: 10.5e-6 },
} as const satisfies Record<string, Material>;

export type RotorMaterial = keyof typeof ROTOR_MATERIALS;
