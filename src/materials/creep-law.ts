import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { type In, type Note, Quantity } from '../units/index.js'
import { findleySinhStrain, findleyStrain } from './creep.js'
import { complianceFromRelaxationSi } from './interconversion.js'
import { type ComplianceSeries, type RelaxationSeries, readCompliance, readRelaxation } from './interconversion-series.js'
import { pronyCreepCompliance } from './prony.js'

/**
 * A creep law: the strain under a stress held for a time. Built by `findleyLaw`, `findleySinhLaw`, `complianceLaw` or `relaxationLaw`; isochronous curves,
 * superposition, time to a strain and the charts take any of them.
 */
export interface CreepLaw {
  /** Description in words. */
  readonly name: string
  /** Total strain under a stress held for a time. */
  readonly strain: (stress: In<'stress'>, time: In<'time'>) => Quantity<'strain'>
  /** The same on SI numbers, nothing checked. */
  readonly si: (stress: number, time: number) => number
  /** Short-term strength, Pa; above half of it the results of a linear law carry a note. */
  readonly strength?: number
  /** Longest time of the readings the law rests on, s; results beyond it carry a note. */
  readonly longestTest?: number
  /** Only for a linear law: creep compliance and its integral over time, SI. */
  readonly linear?: {
    /** Strain per stress after a time in seconds, 1/Pa. */
    readonly compliance: (time: number) => number
    /** Integral of the compliance from zero to that time, s/Pa. */
    readonly integral: (time: number) => number
  }
}

/** A creep law that is proportional to stress. */
export type LinearCreepLaw = CreepLaw & { readonly linear: NonNullable<CreepLaw['linear']> }

const HELD = { stress: 'stress', time: { kind: 'time', min: 0 } } as const

/** Notes of a result of a law: a stress above half of the strength, and a time beyond the readings the law rests on. */
export function lawNotes(
  formula: string,
  { linear, strength: own, longestTest }: CreepLaw,
  at: { readonly stress: number; readonly time: number },
  strength = own,
): readonly Note[] | undefined {
  const notes: Note[] = []
  if (linear !== undefined && strength !== undefined && Math.abs(at.stress) > 0.5 * strength)
    notes.push({ formula, text: 'stress above half of the strength: outside the linear range, the strain is too small' })
  if (longestTest !== undefined && at.time > longestTest * (1 + 1e-9)) {
    const times = Number((at.time / longestTest).toPrecision(2))
    const reliable = times > 10 ? '; more than one decade beyond the readings it is a guess' : ''
    notes.push({ formula, text: `time ${times} times beyond the longest reading, ${hours(longestTest)}: extrapolated${reliable}` })
  }
  return notes.length > 0 ? notes : undefined
}

const hours = (seconds: number) => `${Number((seconds / 3600).toPrecision(3))} h`

interface Limits {
  readonly strength?: number | undefined
  readonly longestTest?: number | undefined
}

function law<L extends CreepLaw['linear']>(name: string, si: CreepLaw['si'], linear: L, { strength, longestTest }: Limits = {}) {
  const strain = (stress: In<'stress'>, time: In<'time'>) => {
    const x = readInputs(name, HELD, { stress, time })
    return new Quantity(si(x.stress, x.time), 'strain', undefined, lawNotes(`materials.${name}`, made, x))
  }
  const made: CreepLaw & { readonly linear: L } = {
    name,
    strain,
    si,
    ...(linear === undefined ? {} : { linear }),
    ...(strength === undefined ? {} : { strength }),
    ...(longestTest === undefined ? {} : { longestTest }),
  } as CreepLaw & { readonly linear: L }
  return made
}

const pick = <I extends Inputs>(where: string, inputs: I, given: Given<I>) => readInputs(where, inputs, given)

const STRENGTH = { kind: 'stress', above: 0, optional: true } as const
const LONGEST_TEST = { kind: 'time', above: 0, optional: true } as const

const FINDLEY = {
  /** Short-term elastic modulus. */
  modulus: { kind: 'modulus', above: 0 },
  /** Creep strain over elastic strain at the reference time. */
  creepCoefficient: { kind: 'ratio', min: 0 },
  /** Exponent of time, above 0 and below 1. */
  creepExponent: { kind: 'ratio', above: 0, below: 1 },
  /** Time of the creep coefficient. Default 1 h. */
  referenceTime: { kind: 'time', above: 0, default: '1 h' },
  /** Short-term strength; above half of it results carry a note. Default: not checked. */
  strength: STRENGTH,
  /** Longest time of the test behind the parameters; beyond it results carry a note. Default: not checked. */
  longestTest: LONGEST_TEST,
} as const

