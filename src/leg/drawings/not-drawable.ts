import { NoResultError, ValidityError } from '../../formula/index.js'
import { NumericError } from '../../numeric/index.js'
import { InputError } from '../../units/index.js'
import { NoValueError } from '../no-value.js'

/** A value that a picture needs cannot be calculated, because the sizes of the leg do not allow it. Its message is the reason. */
export class NotDrawable extends Error {
  override readonly name = 'NotDrawable'
}

/** Whether an error is what calculations of a leg throw where there is no value: never a fault of the program. */
const isReason = (error: unknown): error is Error =>
  error instanceof InputError ||
  error instanceof NoResultError ||
  error instanceof ValidityError ||
  error instanceof NumericError ||
  error instanceof NoValueError

/** A calculation of the leg for a picture. Throws `NotDrawable` where it has no value; every other error passes. */
export function calculated<T>(work: () => T): T {
  try {
    return work()
  } catch (error) {
    throw isReason(error) ? new NotDrawable(error.message, { cause: error }) : error
  }
}

/** The result of some work, or that of another where a value cannot be calculated. Every other error passes. */
export function unlessNotDrawable<T, U>(work: () => T, otherwise: (reason: NotDrawable) => U): T | U {
  try {
    return work()
  } catch (error) {
    if (error instanceof NotDrawable) return otherwise(error)
    throw error
  }
}
