import type { Gait } from '../../kinematics/index.js'
import type { Table } from '../../study/index.js'
import type { Kind, Quantity } from '../../units/index.js'
import type { Joint } from '../numbers.js'

/** A leg of the robot by its corner. */
export type Corner = 'leftFront' | 'rightFront' | 'leftHind' | 'rightHind'

/** Load of one leg in a gait. */
export interface CornerLoad {
  /** The leg. */
  readonly corner: Corner
  /** Whether it is mounted the other way round, front to back: it then steps backward while the robot walks forward. */
  readonly mirrored: boolean
  /** Part of the weight on it, averaged over the stride. */
  readonly meanShare: Quantity<'ratio'>
  /** Largest force across the ground on its foot. */
  readonly peakForce: Quantity<'force'>
  /** Largest torque at the shafts of its motors. */
  readonly motorTorque: {
    /** Of the motor of the hip. */
    readonly hip: Quantity<'torque'>
    /** Of the motor of the knee. */
    readonly knee: Quantity<'torque'>
    /** Of the motor of the sideways hip; absent where none drives it. */
    readonly sidewaysHip: Quantity<'torque'> | undefined
  }
}

/** The robot in one gait. */
export interface RobotGait {
  /** How the feet stand along the stride. */
  readonly feet: Gait
  /** Load of each leg. */
  readonly corners: readonly CornerLoad[]
  /** Part of the stride in which no polygon of feet holds the weight: the robot then tips until the next foot is down. */
  readonly unsupported: Quantity<'ratio'>
  /** Least angle that it tips in the longest such time without control; 0 where every moment is held. */
  readonly tips: Quantity<'angle'>
  /** Power drawn from the bus by all motors, controllers and electronics, averaged over the stride; what flows back is summed before it counts. */
  readonly meanPower: Quantity<'power'>
  /** The most power drawn at any instant. */
  readonly peakPower: Quantity<'power'>
  /** Power that flows back into the supply, averaged over the stride. */
  readonly returned: Quantity<'power'>
  /** Largest power that flows back. */
  readonly peakReturned: Quantity<'power'>
  /** The most of it that neither supply nor brake resistor takes: it raises the voltage of the bus. */
  readonly notTaken: Quantity<'power'>
  /** Current that the power of the hardest instant needs. Where the supply browns out, it is that at half of the voltage. */
  readonly peakCurrent: Quantity<'current'>
  /** Voltage that is left at the peak. */
  readonly lowestVoltage: Quantity<'voltage'>
  /** Whether the supply delivers the peak. */
  readonly state: 'holds' | 'brownOut'
  /** Heat of all motors, averaged over the stride. */
  readonly motorHeat: Quantity<'power'>
  /** Heat of their controllers. */
  readonly controllerHeat: Quantity<'power'>
  /** Energy drawn for each metre. */
  readonly energyPerMetre: Quantity<'energyPerDistance'>
  /** Energy for each metre over the weight. */
  readonly costOfTransport: Quantity<'ratio'>
  /** How long one charge lasts; absent where the document gives no energy. */
  readonly runningTime: Quantity<'time'> | undefined
  /** How far the robot gets in that time. */
  readonly range: Quantity<'length'> | undefined
  /** Moment by moment: power, current and voltage of the bus, heat of the motors. */
  readonly samples: Table
}

/** The robot on its feet, standing still on the level. */
export interface RobotStand {
  /** Force across the ground on each foot. */
  readonly forces: { readonly [C in Corner]: Quantity<'force'> }
  /** Depth of a hollow under one foot that leaves it without load; absent where the drives hold no load. */
  readonly hollow: Quantity<'length'> | undefined
  /** Power drawn from the bus. */
  readonly power: Quantity<'power'>
  /** Heat of all motors. */
  readonly motorHeat: Quantity<'power'>
  /** How long one charge lasts; absent where the document gives no energy. */
  readonly runningTime: Quantity<'time'> | undefined
}

