import { beltTransmission } from './belt/answers.js'
import { cordTransmission } from './cord/answers.js'
import { directTransmission } from './direct/answers.js'
import { gearTransmission } from './gear/answers.js'
import { gearboxTransmission } from './gearbox/answers.js'
import type { Transmission } from './questions.js'

/** What the kinds of transmission answer: the one list that names them all. */
export const ANSWERS = {
  transmission: {
    cord: cordTransmission,
    belt: beltTransmission,
    direct: directTransmission,
    gear: gearTransmission,
    gearbox: gearboxTransmission,
  } satisfies Record<string, Transmission>,
} as const
