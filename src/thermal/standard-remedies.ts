import { requireKeys } from '../formula/index.js'
import { type In, InputError, Quantity, quantity } from '../units/index.js'
import { checkPartLimits, type PartLimit } from './limits.js'
import { type Motor, motor } from './motor.js'
import type { MotorMount } from './mount.js'
import type { MountSpecification } from './mount-specification.js'
import { requireMadeBy } from './must-be-made.js'
import type { Remedy } from './remedies.js'
import { type ThermalMaterial, thermalMaterials } from './tables.js'

/** A motor of the same build with a longer stack: back-EMF, resistance, inertia and masses in proportion. Its drag is left out: remedies are compared at a hold. */
function longer({ si }: Motor, stretch: number): Motor {
  const backEmfConstant = si.backEmfConstant * stretch
  return motor({
    // A constant known only from a catalogue keeps its band.
    ...(si.backEmfScatter > 0
      ? { speedConstant: new Quantity(1 / backEmfConstant, 'speedConstant'), speedConstantBasis: 'catalogue' as const }
      : { backEmfConstant: new Quantity(backEmfConstant, 'backEmfConstant') }),
    terminalResistance: new Quantity(si.terminalResistance * stretch, 'electricalResistance', undefined, si.notes),
    magnetCoefficient: new Quantity(si.magnetCoefficient, 'temperatureCoefficient'),
    polePairs: si.polePairs,
    ...(si.inertia !== undefined && { inertia: new Quantity(si.inertia * stretch, 'momentOfInertia') }),
  })
}

/** The body of such a motor: can, masses and the paths of heat between its parts in proportion. */
function longerBody({ specification, si }: MotorMount, stretch: number): MountSpecification['body'] {
  const { body } = si.x
  return {
    ...specification.body,
    canLength: new Quantity(body.canLength * stretch, 'length'),
    mass: new Quantity(body.mass * stretch, 'mass'),
    windingMass: new Quantity(body.windingMass * stretch, 'mass'),
    statorMass: new Quantity(body.statorMass * stretch, 'mass'),
    canMass: new Quantity(body.canMass * stretch, 'mass'),
    windingToStator: new Quantity(body.windingToStator / stretch, 'thermalResistance'),
    statorToCan: new Quantity(body.statorToCan / stretch, 'thermalResistance'),
  }
}

/** Which limit a better polymer would raise. */
export interface BetterPolymer {
  /** Limits of the parts as they are. */
  readonly limits: readonly PartLimit[]
  /** The part that would be printed from it. */
  readonly part: string
  /** By how much its limit rises. Default 25 K, about from ABS or ASA to polycarbonate. */
  readonly by?: In<'temperatureDifference'>
}

/**
 * The remedies a builder would think of, sized from the mount: aluminium plate, thicker plate, metal insert, fins, fan, carbon-filled PET, longer motor, rests; and a polymer that stands
 * more heat, if the limit that this would raise is given. All other limits stay as they are: a metal plate still heats the printed links that it is bolted to.
 */
export function standardRemedies(mount: MotorMount, better?: BetterPolymer): Remedy[] {
  const where = 'thermal.standardRemedies'
  requireMadeBy(where, 'mount', mount, 'motorMount')
  if (better !== undefined) {
    requireKeys(where, 'better', better, ['limits', 'part', 'by'])
    checkPartLimits(where, better.limits, undefined)
  }
  const { specification: base, motor: machine } = mount
  const { body, plate, surroundings } = mount.si.x
  const { aluminium6061: aluminium, printedCarbonFilled: filled } = thermalMaterials
  const length = (metres: number) => new Quantity(metres, 'length')
  const smaller = Math.min(plate.width, plate.height)
  const stretch = 1.4
  const airSpeed = new Quantity(surroundings.airSpeed + 2, 'velocity')
  const polymer =
    better === undefined
      ? []
      : [{ name: `polymer that stands ${quantity('temperatureDifference', better.by ?? STEP)} more`, mount, limits: raised(better) }]
  return [
    {
      name: 'aluminium plate, 3 mm',
      mount: mount.changed({ insert: undefined, plate: { ...base.plate, ...alike(aluminium), thickness: length(3e-3), emissivity: 0.8 } }),
    },
    { name: 'plate half as thick again', mount: mount.changed({ plate: { ...base.plate, thickness: length(1.5 * plate.thickness) } }) },
    {
      name: 'aluminium insert, 2 mm',
      mount: mount.changed({
        insert: { diameter: length(0.5 * (body.ringOuterDiameter + smaller)), thickness: length(Math.min(2e-3, 0.4 * plate.thickness)) },
      }),
    },
    {
      name: 'finned sink on the mount',
      mount: mount.changed({
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
    { name: 'fan, 2 m/s', mount: mount.changed({ surroundings: { ...base.surroundings, airSpeed } }), extraMass: '15 g' },
    { name: 'carbon-filled PET', mount: mount.changed({ plate: { ...base.plate, ...alike(filled) } }) },
    ...polymer,
    { name: 'motor longer by 40 %', mount: mount.changed({ body: longerBody(mount, stretch) }, longer(machine, stretch)) },
    { name: 'rests: half of every 2 min', mount, duty: { dutyFactor: 0.5, period: '2 min' } },
  ]
}

/** A material that conducts alike both ways: the conductivity across the layers of the plate that it replaces does not stay. */
const alike = (material: ThermalMaterial) => ({ ...material, conductivityAcross: material.conductivity })

const STEP = '25 K'

function raised({ limits, part, by = STEP }: BetterPolymer): PartLimit[] {
  const named = limits.findIndex((each) => each.part === part && each.limit !== undefined)
  if (named < 0)
    throw new InputError('thermal.standardRemedies', [
      { path: 'better.part', given: `'${part}'`, accepts: `must be a part with a limit: ${limits.map((each) => each.part).join(', ')}` },
    ])
  return limits.map((each, i) =>
    i === named ? { ...each, limit: quantity('temperature', each.limit!).plus(quantity('temperatureDifference', by)) } : each,
  )
}
