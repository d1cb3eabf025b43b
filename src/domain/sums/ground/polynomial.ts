/** Coefficients by rising power, the constant first, evaluated at x by Horner's rule. */
export function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let power = coefficients.length - 1; power >= 0; power--) sum = sum * x + (coefficients[power] ?? 0);
  return sum;
}
