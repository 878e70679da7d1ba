import type { Given, Inputs, Si } from '../formula/index.js'
import { refuse } from '../units/index.js'
import type { DriveCoupling } from './coupling.js'
import { LINK } from './link.js'
import { xyz } from './vectors.js'

const GEARED_ROTOR = {
  fields: {
    /** Moment of inertia of the rotor about its own axis. */
    rotorInertia: { kind: 'momentOfInertia', min: 0 },
    /** Turns of the rotor for one turn of the drum. */
    ratio: { kind: 'ratio', above: 0 },
    /** Sense of the rotor against its drum; it counts for a knee motor on the thigh. Default withDrum. */
    rotorTurns: { oneOf: ['withDrum', 'againstDrum'], default: 'withDrum' },
  },
  optional: true,
} as const

export const LINKS = ['hipLink', 'upperLink', 'lowerLink'] as const
export const SPECIFICATION = {
  /** The link between the sideways hip and the hip; its centre of mass is measured from the sideways hip's axis. */
  hipLink: { fields: LINK },
  /** The link from hip to knee; its centre of mass is measured from the hip point. */
  upperLink: { fields: LINK },
  /** The link from knee to foot, with the foot; its centre of mass is measured from the knee. */
  lowerLink: { fields: LINK },
  /** Acceleration of free fall as a vector in the leg's frame. Default 9.80665 m/s² downward. */
  gravity: { fields: /* @__PURE__ */ xyz('acceleration'), optional: true },
  /** Motors and other bodies that are fixed to a link. Default: none. */
  motors: {
    list: {
      fields: {
        /** The link that the motor is bolted to. */
        on: { oneOf: LINKS },
        ...LINK,
      },
    },
    least: 0,
    optional: true,
  },
  /** Rotors with their reductions, which act through the coupling. Default: none. */
  rotors: {
    fields: {
      /** Rotor of the sideways hip's drive. Default: none. */
      sidewaysHip: GEARED_ROTOR,
      /** Rotor of the hip's drive. Default: none. */
      hip: GEARED_ROTOR,
      /** Rotor of the knee's drive. Default: none. */
      knee: GEARED_ROTOR,
    },
    optional: true,
  },
} as const satisfies Inputs

/**
 * Masses of a leg. Each link's centre of mass is taken from its own joint, in a frame parallel to the leg's frame when the leg hangs straight down:
 * the hip link's from the sideways hip's axis, the upper link's from the hip point, the lower link's from the knee (foot included). Gravity is a vector of
 * the leg's frame, so that a slope or a tilted body can be given. Default: 9.80665 m/s² downward.
 *
 * `motors` are bodies fixed to a link, placed as the link's own centre of mass is, rotors included as if they were locked. `rotors` are the moments of
 * inertia of the rotors about their own axes with their reductions; they act through the coupling.
 */
export interface LegMasses extends Given<typeof SPECIFICATION> {
  /** How the knee is driven, for the rotors. Default: the motor is at the knee. */
  readonly coupling?: DriveCoupling
}

/** Inertia of the rotors as the joints feel it, row-major (9 numbers): Aᵀ diag(N² J) A, and what a knee rotor on the thigh shares with the hip. */
export function rotorsAtJoints(where: string, rotors: Si<typeof SPECIFICATION>['rotors'], coupling: DriveCoupling): Float64Array {
  const out = new Float64Array(9)
  if (rotors === undefined) return out
  const { sidewaysHip, hip, knee } = rotors
  if (knee !== undefined && !coupling.constantRatio)
    refuse(
      where,
      'rotors.knee',
      knee,
      'must be absent with a four-bar knee, because its ratio changes with the pose; give the rotor to strideDemand',
    )
  const atDrum = [sidewaysHip, hip, knee].map((r) => (r === undefined ? 0 : r.ratio ** 2 * r.rotorInertia))
  const straight = [0, 0, 0]
  coupling.si.jointMatrixInto(out, 0, straight, atDrum)
  if (knee !== undefined && coupling.si.carried === 0) {
    const shared = (knee.rotorTurns === 'withDrum' ? 1 : -1) * knee.ratio * knee.rotorInertia * coupling.si.kneeRatio(0)
    out[5]! += shared
    out[7]! += shared
  }
  return out
}
