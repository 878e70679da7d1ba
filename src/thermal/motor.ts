import { type Given, notesOf, Property, readInputs, type Si } from '../formula/index.js'
import { InputError, type Kind, type Quantity as Q, Quantity } from '../units/index.js'
import { hotResistance } from './hot-winding.js'
import { backEmfConstant, motorConstant, torqueConstants } from './motor-constants.js'
import type { MotorNumbers } from './motor-currents.js'
import { noLoadLoss, noLoadSplit } from './no-load.js'

const NO_LOAD = {
  fields: {
    /** DC voltage of the no-load test. */
    voltage: { kind: 'voltage', above: 0 },
    /** DC current drawn. */
    current: { kind: 'current', above: 0 },
    /** Speed reached. */
    speed: { kind: 'angularVelocity', above: 0 },
  },
} as const

const MOTOR = {
  /** Speed for each volt. Needs `speedConstantBasis`; give this or one other constant. */
  speedConstant: { kind: 'speedConstant', above: 0, optional: true },
  /**
   * How the speed constant was measured: peak voltage of the spun motor between lines or of a phase, six-step no-load, or the catalogue's
   * word.
   */
  speedConstantBasis: { oneOf: ['spunPeakLineToLine', 'spunPeakPhase', 'noLoadSixStep', 'catalogue'], optional: true },
  /** Peak back-EMF between two terminals for each rad/s, magnets at 20 °C. */
  backEmfConstant: { kind: 'backEmfConstant', above: 0, optional: true },
  /** Torque for each ampere of peak phase current. */
  torqueConstantPeakPhase: { kind: 'torqueConstantPeakPhase', above: 0, optional: true },
  /** Torque for each ampere of root-mean-square phase current. */
  torqueConstantRmsPhase: { kind: 'torqueConstantRmsPhase', above: 0, optional: true },
  /** Torque for each ampere in the power-invariant frame. */
  torqueConstantPowerInvariant: { kind: 'torqueConstantPowerInvariant', above: 0, optional: true },
  /** Torque for each ampere of DC current, for a motor with flat-topped back-EMF. */
  torqueConstantDc: { kind: 'torqueConstantDc', above: 0, optional: true },
  /** Resistance between two terminals at the temperature `resistanceAt`. */
  terminalResistance: { kind: 'electricalResistance', above: 0 },
  /** Temperature of the winding at which the resistance was measured, −40 to 150 °C. Default 20 °C. */
  resistanceAt: { kind: 'temperature', min: '-40 degC', max: '150 degC', default: '20 degC' },
  /** One or two points of the no-load test. One alone counts as constant drag. Default: no drag. */
  noLoad: { list: NO_LOAD, optional: true },
  /** Moment of inertia of the rotor about its axis. Default: unknown. */
  inertia: { kind: 'momentOfInertia', min: 0, optional: true },
  /** Number of pole pairs: half the number of magnets round the rotor. Default 1. */
  polePairs: { kind: 'count', min: 1, whole: true, default: 1 },
  /** Inductance of one phase, for the voltage at speed. Default 0. */
  phaseInductance: { kind: 'inductance', min: 0, default: '0 H' },
  /** Relative reversible change of the magnets' remanence for each kelvin: −0.2 to 0 %/K. Default −0.11 %/K. */
  magnetCoefficient: { kind: 'temperatureCoefficient', max: 0, above: '-0.2 %/K', default: '-0.11 %/K' },
} as const

/**
 * How a motor is described. One constant is given, in a field whose name says its convention: TypeScript rejects a bare torque constant.
 *
 * `speedConstant` with `speedConstantBasis` (how it was measured), or `backEmfConstant` (peak, line to line), or a torque constant per peak phase,
 * rms phase, power-invariant or DC current (flat-topped EMF). `terminalResistance` between two terminals, at `resistanceAt` (20 °C). `noLoad` holds one or two points of the
 * no-load test; one alone counts as constant drag. `inertia` of the rotor. `magnetCoefficient` is the reversible change of remanence per kelvin.
 */
export type MotorSpecification = Given<typeof MOTOR>

/** A motor: every constant and loss from one description. Immutable. */
export interface Motor {
  /** Peak line-to-line back-EMF per rad/s, magnets at 20 °C. */
  readonly backEmfConstant: Q<'backEmfConstant'>
  /** Terminal resistance at 20 °C. */
  readonly terminalResistance: Q<'electricalResistance'>
  /** Motor constant at 20 °C. */
  readonly motorConstant: Q<'motorConstant'>
  /** Torque constant in every convention, magnets at 20 °C. */
  readonly torqueConstants: ReturnType<typeof torqueConstants>
  /** Rotor inertia, if given. */
  readonly inertia: Q<'momentOfInertia'> | undefined
  /** The same motor as plain SI numbers. */
  readonly si: MotorNumbers
}

const CONSTANTS = [
  'speedConstant',
  'backEmfConstant',
  'torqueConstantPeakPhase',
  'torqueConstantRmsPhase',
  'torqueConstantPowerInvariant',
  'torqueConstantDc',
] as const

const CATALOGUE = { level: 'commonPractice', where: 'catalogue speed constants, 5 % either way' } as const

