/** A narrow space that does not break: between the groups of a long number, before %, round the sign of a power. */
export const THIN = '\u202f';

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** A number as a few figures and a power of ten: `3.0 × 10⁻⁷`. */
export function powerOfTen(value: number, digits: number): string {
  const [figures, exponent] = value.toExponential(digits - 1).split('e') as [string, string];
  return `${figures.replace('-', '−')}${THIN}×${THIN}10${raised(Number(exponent))}`;
}

const raised = (exponent: number): string =>
  String(exponent)
    .replace('-', '⁻')
    .replace(/\d/g, (digit) => RAISED[Number(digit)]!);

/** Powers of ten as people write them, `3 × 10⁻⁷` or `3·10^-7`, in the form that machines read, `3e-7`. */
export const withExponents = (text: string): string =>
  text.replace(
    /\s*[×·*]\s*10(?:\^([+-]?\d+)|([⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))/g,
    (_, plain: string | undefined, small: string | undefined) => `e${plain ?? lowered(small!)}`,
  );

const lowered = (text: string): string =>
  text
    .replace('⁻', '-')
    .replace('⁺', '+')
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String(RAISED.indexOf(digit)));
