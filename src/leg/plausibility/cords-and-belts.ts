import { cordFibre, type FibreName } from '../../capstan/index.js'
import type { Quantity } from '../../units/index.js'
import { entriesOf, type PartlyLeg } from '../document/partly.js'
import { type Relation, type Relations, ratio, si } from './relation.js'

type Belt = NonNullable<NonNullable<PartlyLeg['belts']>[string]>
type Cord = NonNullable<NonNullable<PartlyLeg['cords']>[string]>

/** Numbers of a cord against its fibre, and of a belt against its teeth. The ranges of belts are common practice. */
export const cordAndBeltRelations: Relations = ({ cords, belts }, add) => {
  for (const [name, cord] of entriesOf(cords)) for (const one of cordOf(`cords.${name}`, cord)) add(one)
  for (const [name, belt] of entriesOf(belts)) for (const one of beltOf(`belts.${name}`, belt)) add(one)
}

function cordOf(path: string, { fibre, diameter, breakingStrength, axialRigidity }: Cord): Relation[] {
  const filament = fibre === undefined ? undefined : cordFibre(fibre as FibreName).strength
  const strength = filament?.si ?? Number.NaN
  return [
    {
      path: `${path}.breakingStrength`,
      value: breakingStrength,
      others: [`${path}.diameter`, `${path}.fibre`],
      what: `the breaking strength over the cross-section of a cord of ${fibre}`,
      is: si(breakingStrength) / ((Math.PI / 4) * si(diameter) ** 2),
      kind: 'stress',
      usual: [0.1 * strength, 0.9 * strength],
      // Not even the bare filament bears more.
      possible: [0.002 * strength, filament?.high ?? Number.NaN],
    },
    {
      path: `${path}.axialRigidity`,
      value: axialRigidity,
      others: [`${path}.breakingStrength`],
      what: 'the strain at which the cord would break',
      is: si(breakingStrength) / si(axialRigidity),
      kind: 'ratio',
      usual: [0.02, 0.35],
      // Rubber stretches to some times its length.
      possible: [0.003, 10],
    },
  ]
}

function beltOf(path: string, belt: Belt): Relation[] {
  const { pitch, width, allowableTension, breakingStrength, toothForce, axialRigidity, massPerLength } = belt
  const tooth = si(pitch) * si(width)
  const size = [`${path}.pitch`, `${path}.width`]
  const over = (field: keyof Belt & string, x: Quantity | undefined, what: string, kind: Relation['kind'], usual: Relation['usual']) =>
    ({ path: `${path}.${field}`, value: x, others: size, what, is: si(x) / tooth, kind, usual }) as const
  return [
    over('allowableTension', allowableTension, 'the allowable tension over pitch and width of the belt', 'stress', [2e6, 6e7]),
    over('toothForce', toothForce, 'the force of a tooth over pitch and width of the belt', 'stress', [2e5, 8e6]),
    over('massPerLength', massPerLength, 'the mass per length over pitch and width of the belt', 'density', [150, 4000]),
    ratio(
      [`${path}.breakingStrength`, breakingStrength],
      [`${path}.allowableTension`, allowableTension],
      'the breaking strength over the allowable tension',
      [1.2, 20],
      [1, 200],
    ),
    {
      path: `${path}.axialRigidity`,
      value: axialRigidity,
      others: [`${path}.breakingStrength`],
      what: 'the strain at which the belt would break',
      is: si(breakingStrength) / si(axialRigidity),
      kind: 'ratio',
      usual: [0.004, 0.12],
      possible: [0.0005, 3],
    },
    ratio([`${path}.width`, width], [`${path}.pitch`, pitch], 'the width of the belt over its pitch', [0.7, 25]),
    ratio([`${path}.toothRootWidth`, belt.toothRootWidth], [`${path}.pitch`, pitch], 'the root of a tooth over the pitch', [0.25, 0.9]),
    ratio([`${path}.toothHeight`, belt.toothHeight], [`${path}.pitch`, pitch], 'the height of a tooth over the pitch', [0.1, 0.7], [0, 1]),
  ]
}
