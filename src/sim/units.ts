/**
 * The only conversion factors. A number without a suffix is in base SI; anything else wears its unit, and becomes
 * SI by multiplying with one of these: `bore_mm * mm`, and back by dividing: `stroke / mm`.
 *
 * Sources: BIPM, The International System of Units, 9th ed. 2019 (exact unless said otherwise); NIST SP 811, 2008,
 * appendix B for inch (0.0254 m exact), pound, pound-force per square inch, inch of mercury, horsepower, US gallon
 * (231 in^3) and the International Table British thermal unit.
 */
export const TURN = 2 * Math.PI;

export const mm = 1e-3;
export const cm = 1e-2;
export const um = 1e-6;
export const inch = 0.0254;
export const mm2 = 1e-6;
export const cm2 = 1e-4;
export const in2 = inch * inch;
export const cc = 1e-6;
export const litre = 1e-3;
export const in3 = inch * inch * inch;
export const foot = 12 * inch;
export const gallonUS = 231 * in3;
export const deg = Math.PI / 180;
export const rpm = TURN / 60;
export const kPa = 1e3;
export const MPa = 1e6;
export const bar = 1e5;
export const mbar = 1e2;
export const atm = 101325;
export const pound = 0.45359237;
export const poundForce = pound * 9.80665;
export const psi = poundForce / in2;
export const poundFoot = poundForce * foot;
/** Conventional inch of mercury: 13 595.1 kg/m^3 * 9.80665 m/s^2 * 0.0254 m. */
export const inHg = 13595.1 * 9.80665 * inch;
export const gram = 1e-3;
export const milligram = 1e-6;
export const ounce = pound / 16;
export const kgcm2 = cm2;
export const kW = 1e3;
/** Metric horsepower: 75 kgf m/s. */
export const hpMetric = 75 * 9.80665;
/** Mechanical horsepower: 550 ft lbf/s. */
export const hp = 550 * poundFoot;
export const kmPerHour = 1 / 3.6;
export const percent = 1e-2;
export const millisecond = 1e-3;
/** Brake specific consumption: gram per kilowatt-hour [kg/J]. */
export const gramPerKWh = gram / (kW * 3600);
export const poundPerHpHour = pound / (hp * 3600);
export const ms = 1e-3;
export const minute = 60;
export const hour = 3600;
export const btu = 1055.05585262;
export const MJ = 1e6;
export const kJ = 1e3;

/** Kelvin at 0 degrees Celsius. */
export const ZERO_CELSIUS = 273.15;
export const kelvinFromCelsius = (temperature_C: number): number => temperature_C + ZERO_CELSIUS;
export const celsiusFromKelvin = (temperature: number): number => temperature - ZERO_CELSIUS;
export const kelvinFromFahrenheit = (temperature_F: number): number =>
  ((temperature_F - 32) * 5) / 9 + ZERO_CELSIUS;
export const fahrenheitFromKelvin = (temperature: number): number =>
  ((temperature - ZERO_CELSIUS) * 9) / 5 + 32;
