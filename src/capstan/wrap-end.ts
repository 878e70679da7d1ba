/** State of the end of a wrap at a trial tension; a scratch record that `probe` fills. */
export interface EndProbe {
  /** Integral of tension over angle up to this end, from the wrap's fixed reference. */
  integral: number
  /** Change of the arc's integral of tension per change of tension at this end. */
  slope: number
  /** Where the new slip ends inwards. */
  boundary: number
  /** Integral and logarithm of tension at the boundary. */
  boundaryIntegral: number
  boundaryLog: number
  /** +1 where tension falls inwards through the slip, −1 where it rises, 0 without slip. */
  sense: number
  /** Whether slip has run through the whole wrap. */
  through: boolean
}

/** A record for `probe` to fill. */
export const endProbe = (): EndProbe => ({
  integral: 0,
  slope: 0,
  boundary: 0,
  boundaryIntegral: 0,
  boundaryLog: 0,
  sense: 0,
  through: false,
})
