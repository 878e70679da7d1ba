import { formula, type Inputs, readInputs } from '../formula/index.js'
import { type In, Quantity } from '../units/index.js'
import { rockerFromCrankInto } from './four-bar-angles.js'
import { COUPLER, CRANK, FOUR_BAR_POSE, ROCKER } from './four-bar-inputs.js'
import { type FourBarSi, type FourBarSpecification, SPECIFICATION } from './four-bar-specification.js'

/** How fast the rocker of a four-bar linkage turns for each turn of its crank, from the directions of its links. */
export const fourBarSpeedRatio = /* @__PURE__ */ formula('kinematics.fourBarSpeedRatio', {
  inputs: {
    ...CRANK,
    ...ROCKER,
    ...FOUR_BAR_POSE,
  },
  /** Rocker speed over crank speed; torque goes the other way round. */
  output: 'ratio',
  equation: ['result = crank * sin(crankAngle - couplerAngle) / (rocker * sin(rockerAngle - couplerAngle))'],
  assumes: ['rigid links, no clearance in the pins'],
  source: [{ level: 'unverified', where: 'R. L. Norton, Design of Machinery, ch. 6: ω4/ω2 = a sin(θ2 − θ3) / c sin(θ4 − θ3)' }],
  si: ({ crank, rocker, crankAngle, couplerAngle, rockerAngle }) =>
    (crank * Math.sin(crankAngle - couplerAngle)) / (rocker * Math.sin(rockerAngle - couplerAngle)),
})

const acute = (cosine: number) => Math.acos(Math.min(1, Math.abs(cosine)))

/** How well a four-bar linkage whose crank goes all the way round transmits force at its two worst places (crank along the line of the fixed pivots). */
export const transmissionAngleExtremes = /* @__PURE__ */ formula('kinematics.transmissionAngleExtremes', {
  inputs: {
    /** Distance of the fixed pivots. */
    ground: { kind: 'length', above: 0 },
    ...CRANK,
    ...COUPLER,
    ...ROCKER,
  },
  output: {
    /** Acute angle of coupler and rocker with the crank towards the rocker's pivot. */
    crankInward: 'angle',
    /** Acute angle of coupler and rocker with the crank away from the rocker's pivot. */
    crankOutward: 'angle',
  },
  equation: [
    'crankInward = acos(min(1, abs(coupler^2 + rocker^2 - (ground - crank)^2) / (2 * coupler * rocker)))',
    'crankOutward = acos(min(1, abs(coupler^2 + rocker^2 - (ground + crank)^2) / (2 * coupler * rocker)))',
  ],
  assumes: ['the crank reaches both places'],
  valid: {
    'the linkage assembles with the crank along the line of the fixed pivots': ({ ground, crank, coupler, rocker }) =>
      ground + crank <= coupler + rocker && Math.abs(ground - crank) >= Math.abs(coupler - rocker),
  },
  source: [{ level: 'unverified', where: 'R. L. Norton, Design of Machinery, ch. 4: cos μ = |b² + c² − (g ∓ a)²| / 2bc' }],
  si: ({ ground, crank, coupler, rocker }) => ({
    crankInward: acute((coupler ** 2 + rocker ** 2 - (ground - crank) ** 2) / (2 * coupler * rocker)),
    crankOutward: acute((coupler ** 2 + rocker ** 2 - (ground + crank) ** 2) / (2 * coupler * rocker)),
  }),
})

/** Which of the two ways a four-bar assembles for one crank angle. */
export type FourBarAssembly = 'open' | 'crossed'

/** A four-bar linkage at one crank angle. Angles are from the line of the fixed pivots, crank pivot to rocker pivot. */
export interface FourBarPose {
  readonly assembles: true
  readonly couplerAngle: Quantity<'angle'>
  readonly rockerAngle: Quantity<'angle'>
  /** Coupler speed over crank speed; infinite where coupler and rocker are in line, `undefined` at a change point. */
  readonly couplerSpeedRatio: Quantity<'ratio'> | undefined
  /** Rocker speed over crank speed; infinite where coupler and rocker are in line, `undefined` at a change point, where it may go on in two ways. */
  readonly rockerSpeedRatio: Quantity<'ratio'> | undefined
  /** Rocker torque over crank torque; infinite where crank and coupler are in line, `undefined` at a change point. */
  readonly mechanicalAdvantage: Quantity<'ratio'> | undefined
  /** The **acute** angle between coupler and rocker. */
  readonly transmissionAngle: Quantity<'angle'>
  /** The transmission angle is at least 40°, the usual advice. */
  readonly transmitsWell: boolean
  /** Crank, coupler and rocker are all in one line: both ways of assembly meet and the linkage may flip to the other. */
  readonly changePoint: boolean
}

