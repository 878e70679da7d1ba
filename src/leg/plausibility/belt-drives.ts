import { toothBeltLength } from '../../capstan/index.js'
import type { PartlyLeg } from '../document/partly.js'
import { type AnyDrive, quantityOf } from './any-drive.js'
import { type Relation, ratio, si } from './relation.js'

/** A belt drive against its belt. */
export function beltDriveOf(path: string, drive: AnyDrive, { belts }: PartlyLeg): Relation[] {
  const name = drive.belt as string
  return [
    ratio(
      [`${path}.pretension`, quantityOf(drive, 'pretension')],
      [`belts.${name}.allowableTension`, belts?.[name]?.allowableTension],
      'the pretension over the allowable tension of the belt',
      [0.02, 1],
      [0, 4],
    ),
    ...teethOf(path, drive, belts?.[name]),
  ]
}

/** Teeth of a belt and of its pulleys, and how far its axes move. */
function teethOf(path: string, drive: AnyDrive, belt: Belt | undefined): Relation[] {
  const [small, large] = [drive.smallTeeth, drive.largeTeeth] as [number | undefined, number | undefined]
  const name = `belts.${drive.belt}`
  const [pitch, axes] = [si(belt?.pitch), quantityOf(drive, 'centreDistance')]
  const relations = [
    ratio(
      [`${path}.adjustment`, quantityOf(drive, 'adjustment')],
      [`${name}.pitch`, belt?.pitch],
      'the adjustment of the axes over the pitch of the belt',
      [0.08, 12],
    ),
  ]
  if (small === undefined || large === undefined) return relations
  const around = toothBeltLength.si({ smallTeeth: small, largeTeeth: large, pitch, centreDistance: si(axes) })
  const count = (field: 'teeth' | 'leastTeeth', is: number, others: readonly string[], what: string, usual: Relation['usual']) =>
    relations.push({ path: `${name}.${field}`, value: belt?.[field], others, what, is, kind: 'ratio', usual })
  count('teeth', (belt?.teeth ?? Number.NaN) / around.teeth, [`${path}.centreDistance`], 'the length of the belt over its way', [0.8, 1.25])
  count(
    'leastTeeth',
    small / (belt?.leastTeeth ?? Number.NaN),
    [`${path}.smallTeeth`],
    'the teeth of the small pulley over the fewest',
    [0.5, 8],
  )
  return relations
}
type Belt = NonNullable<NonNullable<PartlyLeg['belts']>[string]>
