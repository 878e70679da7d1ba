/** From a leg to other tools, and back: tables, simulators, control loops, the text of its document. */
export { checksTable } from './checks-table.js'
export { editLegText } from './edit-text.js'
export { type LegMotion, type LegMotionOptions, legMotion, type StrideTrajectoryOptions, strideTrajectory } from './motion.js'
export { upgradeLegText } from './upgrade-text.js'
export { legUrdf, type UrdfOptions } from './urdf.js'
