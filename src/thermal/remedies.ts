import { type In, Quantity, quantity } from '../units/index.js'
import type { PartLimit } from './limits.js'
import { type Motor, motor } from './motor.js'
import { type MotorMount, motorMount } from './mount.js'
import type { MountSpecification } from './mount-specification.js'
import { assessMount, continuousTorque, intermittentTorque } from './operating.js'
import { thermalMaterials } from './tables.js'

/** Something that may be done about a hot mount. */
export interface Remedy {
  readonly name: string
  /** The changed mount. */
  readonly mount: MotorMount
  /** Limits that change with it, such as those of a better polymer. */
  readonly limits?: readonly PartLimit[]
  /** Part of each cycle under load, for a remedy that rests; with its period. */
  readonly duty?: { readonly dutyFactor: In<'ratio'>; readonly period: In<'time'> }
  /** Mass that the mount's specification does not know of, such as a fan. */
  readonly extraMass?: In<'mass'>
}

/** One line of a comparison. */
export interface RemedyRow {
  readonly name: string
  /** Torque it allows, with its band. */
  readonly torque: Quantity<'torque'>
  readonly low: Quantity<'torque'>
  readonly high: Quantity<'torque'>
  /** Torque gained over the mount as it is. */
  readonly gain: Quantity<'torque'>
  /** Mass it adds (negative when it saves). */
  readonly addedMass: Quantity<'mass'>
  /** Gain in percent of the present torque for each gram added; undefined where nothing is added. */
  readonly percentPerGram: number | undefined
  /** Mount temperature at the torque asked; undefined in a runaway. */
  readonly mountTemperature: Quantity<'temperature'> | undefined
  /** The part that governs. */
  readonly governs: string
}

/** Compares remedies by the continuous torque they allow, the mass they add and the mount temperature at one torque. The first line is the mount as it is. */
export function compareRemedies(
  mount: MotorMount,
  limits: readonly PartLimit[],
  remedies: readonly Remedy[],
  at: { readonly torque: In<'torque'> },
): RemedyRow[] {
  const present = continuousTorque(mount, limits)
  return [{ name: 'as it is', mount }, ...remedies].map((remedy: Remedy): RemedyRow => {
    const own = remedy.limits ?? limits
    const { torque, low, high, governs } =
      remedy.duty === undefined ? continuousTorque(remedy.mount, own) : intermittentTorque(remedy.mount, own, remedy.duty)
    const extra = remedy.extraMass === undefined ? 0 : kilograms(remedy.extraMass)
    const addedMass = remedy.mount.mass.si - mount.mass.si + extra
    const gain = torque.si - present.torque.si
    const { temperatures } = assessMount(remedy.mount, at, [])
    return {
      name: remedy.name,
      torque,
      low,
      high,
      gain: new Quantity(gain, 'torque'),
      addedMass: new Quantity(addedMass, 'mass'),
      percentPerGram: addedMass > 1e-6 && present.torque.si > 0 ? (100 * gain) / present.torque.si / (1000 * addedMass) : undefined,
      mountTemperature: temperatures.mount,
      governs,
    }
  })
}

const kilograms = (mass: In<'mass'>) => quantity('mass', mass).si

/** A motor of the same build with a longer stack: back-EMF, resistance and masses in proportion. Its drag is left out: remedies are compared at a hold. */
function longer(machine: Motor, stretch: number): Motor {
  const { si } = machine
  const backEmfConstant = si.backEmfConstant * stretch
  return motor({
    // A constant known only from a catalogue keeps its band.
    ...(si.backEmfScatter > 0
      ? { speedConstant: new Quantity(1 / backEmfConstant, 'speedConstant'), speedConstantBasis: 'catalogue' as const }
      : { backEmfConstant: new Quantity(backEmfConstant, 'backEmfConstant') }),
    terminalResistance: new Quantity(si.terminalResistance * stretch, 'electricalResistance'),
    magnetCoefficient: new Quantity(si.magnetCoefficient, 'temperatureCoefficient'),
    polePairs: si.polePairs,
  })
}

/**
 * The remedies a builder would think of, sized from the mount: aluminium plate, thicker plate, metal insert, fins, fan, filled polymer, longer motor, rests. Limits stay as they are: a metal plate
 * still heats the printed links that it is bolted to.
 */
export function standardRemedies(mount: MotorMount): Remedy[] {
  const { specification: base, motor: machine } = mount
  const { body, plate, surroundings } = mount.si.x
  const of = (change: Partial<MountSpecification>, m = machine) => motorMount(m, { ...base, ...change })
  const { aluminium6061: aluminium, printedCarbonFilled: filled } = thermalMaterials
  const length = (metres: number) => new Quantity(metres, 'length')
  const smaller = Math.min(plate.width, plate.height)
  const stretch = 1.4
  const longerBody: MountSpecification['body'] = {
    ...base.body,
    canLength: length(body.canLength * stretch),
    mass: new Quantity(body.mass * stretch, 'mass'),
    windingMass: new Quantity(body.windingMass * stretch, 'mass'),
    statorMass: new Quantity(body.statorMass * stretch, 'mass'),
    canMass: new Quantity(body.canMass * stretch, 'mass'),
    windingToStator: new Quantity(body.windingToStator / stretch, 'thermalResistance'),
    statorToCan: new Quantity(body.statorToCan / stretch, 'thermalResistance'),
  }
  const airSpeed = new Quantity(surroundings.airSpeed + 2, 'velocity')
  return [
    {
      name: 'aluminium plate, 3 mm',
      mount: of({ insert: undefined, plate: { ...base.plate, ...aluminium, thickness: length(3e-3), emissivity: 0.8 } }),
    },
    { name: 'plate half as thick again', mount: of({ plate: { ...base.plate, thickness: length(1.5 * plate.thickness) } }) },
    {
      name: 'aluminium insert, 2 mm',
      mount: of({
        insert: { diameter: length(0.5 * (body.ringOuterDiameter + smaller)), thickness: length(Math.min(2e-3, 0.4 * plate.thickness)) },
      }),
    },
    {
      name: 'finned sink on the mount',
      mount: of({
        sink: {
          width: length(0.5 * smaller),
          height: length(0.5 * smaller),
          finLength: length(12e-3),
          finThickness: length(1e-3),
          fins: 6,
          baseThickness: length(2e-3),
          joint: '1 K/W',
        },
      }),
    },
    { name: 'fan, 2 m/s', mount: of({ surroundings: { ...base.surroundings, airSpeed } }), extraMass: '15 g' },
    { name: 'carbon-filled polymer', mount: of({ plate: { ...base.plate, ...filled } }) },
    { name: 'motor longer by 40 %', mount: of({ body: longerBody }, longer(machine, stretch)) },
    { name: 'rests: half of every 2 min', mount, duty: { dutyFactor: 0.5, period: '2 min' } },
  ]
}
