/** A vector turned by an angle [rad]. */
export function turned(x: number, y: number, angle: number): { x: number; y: number } {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}
