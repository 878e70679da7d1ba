import { atMost, type Given, type KeptLimit, type Proposals, proposalsOf, readInputs, type Si } from '../formula/index.js'
import { InputError, issue, Quantity, refuse } from '../units/index.js'
import { type MotorMount, motorMount } from './mount.js'
import type { MountSpecification } from './mount-specification.js'
import { assessMount } from './operating.js'
import type { TypicalMotor } from './propose-motor.js'
import { LONGEST_PLATE } from './rectangular-plate.js'
import { thermalMaterials } from './tables.js'

const POLYMER = {
  /** Thermal conductivity of the printed polymer. */
  conductivity: { kind: 'thermalConductivity', above: 0 },
  /** Density of the printed polymer. */
  density: { kind: 'density', above: 0 },
  /** Specific heat of the printed polymer. */
  specificHeat: { kind: 'specificHeat', above: 0 },
  /** Highest temperature that the polymer may reach at the motor. */
  limit: { kind: 'temperature', above: 0 },
} as const

const WISH = {
  /** Torque held, or the root mean square of a motion, at the rotor. */
  torque: { kind: 'torque', above: 0 },
  /** Speed; 0 is a hold. */
  speed: { kind: 'angularVelocity', min: 0, default: '0 rad/s' },
  /** The polymer that the plate is printed from. */
  polymer: { fields: POLYMER },
  /** Largest plate, wider than the ring of the motor both ways. */
  width: { kind: 'length', above: 0 },
  /** Largest height of the plate. */
  height: { kind: 'length', above: 0 },
  /** Largest thickness of the plate. */
  thickness: { kind: 'length', above: 0 },
  /** Largest height of fins on the mount; 0 is none. */
  finSpace: { kind: 'length', min: 0, default: '0 mm' },
  /** Warmest air. */
  air: { kind: 'temperature', min: '-60 degC', max: '150 degC' },
  /** Speed of the air over the mount. Default 0: still air. */
  airSpeed: { kind: 'velocity', min: 0, default: '0 m/s' },
  /** Highest temperature of winding and magnets. */
  windingLimit: { kind: 'temperature', above: 0, default: '130 degC' },
  /** Highest temperature of the magnets. Default 80 °C. */
  magnetLimit: { kind: 'temperature', above: 0, default: '80 degC' },
  /** Kelvin that every part must stay below its limit. */
  margin: { kind: 'temperatureDifference', min: 0, default: '10 K' },
  /** Largest mass of motor and mount. Default: no limit. */
  mass: { kind: 'mass', above: 0, default: '100 kg' },
} as const

type MountWishNumbers = Si<typeof WISH>

/** Torque that the motor must hold, its surroundings, and the print of its plate. */
export type MountWish = Given<typeof WISH> & {
  /** The motor, as `typicalMotor` describes it. */
  readonly motor: TypicalMotor
}

/** A mount that was proposed. */
export interface ProposedMount {
  readonly plate: { readonly width: Quantity<'length'>; readonly height: Quantity<'length'>; readonly thickness: Quantity<'length'> }
  /** Parts that carry heat off besides the printed plate. */
  readonly aid: 'none' | 'aluminium insert' | 'aluminium plate' | 'fins'
  readonly mass: Quantity<'mass'>
  /** As `motorMount` takes it. */
  readonly specification: MountSpecification
}

const SIZES = [0.75, 1]
const THICKNESSES = [0.6, 1]
const AIDS = ['none', 'aluminium insert', 'aluminium plate', 'fins'] as const

/**
 * Mounts for a motor that must hold a torque: plate sizes within the space, alone, with an aluminium insert, as an aluminium plate, and with fins. Every one
 * listed keeps winding, magnets and polymer below their limits at typical values, the lightest first; `governing` is the limit it uses most.
 *
 * Throws one `InputError` that lists every bad input. Hot motors burn: an estimate, to be checked with a thermometer.
 */
export function proposeMount(wish: MountWish): Proposals<ProposedMount> {
  const where = 'thermal.proposeMount'
  const { motor, ...rest } = (wish ?? {}) as MountWish
  if (!(motor?.ringOuterDiameter instanceof Quantity)) refuse(where, 'motor', motor, 'must be made by typicalMotor')
  const read = readInputs(where, WISH, rest as Given<typeof WISH>)
  const narrow = (['width', 'height'] as const).filter((side) => read[side] <= motor.ringOuterDiameter.si)
  if (narrow.length > 0) {
    const accepts = `must be larger than the ring of the motor, ${new Quantity(motor.ringOuterDiameter.si, 'length')}`
    throw new InputError(
      where,
      narrow.map((side) => issue(side, rest[side], accepts)),
    )
  }
  const built = new Map<string, MotorMount>()
  return proposalsOf(read, (x) => designsFor(x, motor, built), [
    { input: 'torque', kind: 'torque', easiest: 1e-3 * read.torque },
    { input: 'air', kind: 'temperature', easiest: Math.min(read.air, 253.15), within: 1 },
  ])
}

