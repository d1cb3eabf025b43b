declare const unit: unique symbol;

/** A number that says what it counts. The brand exists for the compiler only. */
export type Unit<Name extends string> = number & { readonly [unit]: Name };

/** Degrees Celsius. */
export type Celsius = Unit<'celsius'>;

/** Litres, whatever is shown on the screen. */
export type Litres = Unit<'litres'>;

/** Milliseconds since 1970 in UTC: handed in by the clock, never read below it. */
export type Instant = Unit<'instant'>;
