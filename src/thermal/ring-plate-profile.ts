import { formula } from '../formula/index.js'
import { besselJ0 } from '../numeric/index.js'
import { admittanceAt, type IsotropicDepth, isotropicDepth } from './plate-depth.js'
import { plateModes } from './plate-modes.js'
import { RING_FITS, RING_RESOLVED, ROUND_PLATE, ringOnPlate } from './ring-plate.js'
import { coupledAmplitudes, type RingPlate, shapeOf, TERMS } from './ring-plate-modes.js'

/** A plate this thick in units of a mode hides its free face from that mode. */
const DEEP = 300

/** Temperature of the free face over that of the motor's face, for one mode of the plate. */
function throughDepth({ thickness, conductivity, freeFaceCoefficient }: IsotropicDepth, wave: number): number {
  const inside = conductivity * wave
  if (inside === 0) return 1 / (1 + (freeFaceCoefficient * thickness) / conductivity)
  const depth = wave * thickness
  return depth > DEEP ? 0 : 1 / (Math.cosh(depth) + (freeFaceCoefficient / inside) * Math.sinh(depth))
}

/** Wave numbers of the modes and the amplitude of each on the motor's face, per watt. */
function modesOf(x: RingPlate, depth: IsotropicDepth): { readonly waves: Float64Array; readonly amplitudes: Float64Array } {
  const { plateRadius } = x
  const { zeros, squares } = plateModes()
  const { sources, coupled } = shapeOf(x)
  const waves = Float64Array.from(sources, (_, m) => (m === 0 ? 0 : zeros[m - 1]! / plateRadius))
  const covered = x.underMotor === 'covered' && x.motorFaceCoefficient > 0
  const short = covered ? { ...depth, motorFaceCoefficient: 0 } : depth
  const first = covered ? coupledAmplitudes(x, depth) : []
  const half = (plateRadius * plateRadius) / 2
  const amplitudes = sources.map((source, m) => {
    const own = covered && m < coupled ? first[m]! : source / (half * (m === 0 ? 1 : squares[m - 1]!) * admittanceAt(short, waves[m]!))
    // The flux of one watt over the ring.
    return own / (2 * Math.PI * sources[0]!)
  })
  return { waves, amplitudes }
}

/**
 * Temperature of a plate under a ring-shaped motor by radius: rise above the air of both faces per watt, from the axis to the rim. The mean over the ring is
 * `ringOnPlate`.
 *
 * Multiply by the heat that enters the plate. The modes that are cut off leave up to 0.2 % of a printed plate's rise next to the ring. A rectangular plate has the radius of the round one of equal area; its corners are cooler than that rim.
 */
export const ringPlateProfile = /* @__PURE__ */ formula('thermal.ringPlateProfile', {
  inputs: {
    ...ROUND_PLATE,
    /** Radii at which the rise is calculated. */
    radii: { list: { kind: 'length', min: 0 } },
  },
  output: {
    /** Rise of the motor's face at each radius, per watt. */
    motorFace: { list: 'thermalResistance' },
    /** Rise of the free face at each radius, per watt. */
    freeFace: { list: 'thermalResistance' },
    /** Mean of the ring, per watt. */
    ring: 'thermalResistance',
  },
  assumes: [
    'round plate with an adiabatic rim, one conductivity along its faces and one through it, steady',
    'uniform flux over the ring; one coefficient per face outside what the motor covers',
  ],
  requires: {
    innerRadius: RING_FITS.innerRadius,
    plateRadius: RING_FITS.plateRadius,
    radii: {
      accepts: 'must be one or more, none beyond the plate',
      holds: ({ radii, plateRadius }) => radii.length > 0 && radii.every((radius) => radius <= plateRadius * (1 + 1e-9)),
    },
  },
  valid: RING_RESOLVED,
  source: [
    {
      level: 'computed',
      where:
        'the series of thermal.ringOnPlate at each radius; outside the ring of a thin plate it is the annular fin with an adiabatic tip',
    },
  ],
  si: ({ radii, ...x }) => {
    const depth = isotropicDepth(x)
    const { waves, amplitudes } = modesOf(x, depth)
    const far = amplitudes.map((amplitude, m) => amplitude * throughDepth(depth, waves[m]!))
    const motorFace: number[] = []
    const freeFace: number[] = []
    for (const radius of radii) {
      let [near, behind] = [0, 0]
      for (let m = 0; m <= TERMS; m++) {
        const shape = besselJ0(waves[m]! * radius)
        near += amplitudes[m]! * shape
        behind += far[m]! * shape
      }
      motorFace.push(near)
      freeFace.push(behind)
    }
    return { motorFace, freeFace, ring: ringOnPlate.si(x).ring }
  },
})
