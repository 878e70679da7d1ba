import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { type In, Quantity } from '../units/index.js'
import { findleySinhStrain, findleyStrain } from './creep.js'
import {
  type ComplianceSeries,
  complianceFromRelaxationSi,
  type RelaxationSeries,
  readCompliance,
  readRelaxation,
} from './interconversion.js'
import { pronyCreepCompliance } from './prony.js'

/**
 * A creep law: the strain under a stress held for a time. Built by `findleyLaw`, `findleySinhLaw`, `complianceLaw` or `relaxationLaw`; isochronous curves,
 * superposition, time to a strain and the charts take any of them.
 */
export interface CreepLaw {
  /** What it is, in words. */
  readonly name: string
  /** Total strain under a stress held for a time. */
  readonly strain: (stress: In<'stress'>, time: In<'time'>) => Quantity<'strain'>
  /** The same on SI numbers, nothing checked. */
  readonly si: (stress: number, time: number) => number
  /** Only for a linear law: creep compliance and its integral over time, SI. */
  readonly linear?: {
    /** Strain per stress after a time in seconds, 1/Pa. */
    readonly compliance: (time: number) => number
    /** Its integral from zero to that time, s/Pa. */
    readonly integral: (time: number) => number
  }
}

/** A creep law that is proportional to stress. */
export type LinearCreepLaw = CreepLaw & { readonly linear: NonNullable<CreepLaw['linear']> }

const HELD = { stress: 'stress', time: { kind: 'time', min: 0 } } as const

function law<L extends CreepLaw['linear']>(name: string, si: CreepLaw['si'], linear: L) {
  const strain = (stress: In<'stress'>, time: In<'time'>) => {
    const x = readInputs(name, HELD, { stress, time })
    return new Quantity(si(x.stress, x.time), 'strain')
  }
  return { name, strain, si, ...(linear === undefined ? {} : { linear }) } as CreepLaw & { readonly linear: L }
}

const pick = <I extends Inputs>(where: string, inputs: I, given: Given<I>) => readInputs(where, inputs, given)

const FINDLEY = {
  modulus: { kind: 'modulus', above: 0 },
  creepCoefficient: { kind: 'ratio', min: 0 },
  creepExponent: { kind: 'ratio', above: 0, below: 1 },
  referenceTime: { kind: 'time', above: 0, default: '1 h' },
} as const

/** The linear Findley law as a creep law; see `findleyStrain`. Throws an `InputError` for parameters that cannot be. */
export function findleyLaw(parameters: Given<typeof FINDLEY>): LinearCreepLaw {
  const p = pick('findleyLaw', FINDLEY, parameters)
  const compliance = (time: number) => findleyStrain.si({ ...p, stress: 1, time, strength: undefined })
  const n = p.creepExponent
  const integral = (t: number) => (t / p.modulus) * (1 + (p.creepCoefficient * (t / p.referenceTime) ** n) / (n + 1))
  return law('findleyLaw', (stress, time) => stress * compliance(time), { compliance, integral })
}

const SINH = {
  elasticStrain: { kind: 'strain', min: 0 },
  elasticStress: { kind: 'stress', above: 0 },
  creepStrain: { kind: 'strain', min: 0 },
  creepStress: { kind: 'stress', above: 0 },
  creepExponent: { kind: 'ratio', above: 0, below: 1 },
  referenceTime: { kind: 'time', above: 0, default: '1 h' },
} as const

/** The Findley law with its stress dependence as a creep law; see `findleySinhStrain`. Throws an `InputError` for parameters that cannot be. */
export function findleySinhLaw(parameters: Given<typeof SINH>): CreepLaw {
  const p = pick('findleySinhLaw', SINH, parameters)
  return law('findleySinhLaw', (stress, time) => findleySinhStrain.si({ ...p, stress, time }), undefined)
}

/** A creep compliance as a creep law. Throws an `InputError` for a series that cannot be read. */
export function complianceLaw(series: ComplianceSeries): LinearCreepLaw {
  return fromCompliance('complianceLaw', readCompliance('complianceLaw', series))
}

/** A relaxation modulus as a creep law, converted exactly. Throws an `InputError` for a series that cannot be read. */
export function relaxationLaw(series: RelaxationSeries): LinearCreepLaw {
  return fromCompliance('relaxationLaw', complianceFromRelaxationSi(readRelaxation('relaxationLaw', series)))
}

function fromCompliance(
  name: string,
  { instantCompliance, terms, viscosity }: ReturnType<typeof complianceFromRelaxationSi>,
): LinearCreepLaw {
  const series = { instantCompliance, terms, viscosity }
  const compliance = (time: number) => pronyCreepCompliance.si({ ...series, time })
  const integral = (t: number) => {
    let sum = instantCompliance * t + (viscosity === undefined ? 0 : (t * t) / (2 * viscosity))
    for (const term of terms) sum += term.compliance * (t + term.time * Math.expm1(-t / term.time))
    return sum
  }
  return law(name, (stress, time) => stress * compliance(time), { compliance, integral })
}
