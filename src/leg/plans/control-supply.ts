import { Quantity } from '../../units/index.js'
import type { Prepared } from '../numbers.js'
import { line } from '../run/index.js'

/** Limits of the supply, and what may flow back into it. */
export interface SupplyLimits {
  /** Largest current out of the supply, all controllers together. */
  readonly discharge: Quantity<'current'>
  /** Voltage that is left at that current: set the undervoltage limit of the controllers below it. */
  readonly lowestVoltage: Quantity<'voltage'>
  /** Energy of a landing: the most that the motors can return to the supply, copper losses not taken off. */
  readonly landingEnergy: Quantity<'energy'> | undefined
  /** How to set the controllers, step by step. */
  readonly steps: readonly string[]
}

const G = 9.80665
/** Energy that the legs take out of a falling robot. */
const fallEnergy = line(
  'energy of a landing',
  { mass: 'mass', height: 'length', travel: 'length', gravity: 'acceleration' },
  'energy',
  'mass · gravity · (height + travel)',
  (x) => x.mass * x.gravity * (x.height + x.travel),
)

/** Voltage left of a supply at a current. */
const leftAt = line(
  'voltage of the supply under load',
  { open: 'voltage', resistance: 'electricalResistance', current: 'current' },
  'voltage',
  'open − resistance · current',
  (x) => x.open - x.resistance * x.current,
)

/** Limits of the supply. @internal */
export function supplyLimits({ x }: Prepared): SupplyLimits {
  const { voltage, internalResistance, currentLimit } = x.supply
  const sag = leftAt.si({ open: voltage, resistance: internalResistance, current: currentLimit })
  const drop = Object.values(x.loadCases.events).find((event) => event.kind === 'drop')
  const energy =
    drop === undefined ? undefined : fallEnergy.si({ mass: x.robot.mass, height: drop.height, travel: drop.travel, gravity: G })
  const landing = energy === undefined ? undefined : new Quantity(energy, 'energy')
  return {
    discharge: new Quantity(currentLimit, 'current'),
    lowestVoltage: new Quantity(sag, 'voltage'),
    landingEnergy: landing,
    steps: [
      `Limit the current out of the supply to ${new Quantity(currentLimit, 'current')} over all controllers together: each gets its share, unless one program limits their sum.`,
      `At that current the voltage falls from ${new Quantity(voltage, 'voltage')} to ${new Quantity(sag, 'voltage')}. Set undervoltage limits below it, or the robot switches off in its hardest moment and falls.`,
      ...(landing === undefined
        ? []
        : [
            `A landing returns up to ${landing}, and so does walking downhill, step by step. A battery takes it up to its charging current. A bench supply takes none: its voltage rises until something fails. Put a battery or a brake resistor beside it.`,
          ]),
      'Set overvoltage limits above the full battery and below what controllers and capacitors bear. Copper losses are never returned: the true figure is lower.',
    ],
  }
}
