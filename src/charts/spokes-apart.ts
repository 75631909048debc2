/**
 * Angles of spokes of which some may stand behind each other, as barrels of rows in line do: each that comes closer than `gap` to one
 * before it is turned on to where there is room, by no more than half a turn.
 */
export function spokesApart(angles: readonly number[], gap: number): readonly number[] {
  const turn = 2 * Math.PI;
  const placed: number[] = [];
  const near = (a: number, b: number): boolean => {
    const apart = (((a - b) % turn) + turn) % turn;
    return Math.min(apart, turn - apart) < gap * (1 - 1e-9);
  };
  for (const angle of angles) {
    let at = angle;
    for (let tries = 0; tries < Math.PI / gap && placed.some((other) => near(at, other)); tries++) at += gap;
    placed.push(at);
  }
  return placed;
}
