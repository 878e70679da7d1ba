import {
  boltCompliance,
  boltStrength,
  clearanceHole,
  hexNut,
  loadFactor,
  memberCompliance,
  metricThread,
  preloadFromTorque,
  propertyClass,
  socketHead,
  washer,
} from '../../fasteners/index.js'
import type { Evaluator } from '../../formula/index.js'
import type { Matter } from '../matter.js'
import type { Prepared } from '../numbers.js'
import { oncePerLegAnd } from '../once.js'
import type { Scene } from '../state.js'

/** The groups of bolts. */
export const BOLT_GROUPS = ['stack', 'motor'] as const
/** A group of bolts. */
export type BoltGroup = (typeof BOLT_GROUPS)[number]

/** A tightened bolt and what it clamps, SI. */
export interface TightBolt {
  readonly thread: ReturnType<typeof metricThread.si>
  readonly preload: number
  readonly holeDiameter: number
  /** Diameter on which head (or its washer) presses. */
  readonly bearingDiameter: number
  readonly layers: readonly Matter[]
  readonly grip: number
  readonly boltCompliance: number
  readonly memberCompliance: number
  /** Share of an outside load that the bolt takes. */
  readonly loadFactor: number
}

const STEEL_MODULUS = 205e9
/** Shear strength of bolts over their tensile strength: common practice, as `boltStrength` has it. */
const SHEAR_RATIO = 0.6
/** A printed boss as wide as this many head diameters behaves as an endless plate. */
const WIDE = 3

/** Preload, compliances and load factor of one bolt of a group. */
export const tightBolt = (of: Evaluator, { leg }: Scene, group: BoltGroup): TightBolt => tightBoltOf(of, leg, group)

/** The same for a leg alone. */
export const tightBoltOf = /* @__PURE__ */ oncePerLegAnd(BOLT_GROUPS, workedOut)

/** Load up to which its steel keeps no permanent stretch. */
export const proofOf = /* @__PURE__ */ oncePerLegAnd(BOLT_GROUPS, (of, { x }, group): number => {
  const { thread, propertyClass: name } = x.bolts[group]
  return of(boltStrength, { thread: metricThread.si(thread), bolt: propertyClass.si(name), shearRatio: SHEAR_RATIO }).proofLoad
})

function workedOut(of: Evaluator, leg: Prepared, group: BoltGroup): TightBolt {
  const bolts = leg.x.bolts[group]
  const thread = metricThread.si(bolts.thread)
  const head = socketHead.si(bolts.thread)
  const holeDiameter = clearanceHole.si(bolts.thread).medium
  const { preload } = of(preloadFromTorque, {
    torque: bolts.tighteningTorque,
    thread,
    threadFriction: bolts.friction,
    headFriction: bolts.friction,
    bearingDiameter: head.bearingDiameter,
    holeDiameter,
    prevailingTorque: 0,
  })
  const ring = washer.si(bolts.thread)
  const bearingDiameter = bolts.washers ? ring.outerDiameter : head.bearingDiameter
  const layers = bolts.stack.map(({ material }) => leg.matter(material))
  const grip = bolts.stack.reduce((sum, { thickness }) => sum + thickness, 0)
  const end = bolts.nut === 'tappedMetal' ? 'tapped' : 'nut'
  const outerDiameter = bolts.bossDiameter ?? WIDE * head.headDiameter
  const bolt = of(boltCompliance, {
    thread,
    modulus: STEEL_MODULUS,
    shankLength: 0,
    // A bolt in tapped metal has a washer under its head only.
    threadLength: grip + (bolts.washers ? (end === 'nut' ? 2 : 1) * ring.thickness : 0),
    head: 'socket',
    end,
    tappedModulus: end === 'tapped' ? STEEL_MODULUS / 3 : undefined,
  })
  const nutBearing = bolts.washers ? ring.outerDiameter : hexNut.si(bolts.thread).bearingDiameter
  const members = of(memberCompliance, {
    layers: bolts.stack.map(({ thickness }, i) => ({
      thickness,
      modulus: bolts.sleeves ? STEEL_MODULUS : (layers[i] as Matter).modulus,
      // A sleeve carries the clamp load through its own wall.
      outerDiameter: bolts.sleeves ? ring.outerDiameter : outerDiameter,
      holeDiameter,
    })),
    headBearing: bearingDiameter,
    nutBearing: Math.max(nutBearing, bearingDiameter * (bolts.washers ? 1 : 0)),
    end,
    halfAngle: Math.PI / 6,
  })
  return {
    thread,
    preload,
    holeDiameter,
    bearingDiameter,
    layers,
    grip,
    boltCompliance: bolt,
    memberCompliance: members.compliance,
    loadFactor: of(loadFactor, { boltCompliance: bolt, memberCompliance: members.compliance }),
  }
}

/** The layer that gives first under pressure at a temperature: the one with least strength. */
export const softest = (layers: readonly Matter[]): Matter =>
  layers.reduce((least, one) => (one.strength.alongLayers.numbers.strength < least.strength.alongLayers.numbers.strength ? one : least))
