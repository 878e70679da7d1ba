/** What a builder needs beside the verdict: designs side by side, the assembly plan, the control sheet, the plan for the test stand. */
export { type ComparedCheck, type Comparison, compareLegs, comparisonText } from './compare.js'
export { type LegChanges, withFields } from './with-fields.js'
