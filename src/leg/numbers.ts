import { InputError, Quantity, show } from '../units/index.js'
import type { LegCalculation } from './calculation.js'
import { type Matter, type MoistureState, matterOf } from './matter.js'
import type { Leg } from './specification/describe.js'
import type { OwnMaterial } from './specification/own-material.js'
import type { LegData } from './specification/schema.js'
import { type BearingNumbers, bearingOf, materialOf, type PinSize, pinOf } from './specification/tables.js'

/** Which end of every range a leg is assessed with: the typical values, or all the bad or all the good ends together. */
export type End = 'pessimistic' | 'typical' | 'optimistic'

/** The same data with every quantity as its SI number. */
export type SiOf<T> = T extends Quantity
  ? number
  : T extends string | number | boolean | undefined
    ? T
    : T extends readonly (infer E)[]
      ? SiOf<E>[]
      : { [K in keyof T]: SiOf<T[K]> }

/** A leg's data as SI numbers. */
export type LegNumbers = SiOf<LegData>

/** Every quantity of a leg as its SI number: the form that sweeps vary. */
export const legNumbers = (leg: Leg | LegData): LegNumbers => {
  if (typeof leg !== 'object' || leg === null || typeof leg.environment !== 'object')
    throw new InputError('leg', [{ path: 'leg', given: show(leg), accepts: 'must be a leg as describeLeg returns it' }])
  const { defaults: _, ...data } = leg as Leg
  return si(data) as LegNumbers
}

function si(value: unknown): unknown {
  if (value instanceof Quantity) return value.si
  if (Array.isArray(value)) return value.map(si)
  if (typeof value !== 'object' || value === null) return value
  const result: Record<string, unknown> = {}
  for (const name in value) result[name] = si((value as Record<string, unknown>)[name])
  return result
}

/** The joints that are driven through cord. */
export const JOINTS = ['hip', 'knee'] as const
/** A joint that is driven through cord. */
export type Joint = (typeof JOINTS)[number]

/** What follows for one drive from its data alone. */
export interface DriveNumbers {
  readonly pinionRadius: number
  readonly drumRadius: number
  /** Ratio on the centre lines of the cord. */
  readonly ratio: number
  readonly cord: LegNumbers['cords'][string]
  readonly friction: number
  readonly pretensionLeft: number
  readonly drum: Matter
}

/** A leg's numbers with what follows from tables: radii, materials, threads, pins. */
export interface Prepared {
  readonly x: LegNumbers
  readonly end: End
  readonly moisture: MoistureState
  /** The material of a name, in this leg's state. */
  readonly matter: (name: string) => Matter
  readonly drives: { readonly [J in Joint]: DriveNumbers }
  readonly pins: { readonly [J in Joint]: PinSize }
  readonly bosses: { readonly [J in Joint]: Matter }
  readonly links: { readonly upper: Matter; readonly lower: Matter }
  readonly plate: Matter
  readonly sink: Matter | undefined
  readonly foot: Matter
  readonly cap: Matter
  readonly seat: Matter
  readonly bearing: BearingNumbers
  readonly steel: Matter
  readonly groundFriction: number
  /** What films carry over what their formulas say. */
  readonly coolingFactor: number
  /** What was worked out once (see `once.ts`), and for which leg: a changed copy of it starts anew. */
  readonly kept: { leg: Prepared | undefined; calculation: LegCalculation | undefined }
}

const bandAt = (band: { low: number; typical: number; high: number }, end: End, badIs: 'low' | 'high') =>
  end === 'typical' ? band.typical : (end === 'pessimistic') === (badIs === 'low') ? band.low : band.high

/** Air this dry leaves prints dry, air this damp soaks them. */
const DRY_AIR = 0.35
const DAMP_AIR = 0.75

/** Looks up what the numbers name. Cheap enough to repeat for every leg of a sweep: materials and threads are kept. */
export function prepare(x: LegNumbers, end: End = 'typical'): Prepared {
  const { humidity } = x.environment
  const moisture: MoistureState = humidity <= DRY_AIR ? 'dry' : humidity <= DAMP_AIR ? 'conditioned' : 'saturated'
  const own = x.materials as Readonly<Record<string, OwnMaterial>> | undefined
  const matter = (name: string) => matterOf(materialOf(name, own), end, moisture)
  const drive = (joint: Joint): DriveNumbers => {
    const { pinion, drum, cord: name, friction } = x.drives[joint]
    const cord = x.cords[name] as LegNumbers['cords'][string]
    const pinionRadius = radius(pinion, cord.diameter)
    const drumRadius = radius(drum, cord.diameter)
    return {
      pinionRadius,
      drumRadius,
      ratio: drumRadius / pinionRadius,
      cord,
      friction: bandAt(friction, end, 'low'),
      pretensionLeft: bandAt(cord.pretensionLeft, end, 'low'),
      drum: matter(drum.material),
    }
  }
  const prepared: Prepared = {
    x,
    end,
    moisture,
    matter,
    drives: { hip: drive('hip'), knee: drive('knee') },
    pins: { hip: pinOf(x.pins.hip.size), knee: pinOf(x.pins.knee.size) },
    bosses: { hip: matter(x.bosses.hip.material), knee: matter(x.bosses.knee.material) },
    links: { upper: matter(x.links.upper.material), lower: matter(x.links.lower.material) },
    plate: matter(x.plate.material),
    sink: x.sink === undefined ? undefined : matter(x.sink.material),
    foot: matter(x.foot.material),
    cap: matter(x.shaft.capMaterial),
    seat: matter(x.bearings.seatMaterial),
    bearing: bearingOf(x.bearings.size, x.bearings.own) as BearingNumbers,
    steel: matter('steel 12.9'),
    groundFriction: bandAt(x.foot.groundFriction, end, 'low'),
    coolingFactor: bandAt(x.environment.coolingFactor, end, 'low'),
    kept: { leg: undefined, calculation: undefined },
  }
  prepared.kept.leg = prepared
  return prepared
}

const radius = (pulley: { grooveDiameter?: number | undefined; centreLineRadius?: number | undefined }, cordDiameter: number): number =>
  pulley.centreLineRadius ?? ((pulley.grooveDiameter as number) + cordDiameter) / 2
