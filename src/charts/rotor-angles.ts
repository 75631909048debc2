/** Angles of the left and the right rotor, clockwise: they mesh, and carry gas down along both sides of the casing [rad]. */
export const rotorAngles = (turned: number, lobes: number): readonly [left: number, right: number] => [
  -turned,
  Math.PI - Math.PI / lobes + turned,
];
