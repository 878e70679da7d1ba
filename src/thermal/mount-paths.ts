import { InputError, type Note, Quantity } from '../units/index.js'
import { airProperties } from './air.js'
import { barFin } from './fins.js'
import type { MountNumbers } from './mount-specification.js'
import type { NetworkLink } from './network.js'
import { FILM_RANGE, type PlateAnswer, type PlateModel } from './plate-model.js'
import { plateFinSink } from './sink.js'
import { plateFinSinkInDraught } from './sink-in-draught.js'
import {
  CONVECTION_SCATTER,
  convectionAt,
  convectionNotes,
  radiationAt,
  remarks,
  type SurfaceShape,
  type SurroundingsNumbers,
} from './surface.js'

const FACES = {
  vertical: ['verticalPlate', 'verticalPlate'],
  motorUp: ['plateUp', 'plateDown'],
  motorDown: ['plateDown', 'plateUp'],
} as const satisfies Record<string, readonly [SurfaceShape, SurfaceShape]>

/** Convection and radiation of the plate as two links from the mount: one conductance shared between them in proportion to their coefficients. */
export function plateLinks({ plate: x, conductivityScatter }: MountNumbers, plate: PlateModel, where: SurroundingsNumbers): NetworkLink[] {
  const [motorShape, freeShape] = FACES[x.attitude]
  const length = x.attitude === 'vertical' ? x.height : (x.width * x.height) / (2 * (x.width + x.height))
  const solve = plateStates(x, plate, where, { motorShape, freeShape, length })
  // Both links ask at the same temperatures, and their slopes a little above: the last two answers are kept.
  let newer = solve(where.air)
  let older = newer
  const kept = (mount: number) => {
    if (mount === newer.mount) return newer
    if (mount === older.mount) return older
    older = newer
    newer = solve(mount)
    return newer
  }
  const notes = (mount: number): Note[] => {
    const { motorFace, freeFace, film } = kept(mount)
    const faces = [...convectionNotes(motorShape, length, motorFace, where), ...convectionNotes(freeShape, length, freeFace, where)]
    return film <= FILM_RANGE
      ? faces
      : [...faces, { formula: 'thermal.mountPlate', text: `outside validity: film coefficients up to ${FILM_RANGE} W/(m² K)` }]
  }
  // A fin-like plate answers conductivity and film each by about their square root; what moves the conductivity moves both links.
  const conductivity = 0.5 * conductivityScatter
  return [
    {
      name: 'plate convection',
      from: 'mount',
      to: 'air',
      conductance: (mount) => kept(mount).convection,
      scatter: { 'conductivity of the plate': conductivity, 'film of the plate': 0.5 * CONVECTION_SCATTER },
      notes,
    },
    {
      name: 'plate radiation',
      from: 'mount',
      to: 'radiant',
      conductance: (mount) => kept(mount).radiation,
      scatter: { 'conductivity of the plate': conductivity, 'emissivity of the plate': 0.5 * EMISSIVITY_SCATTER },
    },
  ]
}

/** The state of a plate for each temperature of the mount. */
function plateStates(
  x: MountNumbers['plate'],
  plate: PlateModel,
  where: SurroundingsNumbers,
  { motorShape, freeShape, length }: { readonly motorShape: SurfaceShape; readonly freeShape: SurfaceShape; readonly length: number },
): (mount: number) => PlateState {
  const reference = plate.at(REFERENCE_FILM, REFERENCE_FILM, { conductance: 0, motorFace: 0, freeFace: 0 })
  const answer: PlateAnswer = { ...reference }
  return (mount) => {
    answer.motorFace = reference.motorFace
    answer.freeFace = reference.freeFace
    let share = 1
    let motorFace = 0
    let freeFace = 0
    let film = 0
    // The faces' mean temperatures depend on the films, weakly.
    for (let pass = 0; pass < PASSES; pass++) {
      // Far from the motor a plate is as warm as air and surroundings together make it.
      const far = share * where.air + (1 - share) * where.radiant
      motorFace = far + answer.motorFace * (mount - far)
      freeFace = far + answer.freeFace * (mount - far)
      const motorConvection = convectionAt(motorShape, length, motorFace, where)
      const freeConvection = convectionAt(freeShape, length, freeFace, where)
      const motorRadiation = radiationAt(x.emissivity, motorFace, where.radiant)
      const freeRadiation = radiationAt(x.emissivity, freeFace, where.radiant)
      plate.at(motorConvection + motorRadiation, freeConvection + freeRadiation, answer)
      film = Math.max(motorConvection + motorRadiation, freeConvection + freeRadiation)
      const convection = motorConvection + freeConvection
      share = convection / (convection + motorRadiation + freeRadiation)
    }
    const { conductance } = answer
    return { mount, convection: conductance * share, radiation: conductance * (1 - share), share, film, motorFace, freeFace }
  }
}

