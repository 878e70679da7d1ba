import { notesOf, readInputs, requireKeys } from '../formula/index.js'
import { InputError, type Issue, issue, type Quantity as Q, Quantity, quantity } from '../units/index.js'
import type { Motor } from './motor.js'
import { boardLinks } from './mount-board.js'
import { stillHolds } from './mount-factors.js'
import { LOAD, lossesOf, type MotorLoad } from './mount-loads.js'
import { massOf, nodesOf } from './mount-nodes.js'
import { barLinks, plateLinks, sinkLinks } from './mount-paths.js'
import { MOUNT, type MountNumbers, type MountSpecification } from './mount-specification.js'
import { type Factors, type Network, type NetworkLink, network, networkOf } from './network.js'
import { type PlateModel, plateModel } from './plate-model.js'
import { LONGEST_PLATE } from './rectangular-plate.js'
import { CONVECTION_SCATTER, convectionAt, convectionNotes, radiationAt, type SurroundingsNumbers, surroundingsNumbers } from './surface.js'

/** A motor on its mount: the network for any load. Immutable. */
export interface MotorMount {
  /** The network at a load. Nodes: winding, stator, can, mount, plate (a store), and sink and board where there are any; fixed: air, radiant. */
  network(load: MotorLoad): Network
  /** Mass of motor, plate, insert, sink and controller. */
  readonly mass: Q<'mass'>
  /** The motor on the mount. */
  readonly motor: Motor
  /** The specification that the mount was made from. */
  readonly specification: MountSpecification
  /** The same mount with conductances of links and heat capacities of nodes multiplied, as a calibration tells. */
  scaled(factors: Factors): MotorMount
  /** The mount with parts of its specification replaced, or another motor. Corrections from a calibration stay with the paths whose parts stay. */
  changed(change: Partial<MountSpecification>, motor?: Motor): MotorMount
  /** Plain numbers, nothing checked: torque in N m, speed in rad/s. */
  readonly si: {
    /** The specification in SI numbers, defaults filled in. */
    readonly x: MountNumbers
    /** Air and radiant temperature in kelvin, pressure in pascal, air speed in m/s. */
    readonly surroundings: SurroundingsNumbers
    /** The network at a torque in N m and a speed in rad/s. */
    network(torque: number, speed: number): Network
  }
}

/** Where a network of a motor stops making sense: magnets and enamel are gone long before. */
const CEILING = '700 degC'

/**
 * Builds the network of a motor on its printed plate from the parts' geometry. Throws an `InputError` that lists every bad field.
 *
 * The plate is not one lump. Its conductance from the ring comes from finite volumes with both faces cooled, and each face has the film of its own mean
 * temperature. Its heat capacity is a store of two exact moments behind the mount node.
 *
 * The can sheds heat as a horizontal cylinder in every attitude. Over a plate that lies flat it is upright and sheds more in still air: a can of 22 mm about half more.
 */
export function motorMount(machine: Motor, specification: MountSpecification): MotorMount {
  const x = readInputs('thermal.motorMount', MOUNT, specification)
  checkFit(x)
  return mountOf(machine, specification, x, [])
}

function mountOf(machine: Motor, specification: MountSpecification, x: MountNumbers, factors: readonly Factors[]): MotorMount {
  const where = surroundingsNumbers(x.surroundings)
  const plate = plateOf(x)
  const nodes = nodesOf(x, plate, where, machine.si)
  const links = linksOf(x, plate, where)
  const carried = [...machine.si.notes, ...(notesOf(specification) ?? [])]
  const build = (turning: number) => {
    const plain = network(nodes, links(turning), { ceiling: CEILING }).si.numbers
    return factors.reduce((net, factor) => net.scaled(factor), networkOf({ ...plain, notes: carried }))
  }
  const standing = build(0)
  const at = (torque: number, speed: number): Network => {
    const base = x.rotationCools && speed !== 0 ? build(Math.abs(speed)) : standing
    return base.withLosses(lossesOf(machine.si, x, torque, speed))
  }
  return {
    network: (load) => {
      requireKeys('thermal.motorMount', 'load', load, LOAD)
      const { torque, speed = '0 rad/s' } = load
      return at(quantity('torque', torque).si, quantity('angularVelocity', speed).si)
    },
    mass: new Quantity(massOf(x, plate), 'mass'),
    motor: machine,
    specification,
    scaled: (more) => mountOf(machine, specification, x, [...factors, more]),
    changed: (change, other = machine) => {
      const next = { ...specification, ...change }
      const read = readInputs('thermal.motorMount', MOUNT, next)
      checkFit(read)
      return mountOf(other, next, read, stillHolds(factors, Object.keys(change)))
    },
    si: { x, surroundings: where, network: at },
  }
}

