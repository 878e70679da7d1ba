import { type Note, Quantity, refuse } from '../units/index.js'
import { percent, type Read } from './drive-specification.js'
import { MIN_EXPONENT } from './friction-inputs.js'

export interface Argument {
  readonly where: string
  readonly path: string
  readonly given: unknown
}

const NOTED_STRAIN = 0.02

/** Notes of a result whose highest tension is `peak`. Throws an `InputError` for a load that breaks the cord. */
export function tensionNotes(
  x: Read,
  peak: number,
  passed: readonly Note[] | undefined,
  breaks: Argument | undefined,
): readonly Note[] | undefined {
  const strain = peak / x.axialRigidity
  const texts: string[] = []
  const tension = new Quantity(peak, 'force')
  if (strain > x.breakingStrain) {
    const text = `strains the cord by ${percent(strain)}, beyond its break at ${percent(x.breakingStrain)}`
    if (breaks !== undefined) refuse(breaks.where, breaks.path, breaks.given, `must not break the cord: a tension of ${tension} ${text}`)
    texts.push(`tension of ${tension} ${text}`)
  } else if (strain > NOTED_STRAIN) texts.push(`strain of ${percent(strain)} is above 2 %: the model drops its square`)
  if (x.allowableTension !== undefined && peak > x.allowableTension)
    texts.push(`tension of ${tension} is above the allowable ${new Quantity(x.allowableTension, 'force')} of the cord`)
  if ((x.frictionExponent ?? 1) < MIN_EXPONENT)
    texts.push(
      `friction exponent of ${x.frictionExponent} is below ${MIN_EXPONENT}: fibres have 0.67 to 1, and the slip torque is too high`,
    )
  return texts.length === 0 ? passed : [...(passed ?? []), ...texts.map((text) => ({ formula: 'capstan.cordDrive', text }))]
}
