// Proportions of one leg, worked by hand from the numbers of its document: what its values are checked against for slips of units and digits.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { describeLeg, unusualValues, withFields } from '../../src/leg/index.js'
import { relationsAcross } from '../../src/leg/plausibility/across.js'
import { cordAndBeltRelations } from '../../src/leg/plausibility/cords-and-belts.js'
import { driveRelations } from '../../src/leg/plausibility/drives.js'
import { loadRelations } from '../../src/leg/plausibility/loads.js'
import { motorRelations } from '../../src/leg/plausibility/motors.js'
import { fastenerRelations } from '../../src/leg/plausibility/parts.js'
import type { Relation } from '../../src/leg/plausibility/relation.js'
import { robotRelations } from '../../src/leg/plausibility/robot.js'
import { structureRelations } from '../../src/leg/plausibility/structure.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const [heath, orchard] = [read('heath-leg-revised'), read('orchard-leg-revised')]
const SUBJECTS = [
  ...[motorRelations, cordAndBeltRelations, driveRelations, structureRelations, fastenerRelations],
  ...[robotRelations, loadRelations, relationsAcross],
]
const relationsOf = (leg: typeof heath) => {
  const found: Relation[] = []
  for (const subject of SUBJECTS) subject(leg as never, (relation) => found.push(relation))
  return found
}
const all = relationsOf(heath)