/** The linkage cannot be assembled at this crank angle. */
export interface FourBarApart {
  readonly assembles: false
  /** Crank pin too far from, or too near to, the rocker's pivot for coupler and rocker to span. */
  readonly reason: 'pinTooFar' | 'pinTooNear'
  /** By how much the distance fails. */
  readonly gap: Quantity<'length'>
}

/** Whether the crank turns fully. */
export type FourBarMotion = 'crankRocker' | 'doubleCrank' | 'rockerCrank' | 'doubleRocker' | 'tripleRocker' | 'changePoint'

const SAME_POINT = 1e-9
const GOOD_TRANSMISSION = (40 * Math.PI) / 180

/**
 * A planar four-bar linkage: ground, crank, coupler, rocker. Immutable.
 *
 * Source of the closure: F. Freudenstein, *Trans. ASME* 77 (1955) 853; any text on the design of machinery.
 */
export class FourBar {
  /** @internal Use `fourBar`. */
  constructor(
    /** Lengths in metres. */
    readonly si: FourBarSi,
  ) {}

  /** How the linkage moves, by Grashof's criterion. */
  get motion(): FourBarMotion {
    const { ground, crank, coupler, rocker } = this.si
    const shortest = Math.min(ground, crank, coupler, rocker)
    const longest = Math.max(ground, crank, coupler, rocker)
    const excess = 2 * (shortest + longest) - (ground + crank + coupler + rocker)
    if (Math.abs(excess) <= SAME_POINT * longest) return 'changePoint'
    if (excess > 0) return 'tripleRocker'
    return shortest === crank ? 'crankRocker' : shortest === ground ? 'doubleCrank' : shortest === rocker ? 'rockerCrank' : 'doubleRocker'
  }

  /** Directions, speeds and force transmission at a crank angle, or a typed answer that the linkage does not assemble there. */
  at(given: { readonly crankAngle: In<'angle'>; readonly assembly: FourBarAssembly }): FourBarPose | FourBarApart {
    const { crankAngle, assembly } = readInputs('kinematics.fourBar.at', AT, given)
    const { ground, crank, coupler, rocker } = this.si
    const found = new Float64Array(2)
    const reason = rockerFromCrankInto(found, 0, this.si, crankAngle, assembly === 'open' ? -1 : 1)
    if (reason !== undefined) {
      const pin = Math.hypot(crank * Math.cos(crankAngle) - ground, crank * Math.sin(crankAngle))
      const gap = reason === 'pinTooFar' ? pin - coupler - rocker : Math.abs(coupler - rocker) - pin
      return { assembles: false, reason, gap: new Quantity(gap, 'length') }
    }
    const [rockerAngle, couplerAngle] = found as unknown as [number, number]
    const ratio = fourBarSpeedRatio.si({ crank, rocker, crankAngle, couplerAngle, rockerAngle })
    const across = Math.sin(rockerAngle - couplerAngle)
    const crankAcross = Math.sin(crankAngle - couplerAngle)
    const transmission = Math.atan2(Math.abs(across), Math.abs(Math.cos(rockerAngle - couplerAngle)))
    const changePoint = Math.abs(across) < SAME_POINT && Math.abs(crankAcross) < SAME_POINT
    const couplerRatio = (crank * Math.sin(rockerAngle - crankAngle)) / (coupler * Math.sin(couplerAngle - rockerAngle))
    return {
      assembles: true,
      couplerAngle: new Quantity(couplerAngle, 'angle'),
      rockerAngle: new Quantity(rockerAngle, 'angle'),
      couplerSpeedRatio: changePoint ? undefined : new Quantity(couplerRatio, 'ratio'),
      rockerSpeedRatio: changePoint ? undefined : new Quantity(ratio, 'ratio'),
      mechanicalAdvantage: changePoint ? undefined : new Quantity(1 / ratio, 'ratio'),
      transmissionAngle: new Quantity(transmission, 'angle'),
      transmitsWell: transmission >= GOOD_TRANSMISSION - 1e-12,
      changePoint,
    }
  }
}

const AT = { crankAngle: 'angle', assembly: { oneOf: ['open', 'crossed'] } } as const satisfies Inputs

/** Makes a four-bar linkage. Throws an `InputError` for a length that is not positive; poses that do not assemble are answered by `at`. */
export const fourBar = (given: FourBarSpecification): FourBar => new FourBar(readInputs('kinematics.fourBar', SPECIFICATION, given))
