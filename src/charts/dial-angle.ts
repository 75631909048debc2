/** Angle of a place about a middle, clockwise from the top, 0 to 360 [degrees]; y grows downwards. */
export function dialAngle(x: number, y: number): number {
  const angle_deg = (Math.atan2(x, -y) * 180) / Math.PI;
  return angle_deg < 0 ? angle_deg + 360 : angle_deg;
}

/** `56` names round a ring need more room than there is: name one in so many, those looked at besides. */
export const nameEvery = (radius: number, count: number, room: number): number =>
  Math.max(1, Math.ceil((room * count) / (2 * Math.PI * radius)));