// SI. ISO 898-1: proof stress of 580 MPa for 8.8 up to M16. ASA of 1070 kg/m^3. A cord lies with its middle half of its diameter out of the bottom of its groove.
// A motor turns a peak ampere in its phases into 3/2 of its phase constant, which is that between two leads over the root of 3.
const BY_HAND: readonly (readonly [path: string, what: string, is: number])[] = [
  ['motors.outrunner.mass', 'the mass of the motor over the volume of its can', 4110],
  ['motors.outrunner.rotorInertia', 'the inertia of the rotor over that of the whole motor put at the radius of its can', 0.236],
  ['motors.outrunner.canLength', 'the length of the can over its diameter', 0.5079],
  ['motors.outrunner.mountOuterDiameter', 'the mounting ring over the can', 0.6349],
  ['motors.outrunner.mountInnerDiameter', 'the inner over the outer diameter of the mounting ring', 0.35],
  ['motors.outrunner.speedConstant', 'the motor constant that follows for a can of this size', 0.317],
  ['motors.outrunner.terminalResistance', 'the mechanical time constant of the motor', 0.0009554],
  ['motors.outrunner.phaseInductance', 'the electrical time constant of the motor', 0.001067],
  ['motors.outrunner.noLoadCurrent', 'the no-load current over the current of the motor held still at the same voltage', 0.0045],
  ['motors.outrunner.noLoadCurrent', 'the no-load current over the current limit of the hip', 0.01091],
  ['controllers.bridge.currentLimit', 'the current limit of the knee over the current of its motor held still at the full voltage', 0.1875],
  ['controllers.bridge.toAir', 'the rise of the controller in temperature at its current limit, with 0.1 V lost in its bridge,', 49.5],
  ['cords.braid.breakingStrength', 'the breaking strength over the cross-section of a cord of LCP', 1_442_000_000],
  ['cords.braid.axialRigidity', 'the strain at which the cord would break', 0.1208],
  ['joints.hip.drive.pretension', 'the pretension over the breaking strength of the cord', 0.07931],
  ['joints.hip.drive.anchor.postDiameter', 'the post over the diameter of the cord', 2.5],
  ['joints.hip.drive.anchor.postLength', 'the length of the post over its diameter', 2.5],
  ['joints.hip.drive.anchor.edgeDistance', 'the edge distance over the diameter of the post', 2.25],
  ['joints.hip.drive.pinion.length', 'the length of the pinion over that of its turns', 1.75],
  ['joints.knee.drive.pinion.length', 'the length of the pinion over that of its turns', 2],
  ['joints.knee.drive.drum.length', 'the length of the drum in grooves', 9],
  ['joints.hip.drive.drum.groovePitch', 'the groove pitch over the diameter of the cord', 1.25],
  ['joints.hip.drive.drum.bore', 'the bore of the drum over its diameter', 0.2165],
  ['joints.hip.drive.centreDistance', 'the distance of the axes over the radii of both pulleys', 1.259],
  ['joints.knee.through.mass', 'the mass of the rod over its volume', 3617],
  ['joints.knee.through.diameter', 'the diameter of the rod over its length', 0.04848],
  ['joints.knee.through.rocker', 'the rocker over the crank', 1],
  ['joints.knee.through.crank', 'the crank over the rod', 0.2061],
  ['links.hipOffset', 'the offset of the hip over the leg', 0.1681],
  ['links.upper.mass', 'the mass of the link over that of its section along its length', 2.993],
  ['links.lower.mass', 'the mass of the link over that of its section along its length', 5.192],
  ['links.upper.section.wall', 'the wall over the shorter side of its section', 0.09231],
  ['links.upper.section.box', 'the depth of the section over the length of the link', 0.2061],
  ['links.lower.section.box.width', 'the width of the section over its depth', 0.8333],
  ['plates.hipPlate.thickness', 'the thickness over the shorter side', 0.08333],
  ['plates.kneePlate.sink.thickness', 'the thickness over the shorter side', 0.04762],
  ['plates.hipPlate.size.height', 'the height over the diameter of its motor', 1.524],
  ['plates.kneePlate.sink.size.width', 'the width over the diameter of its motor', 1.333],
  ['foot.thickness', 'the thickness of a toe over its length', 0.3059],
  ['foot.width', 'the width of a toe over its thickness', 1.538],
  ['foot.length', 'the length of a toe over the lower link', 0.1889],
  ['pins.rodPin.lugThickness', 'the lug over the diameter of the pin', 2.5],
  ['pins.jointPin.cheekThickness', 'the cheek over the diameter of the pin', 3.6],
  ['bosses.kneeBoss.outerDiameter', 'the boss over the diameter of the pin', 3.6],
  ['bosses.hipBoss.edgeDistance', 'the edge distance over the diameter of the pin', 2.2],
  ['bosses.hipBoss.holeScatter', 'the scatter of the hole over the diameter of the pin', 0.002],
  ['bosses.hipBoss.holeScatter', 'the scatter of the hole over the interference of its pin', 0.3333],
  ['bearings.hipBearings.own.staticRating', 'the static load rating over diameter and width of the bearing', 9_688_000],
  ['bearings.hipBearings.own.outerDiameter', 'the outer diameter over the bore', 2.667],
  ['bearings.hipBearings.own.width', 'the width over the outer diameter', 0.3125],
  ['bearings.hipBearings.spacing', 'the distance of the bearings over their outer diameter', 1.312],
  ['bearings.hipBearings.overhang', 'the overhang over the width of a bearing', 2.2],
  ['bearings.hipBearings.seatInterference', 'the interference, or clearance, over the outer diameter', 0.001563],
  ['bolts.plateBolts.stack[0].thickness', 'the thickness of the stack over the diameter of its bolts', 3.75],
  ['bolts.plateBolts.tighteningTorque', 'the tightening torque over cubed diameter and proof stress of the bolt', 0.03233],
  ['bolts.plateBolts.pattern.distances[2]', 'the distance from the edge over the diameter of the bolt', 12],
  ['bolts.plateBolts.pattern.distances[3]', 'the farthest bolt from the edge over the longer side of the plate', 0.5],
  ['bolts.plateBolts.pattern.leverArm', 'the lever arm over the offset of the hip', 1],
  ['bolts.motorBolts.pattern.diameter', 'the bolt circle over the diameter of the motor', 0.4762],
  ['shafts.hipShaft.innerTighteningTorque', 'the tightening torque over cubed diameter and proof stress of the bolt', 0.04041],
  ['shafts.hipShaft.innerEngagement', 'the engaged length over the diameter of the thread', 2],
  ['robot.mass', 'the mass of the robot over the room between its hips and the ground', 283],
  ['robot.mass', 'the mass of the links and motors of all legs over that of the robot, which includes them,', 0.64],
  ['robot.hipTrack', 'the track of the hips over the standing height', 0.6129],
  ['joints.sidewaysHip.drive.torque', 'the torque over the weight of the robot times the standing height', 0.6579],
  ['supply.internalResistance', 'the current of the supply in a short circuit over its current limit', 5.238],
  ['joints.sidewaysHip.range', 'the travel of the joint', 0.9599],
  ['joints.hip.range', 'the travel of the joint', 2.094],
  ['loadCases.ages.season.daysWalked', 'the share of days with a walk', 1],
  ['loadCases.events.hop.height', 'the height of the fall over the standing height', 0.06452],
  ['loadCases.events.drop.travel', 'the way of stopping over the standing height', 0.2581],
  ['loadCases.airs.hot.temperature', 'the difference of hot and normal air', 18],
  ['loadCases.airs.cold.temperature', 'the difference of normal and cold air', 25],
  ['gaits.walk.speed', 'the strides per second', 1.875],
  ['gaits.trot.stepLength', 'the step over the length of the leg', 0.3768],
  ['gaits.walk.clearance', 'the clearance over the length of the leg', 0.1159],
  ['usage.stridesPerDay', 'the time of the strides of a day at the fastest gait over a day', 0.03078],
  ['controllers.bridge.currentLimit', 'the current limit of the hip over the current that holds the standing robot', 18.55],
  ['joints.knee.drive.pretension', 'the pretension over the pull of the standing robot on the drive of the knee', 8.252],
  ['supply.currentLimit', 'the current limit of the supply over that of a controller', 1.091],
  ['loadCases.events.slopeUp.angle', 'the slope up over the slope down', 1],
  ['loadCases.events.drop.height', 'the drop over the hop', 2],
  ['gaits.trot.speed', 'the speed of the gait whose feet are least on the ground over that of the one whose feet are most', 2.667],
  ['loadCases.ages.aged.time', 'the age of the leg over its season', 5.218],
]

