import { line, type Of, type Use, value } from '../../run/index.js'
import { mass as boardMass } from '../controllers/fields.js'
import { density, name, needed } from '../materials/fields.js'
import { mass as motorMass } from '../motors/fields.js'
import * as plate from '../plates/fields.js'
import { linkage, mass as rodMass } from '../transmission/through-hip/fields.js'
import * as link from './fields.js'

const ofSheet = line(
  'mass of a sheet',
  { width: 'length', height: 'length', thickness: 'length', density: 'density' },
  'mass',
  'width · height · thickness · density',
  (x) => x.width * x.height * x.thickness * x.density,
)
const together = line(
  'mass of a link with what it carries',
  { bare: 'mass', carried: { list: 'mass' } },
  'mass',
  'bare + sum(carried)',
  (x) => x.bare + x.carried.reduce((sum, one) => sum + one, 0),
)

const densityOf = (use: Use<never>, material: Of<'material'>) =>
  needed(use.at(name, { material }), 'density', use.at(density, { material }))

/** Mass of a joint's motor, and of its controller. */
const ownMotor = value('joint.motorMass', ['joint'], (use) => use(motorMass))
const ownBoard = value('joint.boardMass', ['joint'], (use) => use(boardMass))

/** Masses of a plate, of its sink, and of the motors and controllers on it. */
const mounted = value('plate.masses', ['plate'], (use, at): readonly number[] => {
  const { width, height, thickness, material } = plate.sink
  const own = use.run(ofSheet, {
    width: use(plate.width),
    height: use(plate.height),
    thickness: use(plate.thickness),
    density: densityOf(use, use(plate.material)),
  })
  const sink = use(plate.hasSink)
    ? [
        use.run(ofSheet, {
          width: use(width) as number,
          height: use(height) as number,
          thickness: use(thickness) as number,
          density: densityOf(use, use(material)),
        }),
      ]
    : []
  const motors = use.all('joint', { plate: at.plate }).map((joint) => use.at(ownMotor, { joint }))
  const boards = use
    .all('joint')
    .flatMap((joint) => (use.at(plate.boardOn, { joint }) === use.nameOf('plate', at.plate) ? [use.at(ownBoard, { joint })] : []))
  return [own, ...sink, ...motors, ...boards]
})

/** Plates on a link. */
const platesOn = (use: Use<'link'>, of: Of<'link'>): readonly Of<'plate'>[] =>
  use.all('plate').filter((one) => use.at(plate.mountedOn, { plate: one }) === use.nameOf('link', of))

/** A rod that drives the knee lies along the upper link and swings with it. */
const rodsOn = (use: Use<'link'>, of: Of<'link'>): readonly number[] =>
  use(linkage) !== undefined && use.nameOf('link', of) === 'upper' ? [use(rodMass)] : []

/** Mass of a link with what is mounted on it. */
export const mass = value('link.loadedMass', ['link'], (use, at) =>
  use.run(together, {
    bare: use(link.mass),
    carried: [...platesOn(use, at.link).flatMap((one) => [...use.at(mounted, { plate: one })]), ...rodsOn(use, at.link)],
  }),
)
