export type { Arg, Curve, Definition, Flat, Given, Input, Inputs, Limit, Output, OutputField, OutputRecord, Result, Scalar, Si, SiResult, } from './definition.js';
export { bare, type Evaluator, type Recorder, recorder, type Step, stepOf } from './evaluate.js';
export { type AnyFormula, brokenStatements, type CallOptions, type Formula, formula, NoResultError, ValidityError } from './formula.js';
export { notesOf } from './notes.js';
export { type EvidenceLevel, isPrior, isProperty, Property, type PropertyRecord, property, type Source } from './provenance.js';
export { reader, readInputs, recordReader } from './reader.js';
