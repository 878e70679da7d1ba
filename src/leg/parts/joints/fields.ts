import { field } from '../../leaves.js'

export const from = field('joint.from', ['joint'], 'angle', (x, { joint }) => x.joints[joint].from)
export const to = field('joint.to', ['joint'], 'angle', (x, { joint }) => x.joints[joint].to)
export const sidewaysFrom = field('joints.sidewaysHip.from', ['leg'], 'angle', (x) => x.joints.sidewaysHip.from)
export const sidewaysTo = field('joints.sidewaysHip.to', ['leg'], 'angle', (x) => x.joints.sidewaysHip.to)
export const holdingTorque = field('joints.sidewaysHip.holdingTorque', ['leg'], 'torque', (x) => x.joints.sidewaysHip.holdingTorque)
