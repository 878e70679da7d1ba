import { type Note, Quantity } from '../units/index.js'
import { bridgeConductionLoss, bridgeSwitchingLoss } from './controller.js'
import type { MountNumbers } from './mount-specification.js'
import type { NetworkLink } from './network.js'
import { CONVECTION_SCATTER, convectionAt, convectionNotes, radiationAt, type SurroundingsNumbers } from './surface.js'

/** The controller board's ways to air, surroundings and mount. */
export function boardLinks(board: NonNullable<MountNumbers['controller']>, where: SurroundingsNumbers): NetworkLink[] {
  return [
    { name: 'board-mount', from: 'board', to: 'mount', conductance: new Quantity(board.toMount, 'thermalConductance'), scatter: 0.5 },
    {
      name: 'board convection',
      from: 'board',
      to: 'air',
      conductance: (surface) => board.area * convectionAt('verticalPlate', board.height, surface, where),
      notes: (surface) => convectionNotes('verticalPlate', board.height, surface, where),
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

/** Switches do not survive more than this: their loss is that at this temperature, so that a junction that runs away takes the board with it. */
const HOTTEST_JUNCTION = 1300

/** Conduction loss of the bridge, and the junction temperature it goes with. */
function bridgeAt(board: NonNullable<MountNumbers['controller']>, current: number, temperature: number) {
  const { switchResistance, resistanceCoefficient } = board
  const at = (junctionTemperature: number) =>
    bridgeConductionLoss.si({ peakPhaseCurrent: current, switchResistance, junctionTemperature, resistanceCoefficient })
  // The loss is linear in the junction temperature, and six switches share it: a feedback with a closed answer below a gain of one.
  const cool = at(temperature)
  const perSwitch = board.junctionToBoard / 6
  const gain = (at(temperature + 1) - cool) * perSwitch
  const junction = gain < 1 ? Math.min(temperature + (cool / (1 - gain)) * perSwitch, HOTTEST_JUNCTION) : HOTTEST_JUNCTION
  return { loss: Math.max(cool, at(junction)), junction }
}

/** Controller loss with the switches at their junction temperature, which follows from the board and the loss itself. */
export function boardLoss(board: NonNullable<MountNumbers['controller']>, current: number, speed: number, temperature: number): number {
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
  return board.quiescent + bridgeAt(board, current, temperature).loss + switching.total
}

/** Remarks on a controller's loss. */
export function boardNotes(board: NonNullable<MountNumbers['controller']>, current: number, temperature: number): Note[] {
  const { junction } = bridgeAt(board, current, temperature)
  return junction <= HOTTEST_RATED
    ? []
    : [
        {
          formula: 'thermal.bridgeConductionLoss',
          text: 'outside validity: switch junctions up to 175 °C, which few switches are rated for',
        },
      ]
}

/** Highest junction temperature that power switches are rated for, kelvin. Source: common practice, 150 to 175 °C. */
const HOTTEST_RATED = 448.15
