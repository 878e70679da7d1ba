/** One point of a load path, SI numbers. */
export interface PathPoint {
  /** Torque the drive carries at the joint. */
  readonly torque: number
  /** Angle of the joint, motor locked, against the state before the first load. */
  readonly windup: number
  /** Tension of the span that positive torque tightens. */
  readonly tautTension: number
  /** Tension of the other span. */
  readonly slackTension: number
  /** Angle the pinion has slipped through under the cord, at the joint, since the start. */
  readonly slipped: number
  /** Length by which a clamped cord is loose on one side; zero while both spans are tight. */
  readonly looseLength: number
  /** Both spans tight; the pinion slips; or a span keeps less than 1 % of the pretension. */
  readonly state: 'tight' | 'slips' | 'slackSpan'
}