function designsFor(x: MountWishNumbers, typical: TypicalMotor, built: Map<string, MotorMount>) {
  const ring = typical.ringOuterDiameter.si
  return SIZES.flatMap((size) =>
    THICKNESSES.flatMap((thick) =>
      AIDS.filter((aid) => aid !== 'fins' || x.finSpace > 0).map((aid) => {
        const side = (space: number, across: number) =>
          Math.min(
            Math.max(size * space, Math.min(space, 1.1 * ring)),
            LONGEST_PLATE * Math.max(size * across, Math.min(across, 1.1 * ring)),
          )
        const [width, height] = [side(x.width, x.height), side(x.height, x.width)]
        const specification = specificationOf(x, typical, { width, height, thickness: thick * x.thickness, aid })
        const key = `${size} ${thick} ${aid} ${x.air}`
        const mount = built.get(key) ?? motorMount(typical.motor, specification)
        built.set(key, mount)
        const design: ProposedMount = {
          plate: {
            width: new Quantity(width, 'length'),
            height: new Quantity(height, 'length'),
            thickness: new Quantity(thick * x.thickness, 'length'),
          },
          aid,
          mass: mount.mass,
          specification,
        }
        return { design, limits: limitsOf(x, mount), cost: mount.mass.si }
      }),
    ),
  )
}

interface Chosen {
  readonly width: number
  readonly height: number
  readonly thickness: number
  readonly aid: (typeof AIDS)[number]
}

function specificationOf(
  x: MountWishNumbers,
  { body, ringOuterDiameter }: TypicalMotor,
  { width, height, thickness, aid }: Chosen,
): MountSpecification {
  const length = (l: number) => new Quantity(l, 'length')
  const { conductivity, density, specificHeat } = x.polymer
  const short = Math.min(width, height)
  const printed = {
    conductivity: new Quantity(conductivity, 'thermalConductivity'),
    density: new Quantity(density, 'density'),
    specificHeat: new Quantity(specificHeat, 'specificHeat'),
  }
  const { aluminium6061 } = thermalMaterials
  return {
    body,
    plate: {
      width: length(width),
      height: length(height),
      thickness: length(aid === 'aluminium plate' ? Math.min(thickness, 3e-3) : thickness),
      ...(aid === 'aluminium plate' ? { ...aluminium6061, emissivity: 0.8 } : printed),
    },
    ...(aid === 'aluminium insert' && {
      insert: { diameter: length(0.5 * (ringOuterDiameter.si + short)), thickness: length(Math.min(2e-3, 0.4 * thickness)) },
    }),
    ...(aid === 'fins' && {
      sink: {
        width: length(0.5 * short),
        height: length(0.5 * short),
        finLength: length(x.finSpace),
        finThickness: '1 mm',
        fins: 6,
        baseThickness: '2 mm',
        joint: '1 K/W',
      },
    }),
    surroundings: { air: new Quantity(x.air, 'temperature'), airSpeed: new Quantity(x.airSpeed, 'velocity') },
  }
}

/** Rises over the air against the rises that the limits leave: shares of kelvin mean the same at any zero of the scale. */
function limitsOf(x: MountWishNumbers, mount: MotorMount): KeptLimit[] {
  const verdict = assessMount(mount, { torque: new Quantity(x.torque, 'torque'), speed: new Quantity(x.speed, 'angularVelocity') }, [])
  const rise = (what: string, node: 'mount' | 'can' | undefined, limit: number) => {
    const at = node === undefined ? verdict.hottestPhase : verdict.temperatures[node]
    const kelvin = verdict.state === 'runaway' || at === undefined ? Number.POSITIVE_INFINITY : at.si - x.air
    return atMost(`rise of the ${what} over the air`, 'temperatureDifference', kelvin, Math.max(0, limit - x.margin - x.air))
  }
  return [
    rise('polymer at the motor', 'mount', x.polymer.limit),
    rise('magnets', 'can', x.magnetLimit),
    rise('hottest winding', undefined, x.windingLimit),
    atMost('mass of motor and mount', 'mass', mount.mass.si, x.mass),
  ]
}
