import { atLeast, atMost, type Given, type Proposals, proposalsOf, readInputs, type Si } from '../formula/index.js'
import { Quantity, refuse } from '../units/index.js'
import { headBearing } from './head-bearing.js'
import { boltFatigue, jointLoads, jointReserves, jointSlip } from './joint-loads.js'
import { preloadAtUtilisation } from './preload.js'
import { boltStrength, propertyClass } from './property-class.js'
import { type CoarseThread, metricThread } from './thread-sizes.js'
import { tighteningTorque } from './tightening.js'

const CLASSES = ['8.8', '10.9', '12.9', 'A2-70'] as const
const THREADS = ['M2', 'M2.5', 'M3', 'M4', 'M5', 'M6', 'M8'] as const satisfies readonly CoarseThread[]

const WISH = {
  /** Tension and sideways force on the whole group, shared equally. */
  tension: { kind: 'force', min: 0 },
  /** Sideways force on the whole group, shared equally. */
  shear: { kind: 'force', min: 0 },
  /** Least and most bolts. */
  fewest: { kind: 'count', min: 1, max: 32, whole: true, default: 2 },
  /** Most bolts. Default 6. */
  most: { kind: 'count', min: 1, max: 32, whole: true, default: 6 },
  /** Outer diameter of the washers over that of the thread. */
  washerRatio: { kind: 'ratio', above: 1.2, max: 6, default: 2.2 },
  /** Room around one bolt: largest outer diameter of its washer. */
  washerSpace: { kind: 'length', above: 0 },
  /** Allowable pressure under the washers for the time of the clamp load; for metal sleeves, theirs. */
  allowablePressure: { kind: 'stress', above: 0 },
  /** Least share of the preload left at the end of the season. */
  clampLoadLeft: { kind: 'ratio', above: 0, max: 1, default: 0.5 },
  /** Share of an outside load that the bolt takes. */
  loadFactor: { kind: 'ratio', above: 0, below: 1, default: 0.1 },
  /** Lowest friction of the clamped faces. */
  faceFriction: { kind: 'ratio', above: 0, max: 1, default: 0.2 },
  /** Friction in thread and under the head. */
  friction: { kind: 'ratio', above: 0, max: 0.5, default: 0.14 },
  /** Capacity over demand that every limit must keep. Default 1.25. */
  requiredReserve: { kind: 'ratio', min: 1, default: 1.25 },
} as const

/** Load of a group of bolts, and the space that it must fit. */
export type BoltsWish = Given<typeof WISH> & {
  /** Threads and classes at hand. Default: M2 to M8; 8.8, 10.9, 12.9, A2-70. */
  readonly threads?: readonly CoarseThread[]
  /** Property classes at hand. Default: 8.8, 10.9, 12.9, A2-70. */
  readonly classes?: readonly (typeof CLASSES)[number][]
}
type BoltsWishNumbers = Si<typeof WISH>

/** A group of bolts that was proposed. */
export interface ProposedBolts {
  readonly thread: CoarseThread
  readonly propertyClass: (typeof CLASSES)[number]
  readonly count: number
  readonly preload: Quantity<'force'>
  readonly tighteningTorque: Quantity<'torque'>
  readonly washerDiameter: Quantity<'length'>
}

const WHERE = 'fasteners.proposeBolts'

/** Share of the yield strength that tightening uses. */
const UTILISATION = 0.7

/**
 * Bolts for a clamped joint of prints: thread, class, number, preload and tightening torque. The preload is the least of what the bolt and what the part under
 * the washer stand. Every group listed stays closed and does not slip with what is left of it, the lightest first.
 *
 * Throws one `InputError` that lists every bad input.
 */
