import { cordTransmission } from './cord/answers.js'
import { directTransmission } from './direct/answers.js'
import type { Transmission } from './questions.js'

/** What the kinds of transmission answer: the one list that names them all. */
export const ANSWERS = {
  transmission: { cord: cordTransmission, direct: directTransmission } satisfies Record<string, Transmission>,
} as const
