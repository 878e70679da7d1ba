import { mountFilm, ringPlateProfile } from '../../../thermal/index.js'
import { line, value } from '../../run/index.js'
import { heat } from '../motors/heat.js'
import { airAt, behindFace, body, contact, plateTable, shape } from './values.js'

const roundRadius = line(
  'radius of the round plate of equal area',
  { width: 'length', height: 'length' },
  'length',
  'sqrt(width · height / π)',
  (x) => Math.sqrt((x.width * x.height) / Math.PI),
)
const coveredFilm = line(
  'film of the free face behind what covers it',
  { behind: 'thermalContactResistance', film: 'heatTransferCoefficient' },
  'heatTransferCoefficient',
  '1 / (behind + 1 / film)',
  (x) => 1 / (x.behind + 1 / x.film),
)
const temperatureAt = line(
  'temperature of the plate at a radius',
  { far: 'temperature', ring: 'temperature', own: 'thermalResistance', ofRing: 'thermalResistance' },
  'temperature',
  'far + (ring − far) · own / ofRing',
  (x) => x.far + ((x.ring - x.far) * x.own) / x.ofRing,
)

/** Steps between the axis and the outer radius of the motor's ring, and from there to the rim. */
const UNDER = 20
const OUTSIDE = 24

/** Radii from the axis to the rim, with both edges of the motor's ring among them. */
function radiiOf(innerRadius: number, outerRadius: number, plateRadius: number): readonly number[] {
  const under = Array.from({ length: UNDER }, (_, i) => (outerRadius * i) / UNDER)
  const outside = Array.from({ length: OUTSIDE + 1 }, (_, i) => outerRadius + ((plateRadius - outerRadius) * i) / OUTSIDE)
  return [...new Set([...under, innerRadius, ...outside])].sort((a, b) => a - b)
}

/**
 * Temperature of the plate of a motor by radius, steady: of the round plate of equal area, with the mean of its ring as the balance of the motor has it. Of a
 * sink where there is one. The rise of a long plate is that of the round one, scaled to the mean of its own ring.
 */
export const plateProfile = value('plate.profile', ['joint', 'event', 'air'], (use) => {
  const { ring: table, mean } = use(plateTable)
  const { height: upright, emissivity } = use(body)
  const {
    film,
    heat: shed,
    ring,
    far,
  } = use.run(mountFilm, {
    ring: table,
    mean,
    contact: use(contact),
    height: upright,
    emissivity,
    ...airAt(use),
    mount: use(heat).mount,
  })
  const { innerRadius, outerRadius, width, height, thickness, conductivity, conductivityAcross } = shape(use)
  const plateRadius = use.run(roundRadius, { width, height })
  const radii = radiiOf(innerRadius, outerRadius, plateRadius)
  const found = use.run(ringPlateProfile, {
    innerRadius,
    outerRadius,
    plateRadius,
    thickness,
    conductivity,
    conductivityAcross,
    motorFaceCoefficient: film,
    freeFaceCoefficient: use.run(coveredFilm, { behind: use(behindFace), film }),
    underMotor: 'covered',
    radii,
  })
  const temperatures = (rises: readonly number[]) => rises.map((own) => use.run(temperatureAt, { far, ring, own, ofRing: found.ring }))
  return { radii, motorFace: temperatures(found.motorFace), freeFace: temperatures(found.freeFace), ring, film, shed }
})
