import { brakeResistor, busVoltageRise, supplySag } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import { downhillPower, fallEnergy, touchDownPower, voltageLeft } from '../workshop-lines.js'
import { phrase } from './sheet-units.js'

/** A resistor that takes what the supply does not. */
export interface BrakeResistor {
  /** Voltage at which its switch connects it. */
  readonly onVoltage: Quantity<'voltage'>
  /** Largest resistance that holds that voltage, and smallest that its switch bears. */
  readonly highest: Quantity<'electricalResistance'>
  /** Smallest resistance that its switch bears. */
  readonly lowest: Quantity<'electricalResistance'>
  /** Energy of one pulse, which it must bear without a heat sink. */
  readonly pulseEnergy: Quantity<'energy'>
  /** Its power at landings one after the other. */
  readonly meanPower: Quantity<'power'>
  /** Whether a resistance lies between both. */
  readonly state: 'fits' | 'switchTooSmall'
}

/** Limits of the supply, and what may flow back into it. */
export interface SupplyLimits {
  /** Largest current out of the supply, all controllers together. */
  readonly discharge: Quantity<'current'>
  /** Voltage that is left at that current: set the undervoltage limit of the controllers below it. */
  readonly lowestVoltage: Quantity<'voltage'>
  /** Energy of a landing: the most that the motors can return to the supply, copper losses not taken off. */
  readonly landingEnergy: Quantity<'energy'> | undefined
  /** The largest power that flows back: at touch-down of a landing, or walking downhill, whichever is more. */
  readonly returnedPower: Quantity<'power'> | undefined
  /** Current and voltage of a battery that takes it; absent where the supply takes nothing back. */
  readonly charging:
    | {
        /** The largest current into the battery. */
        readonly current: Quantity<'current'>
        /** Voltage of the bus at that current. */
        readonly voltage: Quantity<'voltage'>
      }
    | undefined
  /** Voltage of the bus after a landing that neither supply nor resistor takes. */
  readonly untakenVoltage: Quantity<'voltage'> | undefined
  /** The resistor that takes a landing. */
  readonly brake: BrakeResistor | undefined
  /** How to set the controllers, step by step. */
  readonly steps: readonly string[]
}

/** Inputs of the limits besides the leg, SI. @internal */
export interface SupplyLimitInputs {
  /** Capacitors of all controllers together. */
  readonly capacitance: number
  /** Highest voltage that controllers and capacitors bear. */
  readonly highestVoltage: number
  /** Current that the switch of a brake resistor bears. */
  readonly switchCurrent: number
}

/** The highest voltage of controllers over the voltage of the supply, where nobody gives it. @internal */
export const VOLTAGE_ROOM = 1.25
/** A brake resistor is connected this far up to the highest voltage: its switch takes time, and voltages scatter. */
const THRESHOLD = 0.95
/** From one landing to the next, s. @internal */
export const LANDINGS = 2
/** Limits of the supply. @internal */
export function supplyLimits({ x }: LegModel, { capacitance, highestVoltage, switchCurrent }: SupplyLimitInputs): SupplyLimits {
  const { voltage, internalResistance, currentLimit, takesBack } = x.supply
  const sag = voltageLeft.si({ open: voltage, resistance: internalResistance, current: currentLimit })
  const { energy, power } = returned(x)
  const limits = { discharge: ampere(currentLimit), lowestVoltage: volt(sag) }
  const first = [
    phrase`Limit the current out of the supply to ${limits.discharge} over all controllers together: each gets its share, unless one program limits their sum.`,
    phrase`At that current the voltage falls from ${volt(voltage)} to ${limits.lowestVoltage}. Set undervoltage limits below it, or the robot switches off in its hardest moment and falls.`,
    phrase`Set overvoltage limits above the full battery and below ${volt(highestVoltage)}, which controllers and capacitors must bear. A controller that trips lets go of its leg: the robot falls.`,
  ]
  if (energy === undefined || !(power > 0))
    return {
      ...limits,
      landingEnergy: undefined,
      returnedPower: undefined,
      charging: undefined,
      untakenVoltage: undefined,
      brake: undefined,
      steps: first,
    }
  const { current, voltage: charged } = supplySag.si({ openCircuitVoltage: voltage, resistance: internalResistance, power: -power })
  const charging = takesBack ? { current: ampere(-current), voltage: volt(charged) } : undefined
  const untaken = volt(busVoltageRise.si({ voltage, capacitance, energy }))
  const onVoltage = THRESHOLD * highestVoltage
  const found = brakeResistor.si({ onVoltage, peakPower: power, energy, interval: LANDINGS, switchCurrent })
  const brake: BrakeResistor = {
    onVoltage: volt(onVoltage),
    highest: ohm(found.highest),
    lowest: ohm(found.lowest),
    pulseEnergy: new Quantity(energy, 'energy'),
    meanPower: watt(found.meanPower),
    state: found.state,
  }
  return {
    ...limits,
    landingEnergy: brake.pulseEnergy,
    returnedPower: watt(power),
    charging,
    untakenVoltage: untaken,
    brake,
    steps: [...first, ...backSteps(brake, watt(power), charging, untaken, highestVoltage, switchCurrent)],
  }
}

