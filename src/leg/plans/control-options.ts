import { type In, InputError, Quantity, quantity, show, significant } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { cordJoints, type DrivenJoint, drivenJoints, motorOf, ofJointsInWords } from '../numbers.js'
import { knownOptions } from '../options.js'
import type { Assumed } from './bench.js'
import { MAGNET } from './control-magnet.js'
import { LANDINGS, VOLTAGE_ROOM } from './control-supply.js'
import { phrase, shown } from './sheet-units.js'

/** Inputs of the sheet that the specification does not hold. */
export interface ControlOptions {
  /** Rate of the position loop. Default 1 kHz. */
  readonly loopRate?: In<'frequency'>
  /** Durations of the current limits, at most two minutes: longer ones are no pulses. Default 1, 10 and 60 s. */
  readonly durations?: readonly In<'time'>[]
  /** Mass of copper in the winding. Default a sixth of the motor's mass. */
  readonly copperMass?: In<'mass'>
  /** How far the pretension of a cord may be set wrong, either way. Default 5 %: a plucked or scaled setting. A belt has its own field. */
  readonly settingAccuracy?: In<'ratio'>
  /** Capacitors of all controllers on the bus together. Default 2 mF. */
  readonly busCapacitance?: In<'capacitance'>
  /** Highest voltage that controllers and capacitors bear. Default a quarter above the voltage of the supply. */
  readonly highestVoltage?: In<'voltage'>
  /** Current that the switch of a brake resistor bears. Default 20 A. */
  readonly brakeSwitchCurrent?: In<'current'>
}

export const CONTROL_OPTIONS = [
  'loopRate',
  'durations',
  'copperMass',
  'settingAccuracy',
  'busCapacitance',
  'highestVoltage',
  'brakeSwitchCurrent',
] as const

/** Copper over the mass of a motor, where nobody weighed it. */
const COPPER_SHARE = 1 / 6
/** Pulses longer than this heat the mount as well, s. */
const MAX_PULSE = 120

/** The options, read. @internal */
export interface ReadOptions {
  readonly loopRate: Quantity<'frequency'>
  readonly durations: readonly Quantity<'time'>[]
  readonly copper: (joint: DrivenJoint) => Quantity<'mass'>
  readonly setting: Quantity<'ratio'>
  readonly capacitance: Quantity<'capacitance'>
  readonly highestVoltage: Quantity<'voltage'>
  readonly switchCurrent: Quantity<'current'>
}

/** Reads the options. Throws an `InputError` that names every option that cannot be. @internal */
export function readOptions({ x }: LegModel, options: ControlOptions): ReadOptions {
  knownOptions('controlSheet', options, CONTROL_OPTIONS)
  const lightest = Math.min(...drivenJoints(x).map((joint) => motorOf(x, joint).mass))
  const given = options.copperMass === undefined ? undefined : quantity('mass', options.copperMass)
  const read: ReadOptions = {
    loopRate: quantity('frequency', options.loopRate ?? '1 kHz'),
    durations: (options.durations ?? ['1 s', '10 s', '60 s']).map((duration) => quantity('time', duration as In<'time'>)),
    copper: (joint) => given ?? new Quantity(motorOf(x, joint).mass * COPPER_SHARE, 'mass'),
    setting: quantity('ratio', options.settingAccuracy ?? '5 %'),
    capacitance: quantity('capacitance', options.busCapacitance ?? '2 mF'),
    highestVoltage: quantity('voltage', options.highestVoltage ?? [VOLTAGE_ROOM * x.supply.voltage, 'V']),
    switchCurrent: quantity('current', options.brakeSwitchCurrent ?? '20 A'),
  }
  const above = (path: 'loopRate' | 'busCapacitance' | 'brakeSwitchCurrent', { si }: { readonly si: number }) =>
    si > 0 ? [] : [{ path, given: show(options[path]), accepts: 'must be above zero' }]
  const bad = [
    ...(read.setting.si >= 0 && read.setting.si <= 0.5
      ? []
      : [{ path: 'settingAccuracy', given: show(options.settingAccuracy), accepts: 'must be from 0 to 50 %' }]),
    ...above('loopRate', read.loopRate),
    ...above('busCapacitance', read.capacitance),
    ...above('brakeSwitchCurrent', read.switchCurrent),
    ...(read.highestVoltage.si > x.supply.voltage
      ? []
      : [
          {
            path: 'highestVoltage',
            given: show(options.highestVoltage),
            accepts: phrase`must be above the voltage of the supply (${new Quantity(x.supply.voltage, 'voltage')})`,
          },
        ]),
    ...(given === undefined || (given.si > 0 && given.si < lightest)
      ? []
      : [{ path: 'copperMass', given: show(options.copperMass), accepts: 'must be above zero and below the mass of the motor' }]),
    ...read.durations.flatMap((duration, i) =>
      duration.si > 0 && duration.si <= MAX_PULSE
        ? []
        : [{ path: `durations[${i}]`, given: show(options.durations?.[i]), accepts: 'must be above zero and at most 2 min' }],
    ),
  ]
  if (bad.length > 0) throw new InputError('controlSheet', bad)
  return read
}

/** Assumptions of the sheet, with reasons. @internal */
export function assumedBy(x: LegNumbers, options: ControlOptions, read: ReadOptions): Assumed[] {
  const why = (path: keyof ControlOptions, reason: string) => (options[path] === undefined ? reason : 'given')
  const copper = ofJointsInWords(x, (joint) => shown(read.copper(joint)))
  return [
    { what: 'rate of the position loop', value: shown(read.loopRate), why: why('loopRate', 'a usual rate') },
    {
      what: 'copper in the winding',
      value: copper,
      why: why('copperMass', 'assumption: a sixth of the motor; limits for seconds depend on it'),
    },
    ...(cordJoints(x).length > 0
      ? [
          {
            what: 'pretension of a cord set wrong by up to',
            value: `${significant(100 * read.setting.si, 3)} %`,
            why: why('settingAccuracy', 'assumption: a plucked span or a scale; the current limits hold for both ends'),
          },
        ]
      : []),
    {
      what: 'capacitors on the bus',
      value: shown(read.capacitance),
      why: why('busCapacitance', 'assumption: half a millifarad for each of four controllers; read what is printed on yours'),
    },
    {
      what: 'highest voltage of controllers and capacitors',
      value: shown(read.highestVoltage),
      why: why('highestVoltage', 'assumption: a quarter above the supply; take the lowest of all data sheets'),
    },
    {
      what: 'switch of the brake resistor',
      value: shown(read.switchCurrent),
      why: why('brakeSwitchCurrent', 'assumption: a small one; look it up'),
    },
    {
      what: 'time from one landing to the next',
      value: shown(new Quantity(LANDINGS, 'time')),
      why: 'assumption: a robot that hops all the time; the mean power of the brake resistor depends on it',
    },
    {
      what: 'magnet of the encoder',
      value: phrase`disc of ${new Quantity(2 * MAGNET.radius, 'length')} by ${new Quantity(MAGNET.length, 'length')}, ${MAGNET.remanence} T, no steel behind it`,
      why: 'the usual one; a steel shaft changes the field',
    },
    { what: 'links', value: 'uniform rods', why: 'gravity terms and inertia; weigh and balance yours' },
  ]
}
