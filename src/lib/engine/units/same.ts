/**
 * Share of a number that the last binary digit of a converted unit may cost it: two numbers no further apart are the same,
 * so that a bound typed in another unit still is the bound.
 */
export const SAME = 1e-9;
