/** A drive with a cord of 20 kN rigidity on pulleys of 8 and 48 mm, without its friction, in SI numbers. */
export const DRIVE = {
  axialRigidity: 20000,
  pretension: 60,
  pinionRadius: 0.008,
  drumRadius: 0.048,
  span: 0.02,
  pinionWrap: 6 * Math.PI,
  drumWrapTaut: Math.PI,
  drumWrapSlack: Math.PI,
} as const
