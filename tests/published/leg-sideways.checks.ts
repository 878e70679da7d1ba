import { clevisSidePlay, pinCouple } from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import { lateralFootForce } from '../../src/kinematics/index.js'
import { combinedStress } from '../../src/materials/index.js'
import { boxCombinedStress, roundCombinedStress } from '../../src/structures/index.js'
import oracle from '../oracles/leg-sideways.json' with { type: 'json' }
import { type Check, published } from './harness.js'

const computed = (where: string): Source => ({ level: 'computed', where: `${where} (tests/oracles/leg-sideways.py)` })
/** Rounding of the sums. */
const EXACT = '1e-7 %'

export const checks: Check[] = [
  ...oracle.links.flatMap(({ given: { force, upperLink, lowerLink, kneeAngle }, gives }) =>
    published(lateralFootForce, {
      what: `knee at ${kneeAngle} rad`,
      given: { force: [force, 'N'], upperLink: [upperLink, 'm'], lowerLink: [lowerLink, 'm'], kneeAngle: [kneeAngle, 'rad'] },
      gives: {
        upperAtHip: [gives.upperAtHip, 'N m'],
        upperAtKnee: [gives.upperAtKnee, 'N m'],
        upperTwist: [gives.upperTwist, 'N m'],
        kneeCouple: [gives.kneeCouple, 'N m'],
        hipCouple: [gives.hipCouple, 'N m'],
      },
      within: '1e-12 N m',
      source: computed('cross products of a leg turned anyhow in space, split along and across its links'),
    }),
  ),
  ...oracle.boxes.flatMap(({ given, gives }) =>
    published(boxCombinedStress, {
      what: `box of ${1e3 * given.width} by ${1e3 * given.depth} mm`,
      given: {
        moment: [given.moment, 'N m'],
        sidewaysMoment: [given.sidewaysMoment, 'N m'],
        torque: [given.torque, 'N m'],
        axialForce: [given.axialForce, 'N'],
        shearForce: [given.shearForce, 'N'],
        sidewaysShearForce: [given.sidewaysShearForce, 'N'],
        width: [given.width, 'm'],
        depth: [given.depth, 'm'],
        wall: [given.wall, 'm'],
      },
      gives: {
        normalStress: [gives.normalStress, 'Pa'],
        shearStress: [gives.shearStress, 'Pa'],
        torsionStress: [gives.torsionStress, 'Pa'],
      },
      within: EXACT,
      source: computed('sums over Gauss points of the walls, shear flow round the middle line'),
    }),
  ),
  ...published(roundCombinedStress, {
    what: 'pipe of 40 and 36 mm, 1 kN m as 0.6 and 0.8 kN m in two planes',
    given: { moment: '0.6 kN m', sidewaysMoment: '0.8 kN m', torque: '0 N m', diameter: '40 mm', holeDiameter: '36 mm' },
    gives: { normalStress: '462.7 MPa' },
    within: '0.1 MPa',
    source: { level: 'computed', where: "M c/I with the 43.22e3 mm⁴ that Gere's solution 11.4-2 prints" },
  }),
  ...published(roundCombinedStress, {
    what: 'tube of 1.75 and 1.25 in under 6200 lbf in',
    given: { moment: '0 N m', sidewaysMoment: '0 N m', torque: '6200 lbf in', diameter: '1.75 in', holeDiameter: '1.25 in' },
    gives: { shearStress: '7965 psi' },
    source: {
      level: 'published',
      where: "Gere, Mechanics of Materials, 7th ed., section 3.3, instructor's solutions (7965 psi from a rounded 0.681 in⁴)",
    },
  }),
  ...published(
    combinedStress,
    {
      what: 'shear alone at its strength',
      given: { normalStress: '0 MPa', shearStress: '9 MPa', strength: '30 MPa', shearStrength: '9 MPa' },
      gives: '30.0000 MPa',
      source: { level: 'arithmetic', where: '(τ/S)² = 1 is failure, as σ/X = 1 is' },
    },
    {
      what: 'three fifths of the one and four fifths of the other strength',
      given: { normalStress: '18 MPa', shearStress: '7.2 MPa', strength: '30 MPa', shearStrength: '9 MPa' },
      gives: '30.0000 MPa',
      source: { level: 'computed', where: 'Tsai-Hill in plane stress, (σ/X)² + (τ/S)² = 0.36 + 0.64 = 1 on the failure surface' },
    },
  ),
  ...oracle.pins.flatMap(({ given, gives }) =>
    published(pinCouple, {
      what: `pin of ${1e3 * given.diameter} mm in an eye of ${1e3 * given.lugThickness} mm`,
      given: {
        couple: [given.couple, 'N m'],
        diameter: [given.diameter, 'm'],
        cheekThickness: [given.cheekThickness, 'm'],
        gap: [given.gap, 'm'],
        lugThickness: [given.lugThickness, 'm'],
      },
      gives: {
        cheekForce: [gives.cheekForce, 'N'],
        eyeEdgePressure: [gives.eyeEdgePressure, 'Pa'],
        moment: [gives.moment, 'N m'],
        bendingStress: [gives.bendingStress, 'Pa'],
      },
      // Pieces of a 400 000th of the span.
      within: '0.01 %',
      source: computed('the pin in pieces, its eye pressing in proportion to the place'),
    }),
  ),
  ...oracle.plays.flatMap(({ given, gives }) =>
    published(clevisSidePlay, {
      what: `gap of ${1e3 * given.gap} mm, clearance of ${1e3 * given.clearance} mm`,
      given: {
        gap: [given.gap, 'm'],
        clearance: [given.clearance, 'm'],
        lugThickness: [given.lugThickness, 'm'],
        faceDiameter: [given.faceDiameter, 'm'],
        distance: [given.distance, 'm'],
      },
      gives: { tilt: [gives.tilt, 'rad'], play: [gives.play, 'm'] },
      // Tilt as a small angle.
      within: '0.2 %',
      source: computed('where the corners of a turning eye touch, exactly'),
    }),
  ),
]