export function proposeBolts(wish: BoltsWish): Proposals<ProposedBolts> {
  const { threads = THREADS, classes = CLASSES, ...rest } = wish
  const read = readInputs(WHERE, WISH, rest as Given<typeof WISH>)
  if (read.most < read.fewest) refuse(WHERE, 'most', read.most, `must be at least the fewest bolts, ${read.fewest}`)
  if (threads.length === 0) refuse(WHERE, 'threads', threads, 'must hold at least one thread')
  if (classes.length === 0) refuse(WHERE, 'classes', classes, 'must hold at least one property class')
  // A name that is none is an error here.
  for (const name of threads) metricThread(name)
  for (const name of classes) propertyClass(name)
  return proposalsOf(
    read,
    (x) => {
      const counts = Array.from({ length: x.most - x.fewest + 1 }, (_, i) => x.fewest + i)
      return threads.flatMap((thread) => classes.flatMap((name) => counts.map((count) => candidate(x, thread, name, count))))
    },
    [
      { input: 'tension', kind: 'force', easiest: 0, within: 1e-3 * read.tension },
      { input: 'shear', kind: 'force', easiest: 0, within: 1e-3 * read.shear },
      { input: 'washerSpace', kind: 'length', easiest: 100 * read.washerSpace },
      { input: 'allowablePressure', kind: 'stress', easiest: 100 * read.allowablePressure },
    ],
  )
}

function candidate(x: BoltsWishNumbers, name: CoarseThread, strength: (typeof CLASSES)[number], count: number) {
  const thread = metricThread.si(name)
  const bolt = propertyClass.si(strength)
  const washerDiameter = x.washerRatio * thread.diameter
  const ring = { bearingDiameter: washerDiameter, holeDiameter: 1.1 * thread.diameter }
  const { allowableForce } = headBearing.si({ force: 1, ...ring, allowablePressure: x.allowablePressure })
  const held = preloadAtUtilisation.si({
    thread,
    yieldStrength: bolt.yieldStrength,
    threadFriction: x.friction,
    utilisation: UTILISATION,
    torsion: 'plastic',
  })
  const preload = Math.min(held, allowableForce / x.requiredReserve)
  const turned = { threadFriction: x.friction, headFriction: x.friction, ...ring, prevailingTorque: 0 }
  const { torque } = tighteningTorque.si({ preload, thread, ...turned })
  const design: ProposedBolts = {
    thread: name,
    propertyClass: strength,
    count,
    preload: new Quantity(preload, 'force'),
    tighteningTorque: new Quantity(torque, 'torque'),
    washerDiameter: new Quantity(washerDiameter, 'length'),
  }
  const { proofLoad } = boltStrength.si({ thread, bolt, shearRatio: 0.6 })
  const pressure = headBearing.si({ force: preload, ...ring, allowablePressure: x.allowablePressure }).pressure
  const limits = [...clampLimits(x, { preload, count, thread, proofLoad }), ...pressureLimits(x, pressure, washerDiameter)]
  return { design, limits, cost: count * thread.diameter ** 3 }
}

const pressureLimits = (x: BoltsWishNumbers, pressure: number, washerDiameter: number) => [
  atMost('pressure under the washers', 'stress', pressure, x.allowablePressure / x.requiredReserve),
  atMost('outer diameter of the washers', 'length', washerDiameter, x.washerSpace),
]

interface Clamped {
  readonly preload: number
  readonly count: number
  readonly thread: ReturnType<typeof metricThread.si>
  readonly proofLoad: number
}

function clampLimits(x: BoltsWishNumbers, { preload, count, thread, proofLoad }: Clamped) {
  const { loadFactor, requiredReserve: reserve } = x
  const externalLoad = x.tension / count
  const clampLoad = x.clampLoadLeft * preload
  const { separationLoad, faceLoad } = jointLoads.si({ clampLoad, externalLoad, loadFactor })
  const { slipForce } = jointSlip.si({ faceLoad: count * faceLoad, friction: x.faceFriction, faces: 1, shearForce: x.shear })
  const fatigue = boltFatigue.si({ thread, largestLoad: externalLoad, smallestLoad: 0, clampLoad, loadFactor })
  const yieldReserve =
    externalLoad === 0 ? proofLoad / preload : jointReserves.si({ clampLoad: preload, externalLoad, loadFactor, proofLoad }).yieldReserve
  return [
    atLeast('tension of a bolt at which the joint opens', 'force', separationLoad, reserve * externalLoad),
    atLeast('sideways force at which the joint slips', 'force', slipForce, reserve * x.shear),
    atLeast('reserve of a bolt against permanent stretch', 'ratio', yieldReserve, 1),
    atMost('stress amplitude of a bolt', 'stress', fatigue.amplitude, fatigue.allowableAmplitude / reserve),
  ]
}