describe('the proportions of a leg', () => {
  test.each(BY_HAND)('%s: %s', (path, what, is) => {
    const found = all.filter((one) => one.path === path && one.what === what)
    expect(found).toHaveLength(1)
    // Four digits.
    expect(Math.abs(found[0]!.is / is - 1)).toBeLessThan(6e-4)
  })

  test('of a tube go by its wall and diameter', () => {
    const tube = relationsOf(withFields(heath, { 'links.lower.section': { tube: '22 mm', wall: '2 mm' } as never }))
    const of = (path: string) => tube.find((one) => one.path === path)!.is
    // A ring of 2 mm about a mean diameter of 20 mm: 125.66 mm^2 over 180 mm.
    expect(of('links.lower.mass')).toBeCloseTo(0.16 / (1070 * 125.664e-6 * 0.18), 3)
    expect(of('links.lower.section.wall')).toBeCloseTo(2 / 22, 9)
    expect(of('links.lower.section.tube')).toBeCloseTo(22 / 180, 9)
  })

  test('of a document that has hardly anything are no numbers, so that what is missing is named and nothing else', () => {
    const belt = { kind: 'belt', belt: 'wide', smallTeeth: 20 }
    for (const part of [
      {},
      { joints: {} },
      { joints: { hip: { drive: belt }, knee: { drive: belt } } },
      { robot: {} },
      { gaits: { walk: {} } },
    ])
      for (const { what, is } of relationsOf(part as never)) expect(is, what).toBeNaN()
    expect(() => describeLeg({ schemaVersion: 4 } as never)).toThrow(/joints.* is missing/)
  })

  test('are named once each: more days of walking than days are one remark', () => {
    // The day that has begun counts: 70 days of walking in 69.5 days can be.
    const found = unusualValues(withFields(heath, { 'loadCases.ages.season.time': '69.5 day' }))
    expect(found.map(({ path }) => path)).toEqual(['loadCases.ages.season.daysWalked'])
    const names = all.map(({ path, what }) => `${path}: ${what}`)
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([])
  })

  test('lie inside what is usual, and that inside what is possible, and name fields that the document has', () => {
    for (const leg of [heath, orchard])
      for (const { what, is, usual, possible, others, path } of relationsOf(leg)) {
        if (Number.isNaN(is)) continue
        expect(is, what).toBeGreaterThanOrEqual(usual[0])
        expect(is, what).toBeLessThanOrEqual(usual[1])
        expect(usual[0], what).toBeLessThan(usual[1])
        expect(others, what).not.toContain(path)
        if (possible === undefined) continue
        expect(possible[0], what).toBeLessThanOrEqual(usual[0])
        expect(possible[1], what).toBeGreaterThanOrEqual(usual[1])
      }
  })
})
