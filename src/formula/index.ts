/**
 * A formula is one record: inputs with kinds and limits, output, assumptions, validity, source and an SI kernel.
 * The checked call, validation, notes, calculation sheets, the catalogue and the reference pages derive from it.
 *
 * @module
 */

// Formulas and their records

export type { Definition, Input, Inputs, Limit, Output, OutputField, OutputRecord, Scalar } from './definition.js'
export { bare, type Evaluator, type Recorder, recorder, type Step, stepOf } from './evaluate.js'
export { type AnyFormula, brokenStatements, type CallOptions, type Formula, formula } from './formula.js'
export { notesOf } from './notes.js'
export { NoResultError, ValidityError } from './result.js'
export type { Arg, Curve, Flat, Given, Result, Si, SiResult } from './values.js'
export { inputsInWords, outputsInWords, titleInWords } from './words.js'

// Reading inputs

export { isRecord, onlyKeys, requireKeys } from './known-keys.js'
export { reader, readInputs, recordReader } from './reader.js'

// Sources of values

export {
  EVIDENCE_LEVELS,
  type EvidenceLevel,
  isPrior,
  isProperty,
  Property,
  type PropertyRecord,
  property,
  type Source,
} from './provenance.js'

// Proposals

export {
  atLeast,
  atMost,
  type KeptLimit,
  limitSentence,
  type NearestWish,
  type Proposal,
  type ProposalCandidate,
  type Proposals,
  proposalsOf,
  type Refusal,
  type Relaxable,
} from './proposal.js'