/** The plate at one mount temperature. */
interface PlateState {
  readonly mount: number
  /** Conductances of the two links. */
  readonly convection: number
  readonly radiation: number
  /** Convection's share of the films. */
  readonly share: number
  /** The larger film coefficient. */
  readonly film: number
  /** Mean temperatures of the faces. */
  readonly motorFace: number
  readonly freeFace: number
}

const REFERENCE_FILM = 12
const PASSES = 2
/** Relative 95 % half-width of an emissivity of printed polymer. */
const EMISSIVITY_SCATTER = 0.1

/** Bars that carry heat into the leg, shed along their length to air and surroundings: fins with the film at their mean temperature. */
export function barLinks({ links = [] }: MountNumbers, where: SurroundingsNumbers): NetworkLink[] {
  return links.flatMap((bar, i): NetworkLink[] => {
    const diameter = bar.perimeter / Math.PI
    const solve = (mount: number) => {
      let efficiency = 0.3
      let share = 1
      let conductance = 0
      let mean = mount
      for (let pass = 0; pass < PASSES; pass++) {
        const far = share * where.air + (1 - share) * where.radiant
        mean = far + efficiency * (mount - far)
        const convection = convectionAt('horizontalCylinder', diameter, mean, where)
        const radiation = radiationAt(bar.emissivity, mean, where.radiant)
        const fin = barFin.si({ ...bar, coefficient: convection + radiation })
        efficiency = fin.efficiency
        conductance = fin.conductance
        share = convection / (convection + radiation)
      }
      return { convection: conductance * share, radiation: conductance * (1 - share), mean }
    }
    const name = links.length === 1 ? 'leg link' : `leg link ${i + 1}`
    const scatter = { [`film of ${name}`]: CONVECTION_SCATTER }
    const notes = (mount: number) => convectionNotes('horizontalCylinder', diameter, solve(mount).mean, where)
    return [
      { name, from: 'mount', to: 'air', conductance: (mount) => solve(mount).convection, scatter, notes },
      { name: `${name} radiation`, from: 'mount', to: 'radiant', conductance: (mount) => solve(mount).radiation, scatter },
    ]
  })
}

/** An upright plate-fin sink behind its joint. */
export function sinkLinks(sink: NonNullable<MountNumbers['sink']>, where: SurroundingsNumbers): NetworkLink[] {
  const spacing = (sink.width - sink.fins * sink.finThickness) / (sink.fins - 1)
  if (!(spacing > 0))
    throw new InputError('thermal.motorMount', [
      { path: 'sink.fins', given: String(sink.fins), accepts: 'must leave room between the fins' },
    ])
  // Radiation leaves through the envelope: front, top and bottom, two sides.
  const envelope = sink.width * sink.height + 2 * sink.finLength * (sink.width + sink.height)
  const still = (surface: number) => ({ ...sink, surfaceTemperature: surface, airTemperature: where.air, pressure: where.pressure })
  const draught = (surface: number) => ({ ...still(surface), speed: where.airSpeed })
  const free = (surface: number) => plateFinSink.si(still(surface)).conductance
  const forced = (surface: number) => (where.airSpeed === 0 ? 0 : plateFinSinkInDraught.si(draught(surface)).conductance)
  return [
    { name: 'sink joint', from: sink.on, to: 'sink', resistance: new Quantity(sink.joint, 'thermalResistance'), scatter: 0.5 },
    {
      name: 'sink convection',
      from: 'sink',
      to: 'air',
      conductance: (surface) => Math.max(free(surface), forced(surface)),
      scatter: CONVECTION_SCATTER,
      notes: (surface) => [
        ...(where.airSpeed === 0 ? remarks(plateFinSink, still(surface)) : remarks(plateFinSinkInDraught, draught(surface))),
        ...remarks(airProperties, { temperature: 0.5 * (surface + where.air), pressure: where.pressure }),
      ],
    },
    {
      name: 'sink radiation',
      from: 'sink',
      to: 'radiant',
      conductance: (surface, seen) => envelope * radiationAt(sink.emissivity, surface, seen),
      scatter: 0.2,
    },
  ]
}
