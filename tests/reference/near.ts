import { expect } from 'vitest';

/** Stands for a number in a whole value: equal to that many digits after the point. */
export const near = (value: number, digits: number): unknown => expect.closeTo(value, digits);
