import { fibreNames } from '../../capstan/index.js'
import { metricThread, parallelPin, propertyClass as propertyClassTable, type SiThreadSizes } from '../../fasteners/index.js'
import { type Material, material as materialByName } from '../../materials/index.js'
import { designation, field, Refusal, text } from './fields.js'

/** A material as the document names it. */
export type MaterialReference = string

/** The name of a material in the library's table. */
export const material = (meaning: string) =>
  field<MaterialReference, MaterialReference>({ meaning, accepts: 'must be the name of a material', json: { type: 'string' } }, (given) => {
    if (typeof given !== 'string') throw new Refusal('must be the name of a material')
    materialByName(given)
    return given
  })

/** The material a reference stands for. */
export const materialOf = (reference: MaterialReference): Material => materialByName(reference)

/** A coarse metric thread such as `M4`. */
export const thread = (meaning: string) => designation('a coarse metric thread', () => metricThread.designations, meaning)
/** Sizes of a thread, SI. */
export const threadOf = (name: string): SiThreadSizes => metricThread.si(name)

/** A property class of bolts such as `8.8`; YAML reads it as a number, which is accepted. */
export const propertyClass = (meaning: string) => {
  const names = () => propertyClassTable.designations
  const inner = designation('a property class', names, meaning)
  return field<string, string | number>(
    { meaning, accepts: 'must be a property class such as 8.8', json: { anyOf: [{ type: 'string' }, { type: 'number' }] } },
    (given) => {
      const result = inner.safeParse(typeof given === 'number' ? given.toFixed(1) : given)
      if (result.success) return result.data
      throw new Refusal(result.error.issues[0]?.message ?? 'must be a property class')
    },
  )
}

/** A parallel pin: its diameter, tolerance zone, and whether it is hardened. */
export interface PinSize {
  readonly diameter: number
  readonly zone: 'm6' | 'h8'
  readonly hardened: boolean
}

const PIN = /^ISO (8734|2338) (\d+(?:\.\d+)?) mm (m6|h8)$/

const pinNames = () => parallelPin.designations.flatMap((d) => [`ISO 8734 ${d} mm m6`, `ISO 2338 ${d} mm m6`, `ISO 2338 ${d} mm h8`])

/** A pin by standard, such as `ISO 8734 4 mm m6`. */
export const pinSize = (meaning: string) => designation('a parallel pin', pinNames, meaning)
/** What a pin's designation says. */
export function pinOf(name: string): PinSize {
  const [, standard, diameter, zone] = PIN.exec(name) as unknown as [string, string, string, 'm6' | 'h8']
  return { diameter: parallelPin.si(diameter).diameter, zone, hardened: standard === '8734' }
}

/** A bearing's boundary dimensions. */
export interface BearingSize {
  readonly bore: number
  readonly outerDiameter: number
  readonly width: number
}
const BEARING = /^(\d+) x (\d+) x (\d+) mm$/
/** A deep-groove ball bearing by bore, outer diameter and width, such as `8 x 22 x 7 mm`. */
export const bearingName = (meaning: string) =>
  field<string, string>(
    {
      meaning,
      accepts: "must be bore x outer diameter x width such as '8 x 22 x 7 mm'",
      json: { type: 'string', pattern: BEARING.source },
    },
    (given) => {
      if (typeof given === 'string' && BEARING.test(given)) return given
      throw new Refusal("must be bore x outer diameter x width such as '8 x 22 x 7 mm'")
    },
  )
/** Dimensions of a bearing, SI. */
export function bearingOf(name: string): BearingSize {
  const [, bore, outer, width] = BEARING.exec(name) as unknown as string[]
  return { bore: Number(bore) / 1000, outerDiameter: Number(outer) / 1000, width: Number(width) / 1000 }
}

/** A cord fibre of the table. */
export const fibre = (meaning: string) => designation('a cord fibre', fibreNames, meaning)
/** The name of a cord; whether it is in the section of cords is looked at when the whole document is read. */
export const cordName = (meaning: string) => text(meaning)