/** The robot on a slope that it walks straight up or down: forces of each pair of feet, and what each foot needs along the ground. */
export interface RobotSlope {
  /** Angle of the slope. */
  readonly slope: Quantity<'angle'>
  /** Force across the ground on both front feet. */
  readonly front: Quantity<'force'>
  /** Force across the ground on both hind feet. */
  readonly hind: Quantity<'force'>
  /** Force along the ground over force across it, the same for all feet; above the friction of the ground the robot slides. */
  readonly traction: Quantity<'ratio'>
  /** Slope at which it tips in this direction. */
  readonly tipsAt: Quantity<'angle'>
}

/** The robot on a slope that it walks across, its lower side on the left: forces of each side, and all motors together. */
export interface RobotSlopeAcross {
  /** Angle of the slope. */
  readonly slope: Quantity<'angle'>
  /** Force across the ground on both lower feet, standing. */
  readonly lower: Quantity<'force'>
  /** Force across the ground on both upper feet, standing. */
  readonly upper: Quantity<'force'>
  /** Force to the side over force across the ground, the same for all feet. */
  readonly traction: Quantity<'ratio'>
  /** Slope at which it tips over the lower side. */
  readonly tipsAt: Quantity<'angle'>
  /** The walk across it: feet, loads, power of all motors; absent where it tips. */
  readonly walk: RobotGait | undefined
}

/** One drive at the moment when the feet touch down in a landing, its rotor still at rest. */
export interface RobotLanding {
  /** The landing. */
  readonly event: 'hop' | 'drop'
  /** The joint of the drive. */
  readonly joint: Joint
  /** Speed of the fall. */
  readonly speed: Quantity<'velocity'>
  /** Speed that the rotor has to reach, at the drum. */
  readonly drumSpeed: Quantity<'angularVelocity'>
  /** Torque at the drum that brings it there. */
  readonly blow: Quantity<'torque'>
  /** Torque that holds the robot in this pose, which adds to it. */
  readonly held: Quantity<'torque'>
  /** Whether the toes still give at the peak; once they lie flat the foot is stiff. */
  readonly toes: 'give' | 'lie flat'
  /** Torque beyond which the drive fails, in the cold and aged: a branch of a cord goes slack and snaps back, a belt jumps, a gearbox passes its peak torque. */
  readonly slackTorque: Quantity<'torque'>
  /** The failure beyond that torque, in words. */
  readonly beyond: string
}

/** One check of the whole robot. */
export interface RobotCheck {
  /** Name of the check, such as `robot.supplyCurrent`. */
  readonly id: string
  /** Subject of the check, in words. */
  readonly title: string
  /** When: walking, trotting, on a slope. */
  readonly where: string
  /** Demand. */
  readonly demand: Quantity<Kind>
  /** Capacity. */
  readonly capacity: Quantity<Kind>
  /** Capacity over demand; below 1 it fails. */
  readonly reserve: number
  /** The reserve required of it. */
  readonly requiredReserve: number
  /** Finding in words. */
  readonly sentence: string
  /** Changes that would help. */
  readonly remedy: string
}

/** A robot of four legs, assessed as a whole. */
export interface RobotAssessment {
  /** Whether every check has a reserve of 1 or more. */
  readonly passes: boolean
  /** Whether each check has the reserve required of it. */
  readonly meetsTarget: boolean
  /** Checks, the smallest margin first. */
  readonly checks: readonly RobotCheck[]
  /** Standing still on the level. */
  readonly stand: RobotStand
  /** The gaits of the document. */
  readonly gaits: {
    /** The walk. */
    readonly walk: RobotGait
    /** The trot. */
    readonly trot: RobotGait
  }
  /** The steepest slopes of the document. */
  readonly slopes: {
    /** Straight up. */
    readonly up: RobotSlope
    /** Straight down. */
    readonly down: RobotSlope
    /** Across. */
    readonly across: RobotSlopeAcross
  }
  /** Drives at touch-down of a hop and a drop: figures, no checks. Drives in which nothing gives, and falls from no height, are left out. */
  readonly landings: readonly RobotLanding[]
  /** Rise of the air inside a closed housing over the air outside, with all motors inside, walking; absent without a housing. */
  readonly housingRise: Quantity<'temperatureDifference'> | undefined
  /** Further remarks, in sentences. */
  readonly notes: readonly string[]
}
