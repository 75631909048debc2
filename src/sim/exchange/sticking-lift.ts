/**
 * Lift of a spring-loaded disc whose stem sticks: dry friction holds it until the pressure has left the friction's band.
 *
 *   opening line  a = (dp - dp_crack) / (dp_full - dp_crack)
 *   closing line  b = a + (dp_crack - dp_reseat) / (dp_full - dp_crack),   both within 0 and 1
 *   lift = max( a, min( b, held ) )                                         held: the lift before
 *
 * Opening A dp = k (x + x0) + F, closing A dp = k (x + x0) - F, so dp_crack - dp_reseat = 2 F / A.
 *
 * @param dp     - pressure difference across the disc [Pa]
 * @param crack  - at which it begins to open [Pa]
 * @param full   - at which it is fully open on the way up, > crack [Pa]
 * @param reseat - at which it shuts on the way down, <= crack [Pa]
 * @param held   - lift before, over the whole lift [-]
 * @returns lift over the whole lift, 0 to 1 [-]
 *
 * Valid: no inertia, no flutter; a disc that pops open at once by the flow under its rim is not this one. Exact while the pressure
 * rises or falls without turning since `held`. Source: the play operator; Visintin, Differential Models of Hysteresis, 1994, ch. III.
 */
export function stickingLift(dp: number, crack: number, full: number, reseat: number, held: number): number {
  const range = full - crack;
  const opening = (dp - crack) / range;
  const closing = (dp - reseat) / range;
  const least = opening > 0 ? (opening < 1 ? opening : 1) : 0;
  const most = closing > 0 ? (closing < 1 ? closing : 1) : 0;
  return held < least ? least : held > most ? most : held;
}