/** The linear Findley law as a creep law; see `findleyStrain`. Throws an `InputError` for parameters that cannot be. */
export function findleyLaw(parameters: Given<typeof FINDLEY>): LinearCreepLaw {
  const p = pick('findleyLaw', FINDLEY, parameters)
  const { modulus, creepCoefficient, creepExponent, referenceTime } = p
  // A literal each time: spreading the parameters costs a hundred times as much.
  const compliance = (time: number) =>
    findleyStrain.si({ stress: 1, modulus, creepCoefficient, creepExponent, time, referenceTime, strength: undefined })
  const n = creepExponent
  const integral = (t: number) => (t / modulus) * (1 + (creepCoefficient * (t / referenceTime) ** n) / (n + 1))
  return law('findleyLaw', (stress, time) => stress * compliance(time), { compliance, integral }, p)
}

const SINH = {
  /** Scale of the elastic strain, which multiplies its sinh. */
  elasticStrain: { kind: 'strain', min: 0 },
  /** Stress at which the sinh of the elastic strain has the argument 1. */
  elasticStress: { kind: 'stress', above: 0 },
  /** Scale of the creep strain at the reference time. */
  creepStrain: { kind: 'strain', min: 0 },
  /** Stress at which the sinh of the creep strain has the argument 1. */
  creepStress: { kind: 'stress', above: 0 },
  /** Exponent of time, above 0 and below 1. */
  creepExponent: { kind: 'ratio', above: 0, below: 1 },
  /** Time of the creep strain's scale. Default 1 h. */
  referenceTime: { kind: 'time', above: 0, default: '1 h' },
  /** Longest time of the test behind the parameters; beyond it results carry a note. Default: not checked. */
  longestTest: LONGEST_TEST,
} as const

/** The Findley law with its stress dependence as a creep law; see `findleySinhStrain`. Throws an `InputError` for parameters that cannot be. */
export function findleySinhLaw(parameters: Given<typeof SINH>): CreepLaw {
  const p = pick('findleySinhLaw', SINH, parameters)
  const { elasticStrain, elasticStress, creepStrain, creepStress, creepExponent, referenceTime } = p
  const strain = (stress: number, time: number) =>
    findleySinhStrain.si({ stress, elasticStrain, elasticStress, creepStrain, creepStress, creepExponent, time, referenceTime })
  return law('findleySinhLaw', strain, undefined, p)
}

/** What else is known of a material whose law is a series. */
export interface LinearLawOptions {
  /** Short-term strength; above half of it results carry a note. Default: not checked. */
  readonly strength?: In<'stress'> | undefined
  /** Longest time of the test behind the series; beyond it results carry a note. Default: not checked. */
  readonly longestTest?: In<'time'> | undefined
}

/** A creep compliance as a creep law. Throws an `InputError` for a series that cannot be read. */
export function complianceLaw(series: ComplianceSeries, options: LinearLawOptions = {}): LinearCreepLaw {
  return fromCompliance('complianceLaw', readCompliance('complianceLaw', series), options)
}

/** A relaxation modulus as a creep law, converted exactly. Throws an `InputError` for a series that cannot be read. */
export function relaxationLaw(series: RelaxationSeries, options: LinearLawOptions = {}): LinearCreepLaw {
  return fromCompliance('relaxationLaw', complianceFromRelaxationSi(readRelaxation('relaxationLaw', series)), options)
}

function fromCompliance(
  name: string,
  { instantCompliance, terms, viscosity }: ReturnType<typeof complianceFromRelaxationSi>,
  options: LinearLawOptions,
): LinearCreepLaw {
  const limits = readInputs(name, { strength: STRENGTH, longestTest: LONGEST_TEST }, options)
  const compliance = (time: number) => pronyCreepCompliance.si({ instantCompliance, terms, viscosity, time })
  const integral = (t: number) => {
    let sum = instantCompliance * t + (viscosity === undefined ? 0 : (t * t) / (2 * viscosity))
    for (const term of terms) sum += term.compliance * (t + term.time * Math.expm1(-t / term.time))
    return sum
  }
  return law(name, (stress, time) => stress * compliance(time), { compliance, integral }, limits)
}
