import { type Given, Property, property, readInputs, type Source } from '../formula/index.js'
import { type Kind, Quantity } from '../units/index.js'
import { airProperties } from './air.js'
import { layerResistance } from './conduction.js'
import { type Motor, motor } from './motor.js'
import type { MountSpecification } from './mount-specification.js'

const FIVE = {
  /** Outer diameter of the can. */
  canDiameter: { kind: 'length', above: 0 },
  /** Length of the can. */
  canLength: { kind: 'length', above: 0 },
  /** Speed constant Kv, as a catalogue has it. */
  speedConstant: { kind: 'speedConstant', above: 0 },
  /** Resistance between two terminals at 20 °C. */
  terminalResistance: { kind: 'electricalResistance', above: 0 },
  /** Rated current of the catalogue, peak of a phase. */
  ratedCurrent: { kind: 'peakPhaseCurrent', above: 0 },
} as const

/** Five numbers of a motor. */
export type FiveNumbers = Given<typeof FIVE>

/** What five numbers of a motor suggest for all others: ranges to begin with, each with its source. Weigh, measure and calibrate yours. */
export interface TypicalMotor {
  /** Mass of the whole motor. */
  readonly mass: Property<'mass'>
  /** Mass of the copper winding. */
  readonly windingMass: Property<'mass'>
  /** Mass of the stator's iron. */
  readonly statorMass: Property<'mass'>
  /** Rotating can with its magnets. */
  readonly canMass: Property<'mass'>
  /** Moment of inertia of can, magnets and shaft about the axis. */
  readonly rotorInertia: Property<'momentOfInertia'>
  /** Inner diameter of the ring by which the motor touches its plate. */
  readonly ringInnerDiameter: Property<'length'>
  /** Outer diameter of that ring. */
  readonly ringOuterDiameter: Property<'length'>
  /** Thermal resistance from the winding to the stator. */
  readonly windingToStator: Property<'thermalResistance'>
  /** Thermal resistance from the stator to the can across the air gap. */
  readonly statorToCan: Property<'thermalResistance'>
  /** Thermal resistance from the stator to the motor's base. */
  readonly statorToBase: Property<'thermalResistance'>
  /** No-load current at some volts, as a share of the rated current. */
  readonly noLoadCurrent: Property<'current'>
  /** Torque at the rated current, cold magnets. */
  readonly ratedTorque: Quantity<'torque'>
  /** The motor with its constants. */
  readonly motor: Motor
  /** Typical body, as `motorMount` takes it. */
  readonly body: MountSpecification['body']
}

const ours = (where: string): Source => ({ level: 'assumption', where })

/** Mean density of the can's cylinder, and shares of its mass. Source: ours, from what the parts are made of. */
const DENSITY = [3300, 4100, 4900] as const
const SHARES = { winding: [0.1, 0.16, 0.22], stator: [0.22, 0.3, 0.38], can: [0.28, 0.36, 0.44] } as const
const RING = { inner: [0.15, 0.22, 0.3], outer: [0.5, 0.62, 0.75] } as const
/** Radius of gyration of can and magnets over the can's radius: a ring under the rim and a thin front. */
const GYRATION = [0.78, 0.84, 0.9] as const
/** Resistance from winding to stator times the cylinder of the can, K m²/W. */
const WINDING_LAYER = [3.5e-3, 6e-3, 1e-2] as const
/** Clearance between stator and magnets; mean diameter and active length of the gap over those of the can. */
const GAP = [0.2e-3, 0.3e-3, 0.5e-3] as const
const GAP_DIAMETER = 0.85
const GAP_LENGTH = 0.6
const GAP_TEMPERATURE = 333.15
const NO_LOAD = [0.01, 0.02, 0.04] as const

type Triple = readonly [low: number, typical: number, high: number]

function banded<K extends Kind>(kind: K, size: number, [low, typical, high]: Triple, source: Source): Property<K> {
  return new Property(typical * size, kind, low * size, high * size, source, 'outrunner of 30 to 100 mm, from its can')
}

