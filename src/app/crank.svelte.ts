const pace_degPerSecond = 40;

/** The one crank angle of the page, 0 to 360 degrees, and its slow turning. */
export class Crank {
  angle_deg = $state(0);
  turning = $state(false);
  #frame = 0;

  set(angle_deg: number): void {
    this.angle_deg = angle_deg;
  }

  toggle(): void {
    this.turning = !this.turning;
    cancelAnimationFrame(this.#frame);
    if (this.turning) this.#turnFrom(performance.now());
  }

  #turnFrom(before: number): void {
    this.#frame = requestAnimationFrame((now) => {
      this.angle_deg = (this.angle_deg + ((now - before) / 1000) * pace_degPerSecond) % 360;
      this.#turnFrom(now);
    });
  }
}
