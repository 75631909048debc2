import type { Scavenging } from '../../src/sim/engine.ts';
import { OutflowPurity } from '../../src/sim/scavenging/outflow-purity.ts';

/**
 * Purity of a cylinder of constant volume, pressure and temperature: what enters is fresh, as much leaves by the law.
 *
 *   d chi / d SR = 1 - beta(chi),  by classical Runge-Kutta
 */
export function purityAfter(
  scavengeRatio: number,
  law: Scavenging['law'],
  smoothing: number,
  steps = 20_000,
): number {
  const purity = new OutflowPurity({ law, smoothing });
  const slope = (chi: number) => 1 - purity.evaluate(chi);
  const h = scavengeRatio / steps;
  let chi = 0;
  for (let i = 0; i < steps; i++) {
    const k1 = slope(chi);
    const k2 = slope(chi + (h / 2) * k1);
    const k3 = slope(chi + (h / 2) * k2);
    const k4 = slope(chi + h * k3);
    chi += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  return chi;
}
