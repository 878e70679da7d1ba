/** The places of a leg that may turn on ball bearings: both ends of the knee's rod, its drum, the pins of hip and knee, and the axis of the sideways hip. */
export const PIVOTS = ['crank', 'rocker', 'drum', 'hip', 'knee', 'sidewaysHip'] as const
/** A place that may turn on ball bearings. */
export type Pivot = (typeof PIVOTS)[number]

/** The places in words. */
export const PIVOT_WORDS: { readonly [P in Pivot]: string } = {
  crank: 'crank end of the rod',
  rocker: 'rocker end of the rod',
  drum: 'drum of the rod',
  hip: 'hip pin',
  knee: 'knee pin',
  sidewaysHip: 'sideways hip',
}
