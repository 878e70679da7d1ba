import type { Quantity } from '../../units/index.js'
import type { PartlyLeg } from '../document/partly.js'
import { centreLine } from '../document/rules-of-cords.js'
import { type AnyDrive, quantityOf } from './any-drive.js'
import { beltDriveOf } from './belt-drives.js'
import { type Relation, type Relations, ratio, si } from './relation.js'

/** Sizes and tensions of a drive against its cord or belt, and numbers of a sheet against each other. The ranges are common practice. */
export const driveRelations: Relations = (leg, add) => {
  for (const [path, drive] of drivesOf(leg)) {
    if (drive.cord !== undefined) for (const one of cordDriveOf(path, drive, leg)) add(one)
    if (drive.belt !== undefined) for (const one of beltDriveOf(path, drive, leg)) add(one)
    for (const one of boughtOf(path, drive)) add(one)
  }
  for (const one of rodOf(leg)) add(one)
}

const drivesOf = ({ joints }: PartlyLeg): (readonly [path: string, drive: AnyDrive])[] =>
  (
    [
      ['joints.sidewaysHip.drive', joints?.sidewaysHip?.drive],
      ['joints.hip.drive', joints?.hip?.drive],
      ['joints.knee.drive', joints?.knee?.drive],
      ['joints.knee.through', joints?.knee?.through],
    ] as const
  ).flatMap(([path, drive]) => (drive === undefined ? [] : [[path, drive as AnyDrive] as const]))

function cordDriveOf(path: string, drive: AnyDrive, { cords }: PartlyLeg): Relation[] {
  const name = drive.cord as string
  const cord = cords?.[name]
  const thick = [`cords.${name}.diameter`, cord?.diameter] as const
  const { anchor = {}, drum = {}, pinion = {} } = drive
  const [small, large] = [centreLine(pinion, cord?.diameter) ?? Number.NaN, centreLine(drum, cord?.diameter) ?? Number.NaN]
  const post = [`${path}.anchor.postDiameter`, anchor.postDiameter] as const
  const pitch = si(drum.groovePitch)
  const relations: Relation[] = [
    ratio(
      [`${path}.pretension`, quantityOf(drive, 'pretension')],
      [`cords.${name}.breakingStrength`, cord?.breakingStrength],
      'the pretension over the breaking strength of the cord',
      [0.008, 0.5],
      [0, 1],
    ),
    ratio(post, thick, 'the post over the diameter of the cord', [0.8, 12]),
    ratio([`${path}.anchor.postLength`, anchor.postLength], post, 'the length of the post over its diameter', [0.6, 12]),
    ratio([`${path}.anchor.edgeDistance`, anchor.edgeDistance], post, 'the edge distance over the diameter of the post', [0.55, 10]),
    ratio(
      [`${path}.pinion.length`, pinion.length],
      [`${path}.pinion.turns`, ((pinion.turns?.si ?? 0) + 1) * pitch],
      'the length of the pinion over that of its turns',
      [0.9, 8],
    ),
    ratio(
      [`${path}.drum.length`, drum.length],
      [`${path}.drum.groovePitch`, drum.groovePitch],
      'the length of the drum in grooves',
      [1, 40],
    ),
    ratio([`${path}.drum.groovePitch`, drum.groovePitch], thick, 'the groove pitch over the diameter of the cord', [1, 5]),
    ratio(
      [`${path}.drum.bore`, drum.bore],
      [`${path}.drum.grooveDiameter`, 2 * large],
      'the bore of the drum over its diameter',
      [0.03, 1],
    ),
  ]
  if (drive.kind === 'cord' && drive.centreDistance !== undefined)
    relations.push(
      ratio(
        [`${path}.centreDistance`, quantityOf(drive, 'centreDistance')],
        [`${path}.drum`, small + large],
        'the distance of the axes over the radii of both pulleys',
        [1, 8],
      ),
    )
  return relations
}

/** What a sheet gives of a gearbox, or of the bearings of an output. */
function boughtOf(path: string, drive: AnyDrive): Relation[] {
  const [peak, stiffness] = [quantityOf(drive, 'peakTorque'), quantityOf(drive, 'stiffness')]
  const [tilting, radial] = [quantityOf(drive, 'tiltingMoment'), quantityOf(drive, 'radialLoad')]
  return [
    ratio(
      [`${path}.peakTorque`, peak],
      [`${path}.ratedTorque`, quantityOf(drive, 'ratedTorque')],
      'the peak torque over the rated torque',
      [1, 8],
    ),
    {
      path: `${path}.stiffness`,
      value: stiffness,
      others: [`${path}.peakTorque`],
      what: 'the twist under the peak torque',
      is: si(peak) / si(stiffness),
      kind: 'angle',
      usual: [1e-4, 0.35],
    },
    {
      path: `${path}.tiltingMoment`,
      value: tilting,
      others: [`${path}.radialLoad`],
      what: 'the tilting moment over the radial load',
      is: si(tilting) / si(radial),
      kind: 'length',
      usual: [0.002, 0.25],
    },
    ratio(
      [`${path}.faceWidth`, quantityOf(drive, 'faceWidth')],
      [`${path}.module`, quantityOf(drive, 'module')],
      'the face width over the module',
      [2, 40],
    ),
  ]
}

function rodOf({ joints }: PartlyLeg): Relation[] {
  const through = joints?.knee?.through
  if (through?.kind !== 'rod') return []
  const { rod, diameter, mass, crank, rocker } = through as { readonly [name: string]: Quantity | undefined }
  const path = 'joints.knee.through'
  return [
    {
      path: `${path}.mass`,
      value: mass,
      others: [`${path}.diameter`, `${path}.rod`],
      what: 'the mass of the rod over its volume',
      is: si(mass) / ((Math.PI / 4) * si(diameter) ** 2 * si(rod)),
      kind: 'density',
      usual: [300, 12_000],
    },
    ratio([`${path}.diameter`, diameter], [`${path}.rod`, rod], 'the diameter of the rod over its length', [0.008, 0.25]),
    ratio([`${path}.rocker`, rocker], [`${path}.crank`, crank], 'the rocker over the crank', [0.2, 5]),
    ratio([`${path}.crank`, crank], [`${path}.rod`, rod], 'the crank over the rod', [0.03, 0.8]),
  ]
}