/** Reads a motor. Throws an `InputError` when no constant is given, or several, or a speed constant without its basis. */
export function motor(given: MotorSpecification): Motor {
  const x = readInputs('thermal.motor', MOTOR, given)
  const named = CONSTANTS.filter((name) => x[name] !== undefined)
  if (named.length !== 1) {
    throw new InputError('thermal.motor', [
      { path: 'constant', given: named.length === 0 ? 'none' : named.join(' and '), accepts: `give one of ${CONSTANTS.join(', ')}` },
    ])
  }
  if ((x.speedConstant === undefined) !== (x.speedConstantBasis === undefined)) {
    throw new InputError('thermal.motor', [
      {
        path: 'speedConstantBasis',
        given: x.speedConstantBasis ?? 'missing',
        accepts: 'belongs to a speedConstant and says how it was measured: spunPeakLineToLine, spunPeakPhase, noLoadSixStep or catalogue',
      },
    ])
  }
  const carried = notesOf(given)
  const si = { ...numbersOf(x), notes: carried ?? [] }
  /** The value with the band that the back-EMF constant has; all these constants are proportional to it. */
  const banded = <K extends Kind>(kind: K, x: number): Q<K> =>
    si.backEmfScatter === 0
      ? new Quantity(x, kind, undefined, carried)
      : new Property(x, kind, x * (1 - si.backEmfScatter), x * (1 + si.backEmfScatter), CATALOGUE, 'band of the speed constant', carried)
  const constants = torqueConstants.si(si)
  return {
    backEmfConstant: banded('backEmfConstant', si.backEmfConstant),
    terminalResistance: new Quantity(si.terminalResistance, 'electricalResistance', undefined, carried),
    motorConstant: banded('motorConstant', motorConstant.si(si)),
    torqueConstants: {
      peakPhase: banded('torqueConstantPeakPhase', constants.peakPhase),
      rmsPhase: banded('torqueConstantRmsPhase', constants.rmsPhase),
      powerInvariant: banded('torqueConstantPowerInvariant', constants.powerInvariant),
      dcTrapezoidal: banded('torqueConstantDc', constants.dcTrapezoidal),
      dcSinusoidal: banded('torqueConstantDc', constants.dcSinusoidal),
    },
    inertia: si.inertia === undefined ? undefined : new Quantity(si.inertia, 'momentOfInertia'),
    si,
  }
}

function numbersOf(x: Si<typeof MOTOR>): Omit<MotorNumbers, 'notes'> {
  const perUnit = torqueConstants.si({ backEmfConstant: 1 })
  const emf =
    x.speedConstant !== undefined ? backEmfConstant.si({ speedConstant: x.speedConstant, basis: x.speedConstantBasis! }) : undefined
  const ke =
    emf?.typical ??
    x.backEmfConstant ??
    (x.torqueConstantPeakPhase !== undefined
      ? x.torqueConstantPeakPhase / perUnit.peakPhase
      : x.torqueConstantRmsPhase !== undefined
        ? x.torqueConstantRmsPhase / perUnit.rmsPhase
        : x.torqueConstantPowerInvariant !== undefined
          ? x.torqueConstantPowerInvariant / perUnit.powerInvariant
          : x.torqueConstantDc!)
  const terminalResistance = hotResistance.si({
    resistance: x.terminalResistance,
    measuredAt: x.resistanceAt,
    temperature: 293.15,
    conductor: 'copper',
  })
  return {
    backEmfConstant: ke,
    backEmfScatter: emf === undefined ? 0 : emf.high / emf.typical - 1,
    terminalResistance,
    magnetCoefficient: x.magnetCoefficient,
    ...dragOf(x, terminalResistance),
    polePairs: x.polePairs,
    phaseInductance: x.phaseInductance,
    inertia: x.inertia,
  }
}

function dragOf({ noLoad = [] }: Si<typeof MOTOR>, terminalResistance: number): { constantDrag: number; viscousDrag: number } {
  const [first, second] = noLoad
  if (first === undefined) return { constantDrag: 0, viscousDrag: 0 }
  if (noLoad.length > 2)
    throw new InputError('thermal.motor', [
      { path: 'noLoad', given: `${noLoad.length} points`, accepts: 'takes one or two no-load points' },
    ])
  const one = noLoadLoss.si({ ...first, terminalResistance })
  if (!(one.loss > 0))
    throw new InputError('thermal.motor', [
      {
        path: 'noLoad[0].current',
        given: `${first.current} A at ${first.voltage} V`,
        accepts: 'must lose less in the copper than the test puts in',
      },
    ])
  if (second === undefined) return { constantDrag: one.dragTorque, viscousDrag: 0 }
  const two = noLoadLoss.si({ ...second, terminalResistance })
  const split = noLoadSplit.si({ speed1: first.speed, loss1: one.loss, speed2: second.speed, loss2: two.loss })
  if (!(split.constantDrag >= 0 && split.viscousDrag >= 0))
    throw new InputError('thermal.motor', [
      {
        path: 'noLoad',
        given: `drag of ${one.dragTorque.toPrecision(3)} and ${two.dragTorque.toPrecision(3)} N m`,
        accepts: 'must have a drag that grows with speed, and less than in proportion to it',
      },
    ])
  return split
}