/**
 * Typical masses, inertia, ring and heat paths of an outrunner from its can, constants and rated current, as ranges with sources: five numbers are enough to
 * begin. The ranges are wide: a scale and one heating curve replace most of them.
 *
 * Throws one `InputError` that lists every bad input.
 */
export function typicalMotor(given: FiveNumbers): TypicalMotor {
  const { canDiameter: d, canLength: l, ratedCurrent } = readInputs('thermal.typicalMotor', FIVE, given)
  const { speedConstant, terminalResistance } = given
  const volume = (Math.PI / 4) * d * d * l
  const mass = banded('mass', volume, DENSITY, ours('cylinder of the can filled with steel, copper, magnets and air'))
  const share = (shares: Triple, what: string) => banded('mass', mass.si, shares, ours(`share of ${what} in the mass of an outrunner`))
  const canMass = share(SHARES.can, 'can and magnets')
  const gyration = (size: number) => canMass.si * (size * 0.5 * d) ** 2
  const rotorInertia = property('momentOfInertia', {
    low: new Quantity((canMass.low / canMass.si) * gyration(GYRATION[0]), 'momentOfInertia'),
    typical: new Quantity(gyration(GYRATION[1]), 'momentOfInertia'),
    high: new Quantity((canMass.high / canMass.si) * gyration(GYRATION[2]), 'momentOfInertia'),
    source: ours('can and magnets as a ring under the rim with a thin front'),
  })
  const ring = (shares: Triple) => banded('length', d, shares, ours('flat ring between bearing tube and bolt circle of the base'))
  const windingToStator = banded('thermalResistance', 1 / (Math.PI * d * l), WINDING_LAYER, {
    level: 'assumption',
    where:
      'slot liner and varnish over the teeth; a geared outer-rotor actuator, its can not read, measured 1.07 K/W (data of Lin, Thomas and Best, University of Michigan)',
  })
  const statorToCan = gapResistance(d, l)
  const statorToBase = banded('thermalResistance', windingToStator.si, [0.1, 0.3, 0.6], ours('stator pressed on its bearing tube'))
  const machine = motor({ speedConstant, speedConstantBasis: 'catalogue', terminalResistance })
  return {
    mass,
    windingMass: share(SHARES.winding, 'copper'),
    statorMass: share(SHARES.stator, 'laminations'),
    canMass,
    rotorInertia,
    ringInnerDiameter: ring(RING.inner),
    ringOuterDiameter: ring(RING.outer),
    windingToStator,
    statorToCan,
    statorToBase,
    noLoadCurrent: banded('current', ratedCurrent, NO_LOAD, ours('share of the rated current at some volts')),
    ratedTorque: new Quantity(ratedCurrent * machine.torqueConstants.peakPhase.si, 'torque'),
    motor: machine,
    body: {
      canDiameter: new Quantity(d, 'length'),
      canLength: new Quantity(l, 'length'),
      ringInnerDiameter: ring(RING.inner),
      ringOuterDiameter: ring(RING.outer),
      mass,
      windingMass: share(SHARES.winding, 'copper'),
      statorMass: share(SHARES.stator, 'laminations'),
      canMass,
      windingToStator,
      statorToCan,
      statorToBase,
    },
  }
}

/** The air gap as a still layer: what turns stirs it, so that the low end is for a turning motor. */
function gapResistance(d: number, l: number): Property<'thermalResistance'> {
  const conductivity = airProperties.si({ temperature: GAP_TEMPERATURE, pressure: 101_325 } as never).conductivity
  const area = Math.PI * GAP_DIAMETER * d * GAP_LENGTH * l
  const [low, typical, high] = GAP.map((thickness) => layerResistance.si({ thickness, conductivity, area })) as [number, number, number]
  const source: Source = { level: 'assumption', where: 'still air at 60 °C in a gap of 0.2 to 0.5 mm, bearings left out' }
  return new Property(typical, 'thermalResistance', low, high, source, 'outrunner of 30 to 100 mm, from its can')
}
