import { LegDynamicsKernel } from '../../../kinematics/index.js'

/** Links of a leg as slender bodies, SI. */
export interface SlenderLinks {
  readonly hipOffset: number
  readonly upperLink: number
  readonly lowerLink: number
  readonly upperMass: number
  readonly lowerMass: number
  /** Distance of the centre of mass of each link from its upper joint, and inertia about it, across the leg. */
  readonly upperCentre: number
  readonly lowerCentre: number
  readonly upperInertia: number
  readonly lowerInertia: number
}

const NO_LINK = new Float64Array(10)

/** A slender link from its joint down: mass, centre of mass, inertia about it, as inverse dynamics takes them. */
const slender = (mass: number, centre: number, across: number): readonly number[] => [mass, 0, 0, -centre, across, across, 0, 0, 0, 0]

/** Inverse dynamics of the links as slender bodies; the hip link does not move where hip and knee move. */
export function linkDynamics(x: SlenderLinks, gravity: number): LegDynamicsKernel {
  const links = [NO_LINK, slender(x.upperMass, x.upperCentre, x.upperInertia), slender(x.lowerMass, x.lowerCentre, x.lowerInertia)] as const
  return new LegDynamicsKernel(x.hipOffset, x.upperLink, x.lowerLink, links, [0, 0, -gravity])
}
