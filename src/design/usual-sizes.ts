/**
 * Sizes that stand in for what was not given, where more than one place must know them: each in proportion to what is given, so that
 * millimetres make millimetres and metres make metres. Typical; the schema says so beside each field.
 */
export const usualCrownThickness = (bore: number): number => 0.1 * bore;
export const usualPistonLength = (bore: number, stroke: number): number => stroke + 0.12 * bore;
