/** Bar of the bending coupon, m: the proportions of the usual plastics bar. */
export const BAR = { length: 0.08, width: 0.01, height: 0.004, span: 0.064 } as const
/** Holes of the fit coupon: so many, each a step larger than the one before, the hole of the leg between them, m. */
export const HOLES = { count: 10, step: 0.02e-3 } as const
