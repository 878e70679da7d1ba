/** One point of a travel history, SI numbers. */
export interface TravelPoint {
  /** Angle of the joint from the start; positive winds cord on at the span that positive torque tightens. */
  readonly jointAngle: number
  /** Torque at the joint. */
  readonly torque: number
  /** Angle of the pinion from the start, counted the way the joint drives it. */
  readonly pinionAngle: number
  /** Tension of the span that positive torque tightens. */
  readonly tautTension: number
  /** Tension of the other span. */
  readonly slackTension: number
  /** Highest tension of a span on the way since the point before. */
  readonly peakTension: number
  /** Lowest tension of a span on the way since the point before. */
  readonly leastTension: number
  /** Pinion angles between which cord has rested on the pinion since the point before; the low one above the high one where no cord has. */
  readonly restLow: number
  readonly restHigh: number
}

/** How a travel ended. */
export type TravelEnd = 'followed' | 'slips' | 'slackSpan' | 'anchorLeavesDrum' | 'clampLeavesPinion'
