/** Target and start of a damped inverse, SI. */
export interface InverseRequest {
  /** Target place of the tool's origin in the base. */
  readonly position: ArrayLike<number>
  /** Target rotation of the tool, row-major. Default: only the place matters. */
  readonly rotation?: ArrayLike<number> | undefined
  /** Metres that a radian of rotation error counts as. */
  readonly lengthPerRadian: number
  /** Joint values that the search starts from. */
  readonly seed: ArrayLike<number>
  /** Lowest and highest of each joint. */
  readonly lowest: ArrayLike<number>
  /** Highest value of each joint. */
  readonly highest: ArrayLike<number>
  /** A position error of this size (and a rotation error that counts as it) is reached. */
  readonly tolerance: number
  /** Most iterations of the search. */
  readonly maxIterations: number
}

/** Where a damped inverse ended. */
export interface InverseResult {
  /**
   * `reached`; `localStop` where no small motion comes nearer (the target is out of reach, or limits are in the way of this search);
   * `iterationLimit`; `notANumber` for a request with a number that is not finite.
   */
  readonly ended: 'reached' | 'localStop' | 'iterationLimit' | 'notANumber'
  readonly values: Float64Array
  readonly positionError: number
  readonly rotationError: number
  /** Error that was made smaller: place, and rotation as a length. */
  readonly error: number
  readonly iterations: number
}