function checkFit({ body, plate, insert }: MountNumbers): void {
  const short = Math.min(plate.width, plate.height)
  const sizes = `${mm(plate.width)} by ${mm(plate.height)}`
  const issues: Issue[] = []
  if (body.ringInnerDiameter >= body.ringOuterDiameter)
    issues.push(issue('body.ringInnerDiameter', mm(body.ringInnerDiameter), 'must be below ringOuterDiameter'))
  if (body.ringOuterDiameter >= short) issues.push(issue('plate', sizes, 'must be larger than the ring of the motor, both ways'))
  if (Math.max(plate.width, plate.height) > LONGEST_PLATE * short)
    issues.push(issue('plate', sizes, `must be at most ${LONGEST_PLATE} times as long as wide; give a longer one as a plate and links`))
  if (insert !== undefined && insert.diameter < body.ringOuterDiameter)
    issues.push(issue('insert.diameter', mm(insert.diameter), 'must be at least ringOuterDiameter'))
  if (insert !== undefined && insert.diameter > short) issues.push(issue('insert.diameter', mm(insert.diameter), 'must fit on the plate'))
  if (insert !== undefined && insert.thickness >= plate.thickness)
    issues.push(issue('insert.thickness', mm(insert.thickness), 'must be below the thickness of the plate'))
  if (issues.length > 0) throw new InputError('thermal.motorMount', issues)
}

const mm = (x: number) => String(new Quantity(x, 'length'))
const equivalentRadius = ({ width, height }: { width: number; height: number }) => Math.sqrt((width * height) / Math.PI)

const plateOf = ({ body, plate, insert }: MountNumbers): PlateModel =>
  plateModel({
    innerRadius: body.ringInnerDiameter / 2,
    outerRadius: body.ringOuterDiameter / 2,
    plateRadius: equivalentRadius(plate),
    thickness: plate.thickness,
    conductivity: plate.conductivity,
    conductivityAcross: plate.conductivityAcross,
    rectangle: plate,
    density: plate.density,
    specificHeat: plate.specificHeat,
    insert: insert === undefined ? undefined : { ...insert, radius: insert.diameter / 2 },
    entry: 'isothermal',
    underMotor: 'covered',
  })

/** Links of the network as a function of the can's speed, rad/s. */
function linksOf(x: MountNumbers, plate: PlateModel, where: SurroundingsNumbers): (turning: number) => NetworkLink[] {
  const { body, sink, controller } = x
  const ring = (Math.PI / 4) * (body.ringOuterDiameter ** 2 - body.ringInnerDiameter ** 2)
  const resistance = (kelvinPerWatt: number) => new Quantity(kelvinPerWatt, 'thermalResistance')
  const store = 0.9 * plate.storeConductance
  const still: NetworkLink[] = [
    { name: 'winding-stator', from: 'winding', to: 'stator', resistance: resistance(body.windingToStator), scatter: x.internalScatter },
    { name: 'stator-can', from: 'stator', to: 'can', resistance: resistance(body.statorToCan), scatter: x.internalScatter },
    {
      name: 'stator-mount',
      from: 'stator',
      to: 'mount',
      resistance: resistance(body.statorToBase + 1 / (x.plate.contact * ring)),
      scatter: x.contactScatter,
    },
    { name: 'plate store', from: 'mount', to: 'plate', conductance: new Quantity(store, 'thermalConductance') },
    ...plateLinks(x, plate, where),
    ...barLinks(x, where),
    ...(sink === undefined ? [] : sinkLinks(sink, where)),
    ...(controller === undefined ? [] : boardLinks(controller, where)),
  ]
  const canArea = Math.PI * body.canDiameter * (body.canLength + body.canDiameter / 4)
  return (turning) => [
    ...still,
    {
      name: 'can convection',
      from: 'can',
      to: 'air',
      conductance: (can) => canArea * convectionAt('horizontalCylinder', body.canDiameter, can, where, 0, turning),
      notes: (can) => convectionNotes('horizontalCylinder', body.canDiameter, can, where, 0, turning),
      scatter: CONVECTION_SCATTER,
    },
    {
      name: 'can radiation',
      from: 'can',
      to: 'radiant',
      conductance: (can, seen) => canArea * radiationAt(body.canEmissivity, can, seen),
      scatter: 0.25,
    },
  ]
}