/** Energy of a landing and the largest power that flows back; copper losses and drag are not taken off. */
function returned({ robot: { mass }, loadCases, gaits }: LegModel['x']): { readonly energy: number | undefined; readonly power: number } {
  const events = Object.values(loadCases.events)
  const drop = events.find((event) => event.kind === 'drop')
  const downhill = events.flatMap((event) => {
    const gait = event.kind === 'slope' ? gaits[event.gait] : undefined
    return event.kind === 'slope' && gait !== undefined && event.angle < 0
      ? [downhillPower.si({ mass, speed: gait.speed, angle: -event.angle, gravity: STANDARD_GRAVITY })]
      : []
  })
  const fall = drop === undefined ? undefined : { mass, height: drop.height, travel: drop.travel, gravity: STANDARD_GRAVITY }
  return {
    energy: fall === undefined ? undefined : fallEnergy.si(fall),
    power: Math.max(0, ...downhill, fall === undefined ? 0 : touchDownPower.si(fall)),
  }
}

function backSteps(
  { pulseEnergy, onVoltage, highest, lowest, meanPower, state }: BrakeResistor,
  power: Quantity<'power'>,
  charging: SupplyLimits['charging'],
  untaken: Quantity<'voltage'>,
  highestVoltage: number,
  switchCurrent: number,
): string[] {
  const tooHigh = untaken.si > highestVoltage
  return [
    phrase`A landing returns up to ${pulseEnergy}, at most ${power}; walking downhill returns some with each step. Copper losses are never returned: the true figures are lower.`,
    charging === undefined
      ? phrase`This supply takes nothing back. The capacitors alone would rise to ${untaken}${tooHigh ? ', more than anything on the bus bears: the robot must not land, nor walk downhill, without a brake resistor or a battery' : ''}.`
      : phrase`The battery is charged with up to ${charging.current} and the bus rises to ${charging.voltage}: set the charging limits of battery and controllers above that, and ask the maker of the cells. Where its protection opens, or on a bench supply, the capacitors alone would rise to ${untaken}${tooHigh ? ': more than anything on the bus bears' : ''}. A full battery takes nothing: start a little below full.`,
    state === 'fits'
      ? phrase`A brake resistor takes it: from ${lowest} (its switch bears ${ampere(switchCurrent)}) to ${highest}, connected at ${onVoltage}. It must bear pulses of ${pulseEnergy} and ${meanPower} on average, with a landing every ${new Quantity(LANDINGS, 'time')}. Mount it on metal away from plastics and hands: it burns.`
      : phrase`A brake resistor of at most ${highest} would take it at ${onVoltage}, but its switch of ${ampere(switchCurrent)} bears no less than ${lowest}: take a larger switch, several of them, or land softer.`,
  ]
}

const volt = (x: number) => new Quantity(x, 'voltage')
const ampere = (x: number) => new Quantity(x, 'current')
const ohm = (x: number) => new Quantity(x, 'electricalResistance')
const watt = (x: number) => new Quantity(x, 'power')
