export { assessRobot, type RobotOptions } from './assess-robot.js'
export type {
  Corner,
  CornerLoad,
  RobotAssessment,
  RobotCheck,
  RobotGait,
  RobotLanding,
  RobotSlope,
  RobotSlopeAcross,
  RobotStand,
} from './result.js'
export { robotText } from './text.js'
