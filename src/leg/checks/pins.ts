import { clevisPinBending, embeddedPin, goodmanReserve, pinBearing, pinEnduranceLimit, pinShear } from '../../fasteners/index.js'
import { type Check, LOADED, ONCE } from './check.js'
import { polymerRest } from './rests.js'

/** Shear yield over tensile strength of hardened steel by the von Mises rule. */
const SHEAR_SHARE = 0.577
/** A printed surface that turns on its pin bears half of what a resting one does. */
const MOVING_SHARE = 0.5

/** The steel pins of the driven joints. */
export const pinChecks: readonly Check[] = [
  {
    id: 'pin.shear',
    part: 'joint pin',
    mode: 'is sheared off',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: ONCE,
    after: ['motion', 'drive'],
    run: (of, { leg, joint }, { drive }) => ({
      demand: of(pinShear, { force: drive.pinForce, diameter: leg.pins[joint].diameter, planes: 2 }).peakStress,
      capacity: SHEAR_SHARE * leg.x.pins[joint].strength,
    }),
    demandIs: 'the peak shear stress in its two planes',
    capacityIs: 'its shear strength, 0.577 of its tensile strength',
    remedy: 'a thicker pin, or less force on the foot',
  },
  {
    id: 'pin.bending',
    part: 'joint pin',
    mode: 'bends in its clevis',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: ONCE,
    after: ['motion', 'drive'],
    run: (of, scene, { drive }) => ({
      demand: bending(of, scene, drive.pinForce),
      capacity: 0.85 * scene.leg.x.pins[scene.joint].strength,
    }),
    demandIs: 'the bending stress at mid span',
    capacityIs: 'its yield strength, taken as 0.85 of its tensile strength',
    remedy: 'a thicker pin, a narrower lug, or smaller side gaps',
  },
  {
    id: 'pin.fatigue',
    part: 'joint pin',
    mode: 'cracks by repeated bending',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: ['season'],
    after: ['motion', 'drive'],
    run: (of, scene, { drive }) => {
      const strength = scene.leg.x.pins[scene.joint].strength
      const { diameter } = scene.leg.pins[scene.joint]
      const { enduranceLimit } = of(pinEnduranceLimit, {
        tensileStrength: strength,
        diameter,
        bending: 'fixedDirection',
        surface: 'ground',
        reliability: '99 %',
      })
      const largestStress = bending(of, scene, drive.pinForce)
      const smallestStress = bending(of, scene, drive.shaftForce)
      const { reserve } = of(goodmanReserve, {
        largestStress: Math.max(largestStress, smallestStress),
        smallestStress: Math.min(largestStress, smallestStress),
        enduranceLimit,
        tensileStrength: strength,
      })
      return { demand: largestStress, capacity: largestStress * Math.min(reserve, 1e6) }
    },
    demandIs: 'the bending stress of every stride',
    capacityIs: 'the bending stress that it would bear without end at the same ratio of least to largest (Goodman, 99 % of pins)',
    remedy: 'a thicker pin or a narrower lug',
  },
  {
    id: 'pin.bearingTongue',
    part: 'link eye on the pin',
    mode: 'wears oval under the pin',
    stake: 'fails to work',
    kind: 'stress',
    scope: 'joint',
    cases: LOADED,
    after: ['motion', 'drive'],
    run: (of, { leg, joint, state }, { drive }) => {
      const matter = joint === 'hip' ? leg.links.upper : leg.links.lower
      const { projectedPressure } = of(pinBearing, {
        force: drive.pinForce,
        diameter: leg.pins[joint].diameter,
        thickness: leg.x.pins[joint].lugThickness,
      })
      return {
        demand: projectedPressure,
        capacity: MOVING_SHARE * matter.strength.alongLayers.at(of, state.air, state.duration),
      }
    },
    demandIs: 'the pressure of the pin on the projected area of the eye',
    capacityIs: 'half the long-term strength of the polymer, since the eye turns on the pin (assumption)',
    remedy: 'a wider eye, a bush, or a thicker pin',
    rests: ({ leg, joint }) => polymerRest(joint === 'hip' ? leg.links.upper : leg.links.lower, 'printed eye'),
  },
  {
    id: 'boss.bearing',
    part: 'boss on the pin',
    mode: 'gives way under the pin',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: LOADED,
    after: ['motion', 'drive'],
    run: (of, { leg, joint, state }, { drive }) => {
      const { projectedPressure } = of(pinBearing, {
        force: drive.pinForce / 2,
        diameter: leg.pins[joint].diameter,
        thickness: leg.x.bosses[joint].engagement,
      })
      return {
        demand: projectedPressure,
        capacity: leg.bosses[joint].strength.alongLayers.at(of, state.air, state.duration),
      }
    },
    demandIs: 'the pressure of half the pin force on the projected area of one boss',
    capacityIs: 'the long-term strength of the polymer at this temperature',
    remedy: 'a longer engagement or a thicker pin',
    rests: ({ leg, joint }) => polymerRest(leg.bosses[joint], 'boss'),
  },
  {
    id: 'boss.mouth',
    part: 'mouth of the boss',
    mode: 'is crushed by the pin that tilts in it',
    stake: 'breaks',
    kind: 'stress',
    scope: 'joint',
    cases: LOADED,
    after: ['motion', 'drive'],
    run: (of, { leg, joint, state }, { drive }) => {
      const { lugThickness, gap } = leg.x.pins[joint]
      const { mouthPressure } = of(embeddedPin, {
        force: drive.pinForce / 2,
        arm: gap + lugThickness / 4,
        depth: leg.x.bosses[joint].engagement,
        diameter: leg.pins[joint].diameter,
      })
      // Crushing at an edge is held in by the wall around it: twice the strength of a free bar.
      return {
        demand: mouthPressure,
        capacity: 2 * leg.bosses[joint].strength.alongLayers.at(of, state.air, state.duration),
      }
    },
    demandIs:
      'the pressure at the mouth, each half of the pin taken as a cantilever from its boss (the other boss left out, the harder case)',
    capacityIs: 'twice the long-term strength, since the wall around holds the crushed edge in (assumption)',
    remedy: 'a longer engagement, smaller side gaps, or a narrower lug',
    rests: ({ leg, joint }) => polymerRest(leg.bosses[joint], 'boss'),
  },
]

function bending(of: Parameters<Check['run']>[0], { leg, joint }: Parameters<Check['run']>[1], force: number): number {
  const { cheekThickness, lugThickness, gap } = leg.x.pins[joint]
  return of(clevisPinBending, {
    force,
    diameter: leg.pins[joint].diameter,
    cheekThickness,
    gap,
    lugThickness,
  }).bendingStress
}
