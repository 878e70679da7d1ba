import { readInputs } from '../formula/index.js'
import { type In, InputError, Quantity } from '../units/index.js'
import { type ComplianceSi, complianceFromRelaxationSi, type RelaxationSi, relaxationFromComplianceSi } from './interconversion.js'

/** A relaxation modulus as a Prony series. */
export interface RelaxationSeries {
  /** Modulus after endless time; zero for a fluid. */
  readonly longTermModulus: In<'modulus'>
  /** Terms of the series. */
  readonly terms: readonly {
    /** Modulus that relaxes. */
    readonly modulus: In<'modulus'>
    /** Relaxation time of the term. */
    readonly time: In<'time'>
  }[]
}

/** A creep compliance as a Prony series. */
export interface ComplianceSeries {
  /** Compliance at once after loading. */
  readonly instantCompliance: In<'creepCompliance'>
  /** Terms of the series. */
  readonly terms: readonly {
    /** Compliance that is added with time. */
    readonly compliance: In<'creepCompliance'>
    /** Retardation time of the term. */
    readonly time: In<'time'>
  }[]
  /** Viscosity of the flow that never ends; absent for a solid. */
  readonly viscosity?: In<'dynamicViscosity'> | undefined
}

const RELAXATION = {
  longTermModulus: { kind: 'modulus', min: 0 },
  terms: { list: { fields: { modulus: { kind: 'modulus', min: 0 }, time: { kind: 'time', above: 0 } } } },
} as const

const COMPLIANCE = {
  instantCompliance: { kind: 'creepCompliance', above: 0 },
  terms: { list: { fields: { compliance: { kind: 'creepCompliance', min: 0 }, time: { kind: 'time', above: 0 } } }, least: 0 },
  viscosity: { kind: 'dynamicViscosity', above: 0, optional: true },
} as const

/** A checked relaxation series. */
export interface Relaxation {
  readonly longTermModulus: Quantity<'modulus'>
  readonly terms: readonly { readonly modulus: Quantity<'modulus'>; readonly time: Quantity<'time'> }[]
}

/** A checked compliance series. */
export interface Compliance {
  readonly instantCompliance: Quantity<'creepCompliance'>
  readonly terms: readonly { readonly compliance: Quantity<'creepCompliance'>; readonly time: Quantity<'time'> }[]
  readonly viscosity?: Quantity<'dynamicViscosity'>
}

/** Reads a relaxation series; an `InputError` lists what is wrong. */
export const readRelaxation = (where: string, series: RelaxationSeries): RelaxationSi => readInputs(where, RELAXATION, series as never)

/** Reads a compliance series; an `InputError` lists what is wrong. */
export const readCompliance = (where: string, series: ComplianceSeries): ComplianceSi =>
  readInputs(where, COMPLIANCE, series as never) as ComplianceSi

/**
 * The exact creep compliance of a material whose relaxation modulus is a Prony series.
 * Throws an `InputError` for a series that cannot be read, or with no stiffness at all.
 */
export function complianceFromRelaxation(series: RelaxationSeries): Compliance {
  const x = readRelaxation('complianceFromRelaxation', series)
  if (!(x.longTermModulus + x.terms.reduce((sum, { modulus }) => sum + modulus, 0) > 0)) {
    throw new InputError('complianceFromRelaxation', [
      { path: 'terms', given: 'all zero', accepts: 'at least one modulus must be above 0' },
    ])
  }
  const { instantCompliance, terms, viscosity } = complianceFromRelaxationSi(x)
  return {
    instantCompliance: new Quantity(instantCompliance, 'creepCompliance'),
    terms: terms.map((t) => ({ compliance: new Quantity(t.compliance, 'creepCompliance'), time: new Quantity(t.time, 'time') })),
    ...(viscosity === undefined ? {} : { viscosity: new Quantity(viscosity, 'dynamicViscosity') }),
  }
}

/** The exact relaxation modulus of a material whose creep compliance is a Prony series. Throws an `InputError` for a series that cannot be read. */
export function relaxationFromCompliance(series: ComplianceSeries): Relaxation {
  const { longTermModulus, terms } = relaxationFromComplianceSi(readCompliance('relaxationFromCompliance', series))
  return {
    longTermModulus: new Quantity(longTermModulus, 'modulus'),
    terms: terms.map((t) => ({ modulus: new Quantity(t.modulus, 'modulus'), time: new Quantity(t.time, 'time') })),
  }
}
