/** How the verdict of a leg follows one of its fields. */

export {
  type Decider,
  type PassingPart,
  type PassingRange,
  type PassingRangeOptions,
  passingRange,
  type TriedValue,
} from './passing-range.js'
export { passingRangeText } from './text.js'
