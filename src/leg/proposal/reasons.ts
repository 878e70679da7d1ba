import { materialByName } from '../../materials/index.js'
import { Quantity, significant } from '../../units/index.js'
import { CHECKS } from '../parts/index.js'
import type { Entry } from './entry.js'
import { LEGS_MASS } from './judge.js'

const NAMED = 4

/** Why a leg falls short, in words: a polymer that is soft once for all that is printed of it, then the checks, worst first. */
export function reasonsOf({ judge, judged }: Entry): string[] {
  if (judged.short.length === 0) return [`such a leg contradicts itself: ${judged.governing}`]
  const soft = judged.short.filter(([key, margin]) => margin === 0 && isOfPolymer(key))
  const heavy = judged.short.filter(([key]) => key === LEGS_MASS).map(([, margin]) => heavyText(judge, margin))
  const others = judged.short.filter((entry) => !soft.includes(entry) && entry[0] !== LEGS_MASS)
  const words = others.slice(0, NAMED).map(([key, margin]) => `${titleOf(key)}, with ${shareText(margin)} of its required reserve`)
  const rest = others.length - words.length
  return [...(soft.length > 0 ? [softText(judge, soft.length)] : []), ...heavy, ...words, ...(rest > 0 ? [`${rest} more checks`] : [])]
}

/** A check by its key, in words: part, joint and how it fails. */
export function titleOf(key: string): string {
  const [id, joint] = key.split(' ')
  if (key === LEGS_MASS) return 'mass of the robot is exceeded by its legs'
  const check = CHECKS.find((check) => check.id === id)
  if (check === undefined) return key
  return `${check.part}${joint === undefined ? '' : ` (${joint})`} ${check.mode}`
}

const isOfPolymer = (key: string) => {
  const id = key.split(' ')[0]
  return CHECKS.some((check) => check.id === id && check.capacityIs.includes('strength'))
}

function softText({ wish, stock }: Entry['judge'], count: number): string {
  const polymers = [...new Set([stock.frame, stock.drum])].map((name) => {
    const glass = materialByName(name).glassTransitionTemperature
    return glass === undefined ? name : `${name}, whose glass transition is at ${new Quantity(glass.si, 'temperature')}`
  })
  return `${count} checks of what is printed of ${polymers.join(' and ')}: at the temperature that it takes on in air of ${wish.place.hot} it has no strength left`
}

function heavyText({ wish: { robot } }: Entry['judge'], margin: number): string {
  const legs = new Quantity((robot.legShare.si * robot.mass.si) / margin, 'mass')
  return `${robot.legs} legs of ${legs} in all weigh more than ${significant(100 * robot.legShare.si, 2)} % of the ${robot.mass} of the robot`
}

const shareText = (margin: number) => (margin < 1e-3 ? 'less than a thousandth' : `${significant(100 * margin, 2)} %`)
