/** The heat transfer coefficient between gas and walls of every cylinder, by one law. */
export interface Film {
  /** Writes it from the gas and pistons of the instant, cylinder by cylinder [W/(m^2 K)]. */
  write(h: Float64Array): void;
}
