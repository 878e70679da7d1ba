import { InputError, Quantity } from '../units/index.js'
import { bridgeConductionLoss, bridgeSwitchingLoss } from './controller.js'
import { barFin, straightFin } from './fins.js'
import type { MountNumbers } from './mount-specification.js'
import type { NetworkLink } from './network.js'
import type { PlateAnswer, PlateModel } from './plate-model.js'
import { plateFinSink } from './sink.js'
import { CONVECTION_SCATTER, convectionAt, radiationAt, type SurfaceShape, type SurroundingsNumbers } from './surface.js'

const FACES = {
  vertical: ['verticalPlate', 'verticalPlate'],
  motorUp: ['plateUp', 'plateDown'],
  motorDown: ['plateDown', 'plateUp'],
} as const satisfies Record<string, readonly [SurfaceShape, SurfaceShape]>

/** Convection and radiation of the plate as two links from the mount: one conductance shared between them in proportion to their coefficients. */
export function plateLinks({ plate: x, conductivityScatter }: MountNumbers, plate: PlateModel, where: SurroundingsNumbers): NetworkLink[] {
  const [motorShape, freeShape] = FACES[x.attitude]
  const length = x.attitude === 'vertical' ? x.height : (x.width * x.height) / (2 * (x.width + x.height))
  const reference = plate.at(REFERENCE_FILM, REFERENCE_FILM, { conductance: 0, motorFace: 0, freeFace: 0 })
  const answer: PlateAnswer = { ...reference }
  const solve = (mount: number): { convection: number; radiation: number } => {
    const rise = mount - where.air
    answer.motorFace = reference.motorFace
    answer.freeFace = reference.freeFace
    let share = 1
    // Twice: the faces' mean temperatures depend on the films, weakly.
    for (let pass = 0; pass < 2; pass++) {
      const motorFace = where.air + answer.motorFace * rise
      const freeFace = where.air + answer.freeFace * rise
      const motorConvection = convectionAt(motorShape, length, motorFace, where)
      const freeConvection = convectionAt(freeShape, length, freeFace, where)
      const motorRadiation = radiationAt(x.emissivity, motorFace, where.radiant)
      const freeRadiation = radiationAt(x.emissivity, freeFace, where.radiant)
      plate.at(motorConvection + motorRadiation, freeConvection + freeRadiation, answer)
      const convection = motorConvection + freeConvection
      share = convection / (convection + motorRadiation + freeRadiation)
    }
    return { convection: answer.conductance * share, radiation: answer.conductance * (1 - share) }
  }
  // Both links ask at the same temperatures, and their slopes a little above: the last two answers are kept.
  let newer = { mount: Number.NaN, convection: 0, radiation: 0 }
  let older = newer
  const kept = (mount: number) => {
    if (mount === newer.mount) return newer
    if (mount === older.mount) return older
    older = newer
    newer = { mount, ...solve(mount) }
    return newer
  }
  // A fin-like plate answers film and conductivity each by about their square root.
  const scatter = 0.5 * Math.hypot(CONVECTION_SCATTER, conductivityScatter)
  return [
    { name: 'plate convection', from: 'mount', to: 'air', conductance: (mount) => kept(mount).convection, scatter },
    { name: 'plate radiation', from: 'mount', to: 'radiant', conductance: (mount) => kept(mount).radiation, scatter },
  ]
}

const REFERENCE_FILM = 12

