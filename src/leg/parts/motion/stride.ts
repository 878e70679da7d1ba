import { formula } from '../../../formula/index.js'
import { SPRING_LAW } from '../springs/law.js'
import { hardestLoadsOf } from './broken-springs.js'

/** Forces and joint torques of a leg over a stride, or in a pose that is held: the largest of moments sampled in stance and swing. */
export const strideLoads = /* @__PURE__ */ formula('leg.strideLoads', {
  inputs: {
    /** Sideways distance from the sideways-hip axis to the plane of the leg. */
    hipOffset: { kind: 'length', min: 0 },
    /** Length of the upper link. */
    upperLink: { kind: 'length', above: 0 },
    /** Length of the lower link, to the foot point. */
    lowerLink: { kind: 'length', above: 0 },
    /** Mass of the upper link. */
    upperMass: { kind: 'mass', min: 0 },
    /** Mass of the lower link. */
    lowerMass: { kind: 'mass', min: 0 },
    /** Distance of the centre of mass of the upper link from the hip. */
    upperCentre: 'length',
    /** Distance of the centre of mass of the lower link from the knee. */
    lowerCentre: 'length',
    /** Inertia of the upper link about its centre of mass, across the leg. */
    upperInertia: { kind: 'momentOfInertia', min: 0 },
    /** Inertia of the lower link about its centre of mass, across the leg. */
    lowerInertia: { kind: 'momentOfInertia', min: 0 },
    /** Inertia of the hip's rotor, felt at the joint. */
    hipRotorInertia: { kind: 'momentOfInertia', min: 0 },
    /** Inertia of the knee's rotor, felt at the joint. */
    kneeRotorInertia: { kind: 'momentOfInertia', min: 0 },
    /** Inertia that the knee's rotor adds at the hip, where it rides on the upper link. */
    kneeRotorAtHip: { kind: 'momentOfInertia', min: 0 },
    /** Inertia by which that rotor couples hip and knee, negative where it turns against the knee. */
    rotorCoupling: 'inertiaCoupling',
    /** Side to which the knee bends. */
    knee: { oneOf: ['forward', 'backward'] },
    /** Height of the hip axis above the ground in mid stance. */
    height: { kind: 'length', above: 0 },
    /** Mass that the legs carry. */
    mass: { kind: 'mass', above: 0 },
    /** Acceleration of free fall across the ground. */
    gravity: { kind: 'acceleration', min: 0 },
    /** Share of the weight this leg carries, averaged over the stride. */
    legShare: { kind: 'ratio', min: 0 },
    /** Share of the stride that the foot is on the ground. */
    dutyFactor: { kind: 'ratio', above: 0, max: 1 },
    /** Course of the force over the stance. */
    shape: { oneOf: ['rectangular', 'halfSine'] },
    /** Parts of the weight on the feet in each twelfth of the stance, row by row (`kinematics.walkingShares`). Left out where the shape tells. */
    shares: { list: 'ratio', optional: true },
    /** Force along the ground over force across it: the most braking (negative) and the most pushing. */
    tractionLowest: 'ratio',
    tractionHighest: 'ratio',
    /** Force along the ground across the walk, over force across the ground: of either sign, as on a slope that is walked across. */
    lateral: { kind: 'ratio', min: 0 },
    /** Speed of the body. */
    speed: { kind: 'velocity', min: 0 },
    /** Way of the body over one foot on the ground; 0 for a pose that is held. */
    stepLength: { kind: 'length', min: 0 },
    /** Height the foot is lifted. */
    clearance: { kind: 'length', min: 0 },
    /** Whether the leg is blocked in its stance: the poses of a step, but nothing moves. */
    blocked: { flag: true },
    /** The rod that drives the knee from a drum on the hip axis. Left out where the knee's motor sits on the upper link. */
    linkage: {
      fields: {
        /** Length of the crank on the hip axis. */
        crank: { kind: 'length', above: 0 },
        /** Distance of the pins of the rod. */
        coupler: { kind: 'length', above: 0 },
        /** Length of the rocker on the lower link. */
        rocker: { kind: 'length', above: 0 },
        /** Direction of the rocker from the direction hip to knee, with the knee straight. */
        rockerAngleAtStraightKnee: 'angle',
        /** Side of the line from hip axis to rocker pin on which the crank lies. */
        crankSide: { oneOf: ['positive', 'negative'] },
      },
      optional: true,
    },
    /** Belt or cord that drives the knee from a pulley on the hip axis. Left out likewise. */
    kneePulleys: {
      fields: {
        /** Turns of that pulley for one of the knee, negative for a crossed cord. */
        ratio: 'ratio',
        /** Efficiency from that pulley to the knee. */
        efficiency: { kind: 'ratio', above: 0, max: 1 },
      },
      optional: true,
    },
    /** The spring in parallel with the hip's drive. Left out where there is none. */
    hipSpring: { fields: SPRING_LAW, optional: true },
    /** The spring in parallel with the knee's drive. */
    kneeSpring: { fields: SPRING_LAW, optional: true },
    /** Whether a spring may break, as in a landing: drives, rod and knee pin bear the larger of with it and without it. */
    mayBreak: { flag: true },
  },
  requires: {
    kneePulleys: { accepts: 'must have a ratio other than zero', holds: ({ kneePulleys }) => kneePulleys?.ratio !== 0 },
  },
  output: {
    /** Largest force of the ground on the foot, across the ground. */
    vertical: 'force',
    /** Largest force of the ground on the foot in the plane of the leg: across the ground, with that along the walk. */
    ground: 'force',
    /** The largest force along the ground with it. */
    forward: 'force',
    /** Largest torque about the sideways-hip axis. */
    sidewaysTorque: 'torque',
    /** Farthest distance of the foot from the hip axis, in the plane of the leg. */
    farthest: 'length',
    /** Whether the leg reaches every point of the path. */
    reached: { oneOf: ['yes', 'no'] },
    /** Hip torque of largest magnitude, with its sign: ground, weight and inertia of the links. */
    hipTorque: 'torque',
    /** The same with the inertia of the rotor: motor torque as the joint feels it. */
    hipShaftTorque: 'torque',
    /** Root mean square of it over the stride. */
    hipShaftRms: 'torque',
    /** Highest speed of the hip. */
    hipSpeed: 'angularVelocity',
    /** Highest speed while the foot bears load. */
    hipLoadedSpeed: 'angularVelocity',
    /** Lowest angle of the hip; infinite where the leg reaches no point. */
    hipLowest: { kind: 'angle', infinite: true },
    /** Highest angle of the hip. */
    hipHighest: { kind: 'angle', infinite: true },
    /** Knee torque of largest magnitude. */
    kneeTorque: 'torque',
    /** The same with the inertia of the rotor. */
    kneeShaftTorque: 'torque',
    /** Root mean square of it over the stride. */
    kneeShaftRms: 'torque',
    /** Highest speed of the knee. */
    kneeSpeed: 'angularVelocity',
    /** Highest speed while the foot bears load. */
    kneeLoadedSpeed: 'angularVelocity',
    /** Lowest angle of the knee; infinite where the leg reaches no point. */
    kneeLowest: { kind: 'angle', infinite: true },
    /** Highest angle of the knee. */
    kneeHighest: { kind: 'angle', infinite: true },
    /** Torque that the hip's drive holds at its output: that of the joint less what a spring bears, and of a knee that is driven through the hip its part. */
    hipDriveTorque: 'torque',
    /** The same with the inertia of the rotor. */
    hipDriveShaftTorque: 'torque',
    /** Root mean square of it over the stride. */
    hipDriveShaftRms: 'torque',
    /** Torque that the knee's drive holds at its drum, wheel or output. */
    kneeDriveTorque: 'torque',
    /** The same with the inertia of the rotor. */
    kneeDriveShaftTorque: 'torque',
    /** Root mean square of it over the stride. */
    kneeDriveShaftRms: 'torque',
    /** Highest speed of that drum, wheel or output. */
    kneeDriveSpeed: 'angularVelocity',
    /** Highest speed while the foot bears load. */
    kneeDriveLoadedSpeed: 'angularVelocity',
    /** Lowest angle of it; infinite where the leg reaches no point. */
    kneeDriveLowest: { kind: 'angle', infinite: true },
    /** Highest angle of it. */
    kneeDriveHighest: { kind: 'angle', infinite: true },
    /** Torque at the knee that belt, cord or rod from the hip axis holds beside a spring; without them that of the joint. */
    kneeHeldTorque: 'torque',
    /** Largest pull in the rod; 0 without a rod. */
    rodPull: 'force',
    /** Largest push in the rod, without its sign. */
    rodPush: 'force',
    /** Largest force of the upper link on the lower link at the knee pin, from ground and rod; 0 without a rod. */
    kneePin: 'force',
    /** Largest force on the foot across the plane of the leg. */
    lateralForce: 'force',
    /** Largest bending moment of the upper link out of the plane. */
    upperSidewaysMoment: 'torque',
    /** Largest torque that twists the upper link. */
    upperTwist: 'torque',
    /** Largest moment that tilts the knee on its pin and bends the lower link out of the plane. */
    kneeCouple: 'torque',
    /** Largest moment that tilts the hip. */
    hipCouple: 'torque',
    /** Whether the crank moves the knee at every point, away from dead points. */
    kneeDriven: { oneOf: ['yes', 'no'] },
    /** Phase of the stance with the largest joint torque. */
    hardestPhase: 'ratio',
    /** Hip angle in that phase. */
    hardestHip: 'angle',
    /** Knee angle in that phase. */
    hardestKnee: 'angle',
  },
  assumes: [
    'links are rigid and slender, motors and plates on them points; point foot',
    'the body moves at constant speed',
    'force along the ground in proportion to the force across it, at its worst end in every moment',
    'twelve moments of stance and the ends of its twelfths, its largest torque to three thousandths; twelve of swing, and those in which a torque, a speed or an angle is largest',
    'in each twelfth of a walk’s stance its largest force',
    'beside springs the drives hold the leg with its foot lifted as well, in every pose',
  ],
  source: [{ level: 'published', where: 'outward accelerations, inward forces (Newton-Euler; Craig, Introduction to Robotics, ch. 6)' }],
  si: hardestLoadsOf,
})
