import type { Input, Inputs, Property } from '../formula/index.js'
import { materialNames } from '../materials/index.js'
import { didYouMean, InputError, issue, type Kind, Quantity } from '../units/index.js'
import { QuickLeg } from './assess/quick.js'
import type { Leg } from './document/describe.js'
import { documentFields, type LegData } from './document/fields.js'
import { withEarlierInputs } from './earlier-inputs.js'
import type { LegNumbers } from './leg-numbers.js'
import { cordJoints, legNumbers } from './numbers.js'
import { retentionIn } from './parts/transmission/cord/fields.js'
import { bandProperty, isBand, materialRanges } from './ranges.js'
import { designations, placeAt } from './schema/index.js'

/** The quantities and words of a leg as inputs. */
function quantitiesOf(leg: Leg): Inputs {
  const { defaults: _, materials: own, ...data } = leg
  return inputsOf({ ...data, joints: withRetention(data.joints, legNumbers(leg)) }, wordsOf(data, Object.keys(own ?? {}))) as Inputs
}

/** Inputs of a leg's formula but for the properties of its materials, and without ranges. */
export const fieldInputs = (leg: Leg): Inputs => withEarlierInputs(keepDefaults(quantitiesOf(leg), []), leg)

/** All inputs of a leg's formula. What has a range has it as its default, where the tools look for it. */
export function legInputs(leg: Leg, uncertain: readonly string[] | undefined): Inputs {
  const base = legNumbers(leg)
  const quick = new QuickLeg()
  quick.governing(base)
  const ranges = materialRanges(base, quick.load(base))
  const materials: Record<string, Input> = {}
  for (const [name, properties] of ranges) {
    const fields = Object.fromEntries([...properties].map(([property, value]) => [property, ranged(value)]))
    materials[name] = { fields, optional: true }
  }
  const all = { ...quantitiesOf(leg), materials: { fields: materials, optional: true } } as Inputs
  if (uncertain === undefined) return withEarlierInputs(all, leg)
  const paths = scalarPathsWithDefault(all)
  const unknown = uncertain.filter((path) => !paths.includes(path))
  if (unknown.length > 0)
    throw new InputError(
      'legFormula',
      unknown.map((path) => {
        const accepts = `must be one of the values with a range: ${paths.join(', ')}`
        return issue('uncertain', path, `${accepts}${didYouMean(path, paths)}`)
      }),
    )
  return withEarlierInputs(keepDefaults(all, uncertain), leg)
}

const ranged = (value: Property): Input => ({ kind: value.kind, default: value, optional: true }) as Input

/** Paths of the inputs that have a range. */
function scalarPathsWithDefault(inputs: Inputs, prefix = ''): string[] {
  return Object.entries(inputs).flatMap(([name, input]) =>
    typeof input === 'string' || !('fields' in input)
      ? typeof input === 'object' && 'default' in input
        ? [prefix + name]
        : []
      : scalarPathsWithDefault(input.fields, `${prefix}${name}.`),
  )
}

/** The same inputs with ranges at some paths only. */
function keepDefaults(inputs: Inputs, paths: readonly string[], prefix = ''): Inputs {
  return Object.fromEntries(
    Object.entries(inputs).map(([name, input]): [string, Input] => {
      if (typeof input === 'string') return [name, input]
      if ('fields' in input) return [name, { ...input, fields: keepDefaults(input.fields, paths, `${prefix}${name}.`) }]
      if (!('default' in input) || paths.includes(prefix + name)) return [name, input]
      const { default: _, ...rest } = input
      return [name, rest as Input]
    }),
  )
}

/** Joints with the strength left in a cord end from the table where the leg does not give it. */
const withRetention = (joints: LegData['joints'], base: LegNumbers) => ({
  ...joints,
  ...Object.fromEntries(
    cordJoints(base).map((joint) => [
      joint,
      { ...joints[joint], drive: { ...joints[joint]?.drive, endRetention: retentionIn(base, joint) } },
    ]),
  ),
})

/** Things that are kinds, not places: one may be taken instead of another. */
const KINDS = ['motors', 'controllers', 'cords', 'prints'] as const

/** The words that a field may be, by where it stands; nothing for free text and for what the leg is built of. */
function wordsOf(data: object, materials: readonly string[]) {
  return (path: readonly string[]): readonly string[] | undefined => {
    const { leaf } = placeAt(documentFields, data, path)
    if (leaf === undefined) return undefined
    if ('oneOf' in leaf) return leaf.oneOf
    if ('designation' in leaf) return designations(leaf.designation)
    if (!('refersTo' in leaf)) return undefined
    if (leaf.refersTo === 'materials') return [...new Set([...materials, ...materialNames()])]
    const section = (data as Record<string, object | undefined>)[leaf.refersTo]
    return (KINDS as readonly string[]).includes(leaf.refersTo) ? Object.keys(section ?? {}) : undefined
  }
}

/** Inputs of all quantities and words of a record, at their places; each may be left out. */
function inputsOf(record: object, wordsAt: ReturnType<typeof wordsOf>, path: readonly string[] = []): Record<string, unknown> {
  const inputs: Record<string, unknown> = {}
  for (const [name, value] of Object.entries(record)) {
    const place = [...path, name]
    if (value instanceof Quantity) inputs[name] = { kind: value.kind as Kind, optional: true }
    else if (isBand(value)) inputs[name] = ranged(bandProperty(value))
    else if (typeof value === 'string') {
      const words = wordsAt(place)
      if (words !== undefined) inputs[name] = { oneOf: words, optional: true }
    } else if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
      const fields = inputsOf(value, wordsAt, place)
      if (Object.keys(fields).length > 0) inputs[name] = { fields, optional: true }
    }
  }
  return inputs
}
