/** A value that a leg does not have, or that its sizes do not allow. Its message is the reason. The range errors of the engine are faults of the program. */
export class NoValueError extends RangeError {}