/** A bar that carries heat into the leg, shed along its length: fin with the film at its mean temperature. */
export function barLinks({ links = [] }: MountNumbers, where: SurroundingsNumbers): NetworkLink[] {
  return links.map((bar, i) => ({
    name: links.length === 1 ? 'leg link' : `leg link ${i + 1}`,
    from: 'mount',
    to: 'air',
    conductance: (mount) => {
      let answer = { efficiency: 0.3, conductance: 0 }
      for (let pass = 0; pass < 2; pass++) {
        const mean = where.air + answer.efficiency * (mount - where.air)
        const diameter = bar.perimeter / Math.PI
        // Radiation to surroundings at another temperature than the air is left out here: the bar is a small path.
        const coefficient = convectionAt('horizontalCylinder', diameter, mean, where) + radiationAt(bar.emissivity, mean, where.air)
        answer = barFin.si({
          length: bar.length,
          perimeter: bar.perimeter,
          section: bar.section,
          conductivity: bar.conductivity,
          coefficient,
        })
      }
      return answer.conductance
    },
    scatter: CONVECTION_SCATTER,
  }))
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
  const base = (sink.fins - 1) * spacing * sink.height
  return [
    { name: 'sink joint', from: sink.on, to: 'sink', resistance: new Quantity(sink.joint, 'thermalResistance'), scatter: 0.5 },
    {
      name: 'sink convection',
      from: 'sink',
      to: 'air',
      conductance: (surface) => {
        const free = plateFinSink.si({
          width: sink.width,
          height: sink.height,
          finLength: sink.finLength,
          finThickness: sink.finThickness,
          fins: sink.fins,
          conductivity: sink.conductivity,
          surfaceTemperature: surface,
          airTemperature: where.air,
          pressure: where.pressure,
        }).conductance
        if (where.airSpeed === 0) return free
        // A draught along the fins: each is a plate in a stream, so that fins too close for it are overrated.
        const coefficient = convectionAt('verticalPlate', sink.height, surface, where)
        const { conductance } = straightFin.si({
          length: sink.finLength,
          width: sink.height,
          thickness: sink.finThickness,
          conductivity: sink.conductivity,
          coefficient,
        })
        return Math.max(free, sink.fins * conductance + base * coefficient)
      },
      scatter: CONVECTION_SCATTER,
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

/** The controller board's ways to air, surroundings and mount. */
export function boardLinks(board: NonNullable<MountNumbers['controller']>, where: SurroundingsNumbers): NetworkLink[] {
  return [
    { name: 'board-mount', from: 'board', to: 'mount', conductance: new Quantity(board.toMount, 'thermalConductance'), scatter: 0.5 },
    {
      name: 'board convection',
      from: 'board',
      to: 'air',
      conductance: (surface) => board.area * convectionAt('verticalPlate', board.height, surface, where),
      scatter: CONVECTION_SCATTER,
    },
    {
      name: 'board radiation',
      from: 'board',
      to: 'radiant',
      conductance: (surface, seen) => board.area * radiationAt(board.emissivity, surface, seen),
      scatter: 0.1,
    },
  ]
}

/** Controller loss with the switches at their junction temperature, which follows from the board and the loss itself. */
export function boardLoss(board: NonNullable<MountNumbers['controller']>, current: number, speed: number, temperature: number): number {
  const { switchResistance, resistanceCoefficient } = board
  const conductionAt = (junctionTemperature: number) =>
    bridgeConductionLoss.si({ peakPhaseCurrent: current, switchResistance, junctionTemperature, resistanceCoefficient })
  // The loss is linear in the junction temperature, and six switches share it: a feedback with a closed answer below a gain of one.
  const cool = conductionAt(temperature)
  const gain = ((conductionAt(temperature + 1) - cool) * board.junctionToBoard) / 6
  const conduction = gain < 1 ? cool / (1 - gain) : Number.POSITIVE_INFINITY
  const switching = bridgeSwitchingLoss.si({
    peakPhaseCurrent: current,
    voltage: board.supplyVoltage,
    frequency: board.switchingFrequency,
    riseTime: board.edgeTime,
    fallTime: board.edgeTime,
    deadTime: 0,
    diodeVoltage: 0,
    gateCharge: 0,
    gateVoltage: 0,
    rotor: speed === 0 ? 'still' : 'turning',
  })
  return board.quiescent + conduction + switching.total
}
