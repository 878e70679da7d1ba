import { AGE_IDS, AIR_IDS, EVENT_IDS, EVENTS, STANCE_IDS } from '../cases/events.js'
import type { LegNumbers } from '../leg-numbers.js'
import { drivenJoints, type Joint } from '../numbers.js'
import type { Structure } from '../run/index.js'
import { beltOrCordOf, SECOND_STAGE } from '../second-stage.js'
import { PIVOTS } from './ball-bearings/pivots.js'

type Section = 'motors' | 'controllers' | 'plates' | 'cords'

/** The instances of a leg: joints and links by their fixed names, and what the document names. */
export function structureOf(x: LegNumbers): Structure {
  // A driven sideways hip stands last, so that hip and knee keep their places.
  const joints = drivenJoints(x) as readonly Joint[]
  const second = beltOrCordOf(x)
  // The second stage is no joint of the leg: what sums over joints does not meet it, and it has neither motor nor plate.
  const stages = second === undefined ? [] : [SECOND_STAGE]
  const withStage = (of: readonly number[], stage = -1) => [...of, ...stages.map(() => stage)]
  const named = (section: Section, of: (joint: Joint) => string | undefined) => {
    const names = Object.keys(x[section])
    return joints.map((joint) => names.indexOf(of(joint) ?? ''))
  }
  const bolts = Object.keys(x.bolts)
  const first = (names: readonly string[]) => names.map(() => 0)
  return {
    names: {
      leg: ['leg'],
      joint: [...joints, ...stages],
      motor: Object.keys(x.motors),
      cord: Object.keys(x.cords),
      plate: Object.keys(x.plates),
      controller: Object.keys(x.controllers),
      link: ['upper', 'lower'],
      boltGroup: bolts,
      pivot: PIVOTS,
      material: [],
      print: Object.keys(x.prints),
      stance: STANCE_IDS,
      event: EVENT_IDS,
      air: AIR_IDS,
      age: AGE_IDS,
    },
    implied: {
      joint: {
        leg: withStage(first(joints)),
        motor: withStage(named('motors', (joint) => x.joints[joint].motor)),
        plate: withStage(named('plates', (joint) => x.joints[joint].plate)),
        controller: withStage(named('controllers', (joint) => x.joints[joint].controller)),
        cord: withStage(
          named('cords', (joint) => {
            const { drive } = x.joints[joint]
            return drive.kind === 'cord' ? drive.cord : undefined
          }),
          second?.kind === 'cord' ? Object.keys(x.cords).indexOf(second.cord) : -1,
        ),
      },
      motor: { leg: first(Object.keys(x.motors)) },
      plate: { leg: first(Object.keys(x.plates)) },
      link: { leg: [0, 0] },
      boltGroup: { leg: first(bolts) },
      pivot: { leg: first(PIVOTS) },
      event: { stance: EVENT_IDS.map((event) => STANCE_IDS.indexOf(EVENTS[event].stance)) },
    },
  }
}

const SECTIONS = [
  'joints',
  'motors',
  'controllers',
  'plates',
  'cords',
  'bolts',
  'pins',
  'bosses',
  'shafts',
  'bearings',
  'prints',
  'ends',
  'belts',
] as const

/** Whether two legs have the same structure: the same names and words, which a calculation is made for. Materials and other words of a part count too, which costs a new calculation only. */
export const sameStructure = (one: LegNumbers, other: LegNumbers): boolean => SECTIONS.every((name) => sameWords(one[name], other[name]))

function sameWords(one: unknown, other: unknown): boolean {
  if (one === other) return true
  if (typeof one === 'string' || typeof other === 'string') return false
  const [first, second] = [isRecord(one), isRecord(other)]
  if (!first || !second) return first === second
  const [own, others] = [Object.keys(one as object), Object.keys(other as object)]
  return own.length === others.length && own.every((name, i) => name === others[i] && sameWords(at(one, name), at(other, name)))
}

const isRecord = (value: unknown) => typeof value === 'object' && value !== null
const at = (record: unknown, name: string) => (record as Readonly<Record<string, unknown>>)[name]
