import { field, optional, word } from '../../../leaves.js'
import type { LegNumbers } from '../../../leg-numbers.js'
import { driveOf, type Joint } from '../../../numbers.js'

const box = (x: LegNumbers, joint: Joint) => driveOf(x, joint, 'gearbox')

export const ratio = field('gearbox.ratio', ['joint'], 'ratio', (x, { joint }) => box(x, joint).ratio)
export const turns = word('gearbox.turns', ['joint'], (x, { joint }) => box(x, joint).turns)
export const efficiency = field('gearbox.efficiency', ['joint'], 'ratio', (x, { joint }) => box(x, joint).efficiency)
export const backlash = field('gearbox.backlash', ['joint'], 'angle', (x, { joint }) => box(x, joint).backlash)
export const stiffness = optional('gearbox.stiffness', ['joint'], 'torsionalStiffness', (x, { joint }) => box(x, joint).stiffness)
export const ratedTorque = field('gearbox.ratedTorque', ['joint'], 'torque', (x, { joint }) => box(x, joint).ratedTorque)
export const peakTorque = field('gearbox.peakTorque', ['joint'], 'torque', (x, { joint }) => box(x, joint).peakTorque)
export const highestSpeed = field('gearbox.highestSpeed', ['joint'], 'angularVelocity', (x, { joint }) => box(x, joint).highestSpeed)
export const inertia = field('gearbox.inertia', ['joint'], 'momentOfInertia', (x, { joint }) => box(x, joint).inertia)
export const mass = field('gearbox.mass', ['joint'], 'mass', (x, { joint }) => box(x, joint).mass)
