import { halfLength } from '../../lines.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { mass as boardMass } from '../controllers/fields.js'
import { density, name, needed } from '../materials/fields.js'
import { mass as motorMass } from '../motors/fields.js'
import * as plate from '../plates/fields.js'
import { massByPlace, ownInertia, mass as transmissionMass } from '../transmission/questions.js'
import { linkage, mass as rodMass } from '../transmission/through-hip/fields.js'
import { stageIn } from '../transmission/through-hip/stage.js'
import * as link from './fields.js'

/** Mass of a plate or sheet. */
export const sheetMass = line.product(
  'mass of a sheet',
  { width: 'length', height: 'length', thickness: 'length', density: 'density' },
  'mass',
)
const together = line(
  'mass of a link with what it carries',
  { bare: 'mass', carried: { list: 'mass' } },
  'mass',
  'bare + sum(carried)',
  (x) => x.bare + x.carried.reduce((sum, mass) => sum + mass, 0),
)

const shift = line(
  'shift of the centre of mass by a part',
  { part: 'mass', whole: 'mass', distance: 'length', own: 'length' },
  'length',
  'part / whole · (distance − own)',
  (x) => (x.part / x.whole) * (x.distance - x.own),
)
const centreOf = line(
  'centre of mass of a link with what it carries',
  { own: 'length', shifts: { list: 'length' } },
  'length',
  'own + sum(shifts)',
  (x) => x.own + x.shifts.reduce((sum, shift) => sum + shift, 0),
)
const aboutCentre = line(
  'moment of inertia of a part about the centre of mass',
  { mass: 'mass', distance: 'length', centre: 'length' },
  'momentOfInertia',
  'mass · (distance − centre)²',
  (x) => x.mass * (x.distance - x.centre) ** 2,
)
const inertiaOf = line(
  'moment of inertia of a link with what it carries',
  { bare: 'mass', length: 'length', own: 'length', centre: 'length', parts: { list: 'momentOfInertia' } },
  'momentOfInertia',
  'bare · (length² / 12 + (own − centre)²) + sum(parts)',
  (x) => x.bare * (x.length ** 2 / 12 + (x.own - x.centre) ** 2) + x.parts.reduce((sum, inertia) => sum + inertia, 0),
)

const onFarSide = line('place of a counterweight', { beyond: 'length' }, 'length', '−beyond', ({ beyond }) => -beyond)

/** Density of a material; needed. */
export const densityOf = (use: Use<never>, material: Of<'material'>) =>
  needed(use.at(name, { material }), 'density', use.at(density, { material }))

/** Mass of a joint's motor, of its transmission, and of its controller. */
const ownMotor = value('joint.motorMass', ['joint'], (use) => use(motorMass))
const ownDrive = value('joint.driveMass', ['joint'], (use) => use(transmissionMass))
const ownBoard = value('joint.boardMass', ['joint'], (use) => use(boardMass))

/** Masses of a plate, of its sink, and of the motors, transmissions and controllers on it. */
const mounted = value('plate.masses', ['plate'], (use, at): readonly number[] => {
  const { width, height, thickness, material } = plate.sink
  const own = use.run(sheetMass, {
    width: use(plate.width),
    height: use(plate.height),
    thickness: use(plate.thickness),
    density: densityOf(use, use(plate.material)),
  })
  const sink = use(plate.hasSink)
    ? [
        use.run(sheetMass, {
          width: use(width) as number,
          height: use(height) as number,
          thickness: use(thickness) as number,
          density: densityOf(use, use(material)),
        }),
      ]
    : []
  const joints = use.all('joint', { plate: at.plate })
  const motors = joints.map((joint) => use.at(ownMotor, { joint }))
  const drives = joints.flatMap((joint) => use.at(ownDrive, { joint }) ?? [])
  const boards = use
    .all('joint', { leg: use.all('leg')[0] as Of<'leg'> })
    .flatMap((joint) => (use.at(plate.boardOn, { joint }) === use.nameOf('plate', at.plate) ? [use.at(ownBoard, { joint })] : []))
  return [own, ...sink, ...motors, ...drives, ...boards]
})

/** Plates on a link. */
const platesOn = (use: Use<'link'>, of: Of<'link'>): readonly Of<'plate'>[] =>
  use.all('plate').filter((id) => use.at(plate.mountedOn, { plate: id }) === use.nameOf('link', of))

/** What a link carries: masses, each with its distance from the upper joint of the link. What drives the knee through the hip lies along the upper link. */
function carriedBy(use: Use<'link'>, of: Of<'link'>): readonly { readonly mass: number; readonly distance: number }[] {
  const onPlates = platesOn(use, of).flatMap((id) => {
    const distance = use.at(plate.distance, { plate: id })
    return use.at(mounted, { plate: id }).map((each) => ({ mass: each, distance }))
  })
  const [mass, beyond] = [use(link.counterweight), use(link.counterweightBeyond)]
  const balanced = mass === undefined || beyond === undefined ? onPlates : [...onPlates, { mass, distance: use.run(onFarSide, { beyond }) }]
  const isLower = use.nameOf('link', of) === 'lower'
  const stage = stageIn(use)
  const parts = stage && use.at(massByPlace, { joint: stage })
  if (parts !== undefined) {
    const half = use.run(halfLength, { length: use(link.length) })
    return [...balanced, isLower ? { mass: parts.atJoint, distance: 0 } : { mass: parts.between, distance: half }]
  }
  if (use(linkage) === undefined || isLower) return balanced
  return [...balanced, { mass: use(rodMass), distance: use.run(halfLength, { length: use(link.length) }) }]
}

/** A link with what is mounted on it: motors and plates are points, a pulley on the knee is a disc. Mass, distance of the centre of mass from the upper joint, inertia about it. */
export const body = value('link.body', ['link'], (use, at) => {
  const [bare, length] = [use(link.mass), use(link.length)]
  const own = use(link.centreOfMass) ?? use.run(halfLength, { length })
  const carried = carriedBy(use, at.link)
  const mass = use.run(together, { bare, carried: carried.map((body) => body.mass) })
  const shifts = carried.map((body) => use.run(shift, { part: body.mass, whole: mass, distance: body.distance, own }))
  const centre = use.run(centreOf, { own, shifts })
  const stage = stageIn(use)
  const pulley = stage === undefined || use.nameOf('link', at.link) !== 'lower' ? undefined : use.at(ownInertia, { joint: stage })?.atJoint
  const points = carried.map((body) => use.run(aboutCentre, { mass: body.mass, distance: body.distance, centre }))
  const parts = pulley === undefined ? points : [...points, pulley]
  const inertia = use.run(inertiaOf, { bare, length, own, centre, parts })
  return { mass, centre, inertia }
})
