/** Area of a circle [m^2]. */
export const circle = (diameter: number): number => (Math.PI / 4) * diameter * diameter;
