import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { PAGE_WIDTH } from '../../src/drawing/index.js'
import { type LegDrawing, legDrawings } from '../../src/leg/drawings/index.js'
import { type Assessment, assess, describeLeg, type Leg } from '../../src/leg/index.js'
import { outside, overlaps, textBoxes } from '../drawing/boxes.js'
import { geared } from './gear-legs.js'
import { besideLinks, singleBearings } from './rod-bearing-legs.js'
import { corded } from './sideways-legs.js'
import { sprungAndBalanced } from './sprung-legs.js'
import { beltFirst, cordKnee, cordOnRotor } from './through-legs.js'

const read = (name: string) => readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')
const NAMES = {
  first: 'mudflat-leg-first',
  revised: 'mudflat-leg-revised',
  rod: 'heath-leg-first',
  rodRevised: 'heath-leg-revised',
  direct: 'desk-leg-first',
  directRevised: 'desk-leg-revised',
  belt: 'orchard-leg-first',
  beltRevised: 'orchard-leg-revised',
} as const
const OTHERS = { corded, geared, sprungAndBalanced, cordOnRotor, besideLinks, singleBearings, beltKnee: beltFirst, cordKnee }
type Name = keyof typeof NAMES | keyof typeof OTHERS
const NAME_LIST = [...Object.keys(NAMES), ...Object.keys(OTHERS)] as readonly Name[]
const legs = {
  ...Object.fromEntries(Object.entries(NAMES).map(([name, file]) => [name, describeLeg(read(file))])),
  ...OTHERS,
} as Record<Name, Leg>
const verdicts = Object.fromEntries(Object.entries(legs).map(([name, leg]) => [name, assess(leg)])) as Record<Name, Assessment>

/** All drawings of a leg, made once. */
const drawingsOf = (name: Name): readonly LegDrawing[] => {
  ALL[name] ??= legDrawings(verdicts[name])
  return ALL[name]
}
const ALL: { [N in Name]?: readonly LegDrawing[] } = {}

const flaws = (drawings: readonly LegDrawing[]) =>
  drawings.flatMap(({ id, svg, height }) => {
    const boxes = textBoxes(svg)
    return [...overlaps(boxes), ...outside(boxes, PAGE_WIDTH, height)].map((flaw) => `${id}: ${flaw}`)
  })

/** Drawings that need strides or an assessment of their own. */
const SLOW = /^(leg|stride|year|torque-speed-.*|reserve-bars)$/

/** Numbers from 0 to 1 by a seed. */
function random(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296
    return state / 4294967296
  }
}

/** Sizes that fit standard parts or each other. */
const FITTED = ['bosses', 'pins', 'bearings', 'belts']

/** A leg with every length, force and mass moved by its own factor, where that still makes a leg. */
function randomLeg(base: Leg, seed: number): Leg {
  const next = random(seed)
  for (let tries = 0; ; tries++) {
    // Sizes that contradict each other lie nearer to those of the leg at the next try.
    const reach = 1 / (1 + tries / 4)
    const size = 1 + reach * (2 * next() - 0.5)
    const moved = (value: unknown): unknown => {
      if (typeof value !== 'object' || value === null) return value
      if (Array.isArray(value)) return value.map(moved)
      if ('kind' in value && 'si' in value) {
        const { kind, si } = value as { kind: string; si: number }
        const spread = 1 + reach * (0.3 * next() - 0.15)
        if (kind === 'length') return [si * size * spread, 'm']
        if (kind === 'mass') return [si * size ** 2 * spread, 'kg']
        if (kind === 'force') return [si * size ** 2 * spread, 'N']
        return value
      }
      return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, FITTED.includes(name) ? inner : moved(inner)]))
    }
    const { defaults: _, ...data } = base
    try {
      return describeLeg(moved(data) as never)
    } catch (cause) {
      if (tries > 60) throw new Error(`no leg within sixty tries: ${base.name}`, { cause })
    }
  }
}

describe('every drawing', () => {
  test.each(NAME_LIST)('%s design: no text lies on another or leaves the page', (name) => {
    expect(flaws(drawingsOf(name))).toEqual([])
  })

  // Strides and assessments take most of the time: every fiftieth leg has all of its drawings and its own assessment, the others a third of those that need
  // none, with the results of the leg that they come from.
  test.each([0, 50, 100, 150])('the same for fifty random legs of every drive from number %i on', (first) => {
    const found = Array.from({ length: 50 }, (_, k) => {
      const i = first + k
      const name = NAME_LIST[i % NAME_LIST.length] as Name
      const leg = randomLeg(legs[name], i + 1)
      const names = drawingsOf(name).map(({ id }) => id)
      const whole = k === 0
      const verdict = whole ? assess(leg, { cases: ['walk', 'drop'] }) : { ...verdicts[name], leg }
      const quick = names.filter((one, j) => !SLOW.test(one) && j % 3 === Math.floor(i / NAME_LIST.length) % 3)
      return flaws(legDrawings(verdict, { only: whole ? names : quick })).map((flaw) => `leg ${i + 1} (${name}): ${flaw}`)
    })
    expect(found.flat()).toEqual([])
  })
})

/** Checks of what has no drawing but that of the whole leg. */
const OF_THE_LEG = /^(controller|supply|ground|robot|toe|leg|upperLink|lowerLink|sidewaysHip)\./

test.each(NAME_LIST)('%s design: a part is never said to hold by a drawing that leaves out one of its checks', (name) => {
  const shown = drawingsOf(name).filter(({ id }) => !/^(leg|reserve-bars)$/.test(id))
  // Of a part that both joints share, each row says whose it is.
  const listed = new Set(shown.flatMap(({ table }) => table.rows.map(([what]) => what!.replace(/, (?:sideways )?(?:hip|knee)(?=: )/, ''))))
  const left = verdicts[name].checks.filter(({ id, part, mode }) => !OF_THE_LEG.test(id) && !listed.has(`${part}: ${mode}`))
  expect(left.map(({ id }) => id)).toEqual([])
})
