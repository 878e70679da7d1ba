/** What a builder needs beside the verdict: designs side by side, the assembly plan, the control sheet, the plan for the test stand. */
export { type AssemblyOptions, type AssemblyPlan, assemblyPlan, type FollowUp } from './assembly.js'
export { assemblyText } from './assembly-text.js'
export type { Assumed } from './bench.js'
export { type ComparedCheck, type Comparison, compareLegs, comparisonText } from './compare.js'
export type { BoltCut, CordCut, CutList, PinCut, ShaftCut } from './cut-list.js'
export type { BondStep, PressStep, TighteningStep } from './fastening-steps.js'
export type { BranchWinding, TensionerSetting, Winding } from './tensioning.js'
export { type LegChanges, withFields } from './with-fields.js'
