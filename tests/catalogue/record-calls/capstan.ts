import * as capstan from '../../../src/capstan/index.js'
import { one, type RecordCall } from './call.js'

const driveOf = {
  arrangement: 'crossed',
  pinionRadius: '7.5 mm',
  drumRadius: '46.5 mm',
  centreDistance: '62 mm',
  pinionTurns: 3,
  drumWrap: '200 deg',
  travel: '110 deg',
  axialRigidity: '35 kN',
  pretension: '140 N',
  friction: { low: 0.1, high: 0.18 },
  allowableTension: '278 N',
  groovePitch: '2 mm',
} as const
const drive = capstan.cordDrive(driveOf)
export const calls: readonly RecordCall[] = [
  one('cordDrive', driveOf, (x) => capstan.cordDrive(x)),
  one('cordDrive.path', { torques: ['2 N m', '0 N m'] }, (x) => drive.path(x)),
  one('cordDrive.path of angles', { angles: ['0.1 deg', '0 deg'] }, (x) => drive.path(x)),
  one(
    'cordDrive.losses',
    { torque: '6 N m', returnTorque: '-1 N m', stroke: '40 deg', bearingFriction: 0.002, bearingRadius: '4 mm', bendingLoss: 0.01 },
    (x) => drive.losses(x),
  ),
  one(
    'cordDrive.travel',
    {
      cycles: 2,
      steps: [
        { jointAngle: '0 deg', torque: '2 N m' },
        { jointAngle: '20 deg', torque: '2 N m' },
      ],
    },
    (x) => drive.travel(x),
  ),
  one(
    'compareReductions',
    {
      torque: '6 N m',
      wheelRadius: '46.5 mm',
      ratio: 6.2,
      centreDistance: '62 mm',
      width: '12 mm',
      cord: {
        axialRigidity: '35 kN',
        pretension: '140 N',
        friction: { low: 0.1, high: 0.18 },
        pinionTurns: 3,
        drumWrap: '200 deg',
        allowableTension: '274 N',
      },
      belt: { pitch: '3 mm', rootWidth: '1.7 mm', allowableShear: '2 MPa', axialRigidity: '60 kN', pretension: '80 N' },
      gear: { module: '1 mm', allowableStress: '40 MPa' },
    },
    (x) => capstan.compareReductions(x),
  ),
  one(
    'proposeDrive',
    {
      ratio: 6,
      torque: '6 N m',
      travel: '120 deg',
      drumSpace: '110 mm',
      axialSpace: '40 mm',
      coldest: '-20 K',
      warmest: '20 K',
      frameExpansion: '90 ppm/K',
      cords: {
        braid: {
          diameter: '1.6 mm',
          breakingStrength: '2.3 kN',
          axialRigidity: '24 kN',
          friction: { low: 0.08, high: 0.2 },
          pretensionLeft: 0.8,
          expansion: '-5 ppm/K',
        },
      },
    },
    (x) => capstan.proposeDrive(x),
  ),
  one('overFriction', { load: '100 N', wrapAngle: '1 turn', friction: { low: 0.1, high: 0.2 } }, (x) =>
    capstan.overFriction(capstan.slackTension, x),
  ),
  one('frictionBand', { low: 0.1, high: 0.2 }, (x) =>
    capstan.frictionBand(x, (friction) => capstan.slackTension({ load: '100 N', wrapAngle: '1 turn', friction })),
  ),
]
