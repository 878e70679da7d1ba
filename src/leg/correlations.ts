import { type Correlation, scenarios } from '../study/index.js'
import { legFormula } from './as-formula.js'
import type { Leg } from './document/describe.js'
import { drivenJoints, legNumbers } from './numbers.js'

/** Points of one curve of a material: where one lies high the other does. */
const CURVES = [['strengthKept1000Hours', 'strengthKept1Year']] as const

/**
 * Uncertain values of a leg that are one draw, for `correlations` of the tools that take `legFormula`: the friction of one cord at both joints, the strength left in ends of one
 * cord that are made alike, and two points of one material's curve. Materials of one spool and the film of one room are single inputs already.
 *
 * Throws an `InputError` for a leg in which nothing is uncertain.
 */
export function legCorrelations(leg: Leg): Correlation<string>[] {
  const { paths } = scenarios(legFormula(leg), {})
  const known = new Set(paths)
  const tied = (one: string, other: string): Correlation<string>[] =>
    known.has(one) && known.has(other) ? [{ between: [one, other], coefficient: 1 }] : []
  return [
    ...pairs(cordJoints(leg)).flatMap(([one, other]) => [
      ...(one.cord === other.cord ? tied(`joints.${one.joint}.drive.friction`, `joints.${other.joint}.drive.friction`) : []),
      ...(one.cord === other.cord && one.ends === other.ends
        ? tied(`joints.${one.joint}.drive.endRetention`, `joints.${other.joint}.drive.endRetention`)
        : []),
    ]),
    ...materialsIn(paths).flatMap((name) => CURVES.flatMap(([a, b]) => tied(`materials.${name}.${a}`, `materials.${name}.${b}`))),
  ]
}

function cordJoints(leg: Leg) {
  const x = legNumbers(leg)
  return drivenJoints(x).flatMap((joint) => {
    const drive = x.joints[joint]?.drive
    return drive?.kind === 'cord' ? [{ joint, cord: drive.cord, ends: drive.ends }] : []
  })
}

const pairs = <T>(all: readonly T[]): [T, T][] => all.flatMap((one, i) => all.slice(i + 1).map((other): [T, T] => [one, other]))

const materialsIn = (paths: readonly string[]) => [
  ...new Set(paths.flatMap((path) => (path.startsWith('materials.') ? [path.split('.')[1] as string] : []))),
]
