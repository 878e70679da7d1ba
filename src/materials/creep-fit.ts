import { readInputs, requireKeys } from '../formula/index.js'
import { InputError } from '../units/index.js'
import { findleySinhStrain, findleyStrain, nortonBaileyStrain } from './creep.js'
import { type CreepLaw, findleyLaw, findleySinhLaw, type LinearCreepLaw } from './creep-law.js'
import { type CreepFit, type CreepFitOptions, type CreepReading, fitted, type Row, rowsOf } from './creep-readings.js'

const REFERENCE = 3600

function referenceOf(where: string, options: CreepFitOptions): number {
  requireKeys(where, 'options', options, ['referenceTime', 'confidence'])
  return options.referenceTime === undefined
    ? REFERENCE
    : readInputs(where, { referenceTime: { kind: 'time', above: 0 } }, { referenceTime: options.referenceTime }).referenceTime
}

/**
 * The linear Findley law of a creep log: modulus at once, creep coefficient and exponent, with confidence ranges, and the law ready for use.
 * Relative strain is fitted, so early small readings count as much as late large ones. Throws an `InputError` for fewer than five readings or readings that
 * cannot be.
 */
export function fitFindley(
  readings: readonly CreepReading[],
  options: CreepFitOptions = {},
): CreepFit<'modulus' | 'creepCoefficient' | 'creepExponent'> & { readonly law: LinearCreepLaw } {
  const where = 'fitFindley'
  const { confidence = 0.95 } = options
  const rows = rowsOf(where, readings, 5, confidence)
  const referenceTime = referenceOf(where, options)
  const stiffest = Math.max(...rows.map(({ stress, strain }) => stress / strain))
  const fit = fitted(
    where,
    rows,
    [
      { name: 'modulus', kind: 'modulus', start: 1.1 * stiffest },
      { name: 'creepCoefficient', kind: 'ratio', start: 0.1 },
      { name: 'creepExponent', kind: 'ratio', start: 0.2, lower: 0.005, upper: 0.95, plain: true },
    ],
    (v, row) => findleyStrain.si({ ...v, ...row, referenceTime, strength: undefined }),
    confidence,
  )
  const { values, ...rest } = fit
  const law = findleyLaw({
    modulus: [values.modulus, 'Pa'],
    creepCoefficient: values.creepCoefficient,
    creepExponent: values.creepExponent,
    referenceTime: [referenceTime, 's'],
    longestTest: [Math.max(...rows.map(({ time }) => time)), 's'],
  })
  return { ...rest, law }
}

/** The Findley law with its stress dependence, of logs at several stresses; see `fitFindley`. Throws an `InputError` for fewer than three different stresses. */
export function fitFindleySinh(
  readings: readonly CreepReading[],
  options: CreepFitOptions = {},
): CreepFit<'elasticStrain' | 'elasticStress' | 'creepStrain' | 'creepStress' | 'creepExponent'> & { readonly law: CreepLaw } {
  const where = 'fitFindleySinh'
  const { confidence = 0.95 } = options
  const rows = rowsOf(where, readings, 9, confidence)
  const referenceTime = referenceOf(where, options)
  const stresses = new Set(rows.map(({ stress }) => stress))
  if (stresses.size < 3)
    throw new InputError(where, [
      {
        path: 'readings',
        given: `${stresses.size} stresses`,
        accepts: 'at least three different stresses tell how creep depends on stress',
      },
    ])
  const top = Math.max(...stresses)
  const first = rows.reduce((a, b) => (b.time < a.time ? b : a))
  const scale = first.strain / first.stress
  const fit = fitted(
    where,
    rows,
    [
      { name: 'elasticStrain', kind: 'strain', start: scale * top },
      { name: 'elasticStress', kind: 'stress', start: top, lower: 0.05 * top, upper: 50 * top },
      { name: 'creepStrain', kind: 'strain', start: 0.1 * scale * top },
      { name: 'creepStress', kind: 'stress', start: top, lower: 0.05 * top, upper: 50 * top },
      { name: 'creepExponent', kind: 'ratio', start: 0.2, lower: 0.005, upper: 0.95, plain: true },
    ],
    (v, row) => findleySinhStrain.si({ ...v, ...row, referenceTime }),
    confidence,
  )
  const { values: v, ...rest } = fit
  const law = findleySinhLaw({
    elasticStrain: v.elasticStrain,
    elasticStress: [v.elasticStress, 'Pa'],
    creepStrain: v.creepStrain,
    creepStress: [v.creepStress, 'Pa'],
    creepExponent: v.creepExponent,
    referenceTime: [referenceTime, 's'],
    longestTest: [Math.max(...rows.map(({ time }) => time)), 's'],
  })
  return { ...rest, law }
}

/**
 * The Norton-Bailey law of logs at two or more stresses; strains are creep alone, without the elastic part. The reference stress is the highest of the log.
 * Throws an `InputError` like `fitFindley`.
 */
export function fitNortonBailey(
  readings: readonly CreepReading[],
  options: CreepFitOptions = {},
): CreepFit<'referenceStrain' | 'stressExponent' | 'timeExponent'> & { readonly referenceStress: number; readonly referenceTime: number } {
  const where = 'fitNortonBailey'
  const { confidence = 0.95 } = options
  const rows = rowsOf(where, readings, 5, confidence)
  const referenceTime = referenceOf(where, options)
  const stresses = new Set(rows.map(({ stress }) => stress))
  if (stresses.size < 2)
    throw new InputError(where, [{ path: 'readings', given: 'one stress', accepts: 'at least two stresses tell the stress exponent' }])
  if (rows.some(({ time }) => time === 0))
    throw new InputError(where, [
      { path: 'readings', given: 'a reading at time zero', accepts: 'creep strain starts at zero: leave it out' },
    ])
  const referenceStress = Math.max(...stresses)
  const { values: _, ...rest } = fitted(
    where,
    rows,
    [
      { name: 'referenceStrain', kind: 'strain', start: (rows[0] as Row).strain },
      { name: 'stressExponent', kind: 'ratio', start: 1.5, lower: 0.1, upper: 20, plain: true },
      { name: 'timeExponent', kind: 'ratio', start: 0.3, lower: 0.005, upper: 1, plain: true },
    ],
    (v, row) => nortonBaileyStrain.si({ ...v, ...row, referenceStress, referenceTime }),
    confidence,
  )
  return { ...rest, referenceStress, referenceTime }
}
