import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, legDrawings } from '../../src/leg/index.js'
import { shapesOf } from '../drawing/shapes.js'
import { corded } from './sideways-legs.js'
import { cordKnee } from './through-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const legs = { mudflat: read('mudflat-leg-revised'), heath: read('heath-leg-revised'), corded, cordKnee }

type Hand = 'left' | 'right'
const TURN = 2 * Math.PI
/** A helix about the x axis, which points away from who sees drum and pinion end on: that eye sees growing angles run clockwise. */
const helix = (hand: Hand, angle: number) => [(hand === 'right' ? 1 : -1) * (angle / TURN), Math.cos(angle), Math.sin(angle)] as const
/** How far the place at which a cord leaves a groove walks along the axis when its body turns: the place stands, and the body turns below it. */
const exitWalk = (hand: Hand, turned: number) => helix(hand, -turned)[0]

describe.each(Object.entries(legs))('grooves of %s', (_, leg) => {
  const drawn = legDrawings(assess(leg, { cases: ['stand', 'walk'] })).flatMap((drawing) => {
    const hands = drawing.table.rows.flatMap(([name, value]) => (name?.startsWith('hand of the grooves') ? [value as Hand] : []))
    return hands.length === 0 ? [] : [{ drawing, hands, crossed: drawing.description.includes('Spans that are crossed') }]
  })

  test('with the hands of the drawing the places where a branch leaves drum and pinion walk the same way', () => {
    expect(drawn.length).toBeGreaterThan(1)
    for (const { drawing, hands, crossed } of drawn) {
      expect(hands, drawing.id).toHaveLength(2)
      expect(crossed || drawing.description.includes('Spans that are open')).toBe(true)
      // Crossed spans turn drum and pinion against each other.
      const [drum, pinion] = [exitWalk(hands[0]!, 0.1), exitWalk(hands[1]!, crossed ? -0.6 : 0.6)]
      expect(Math.sign(drum), drawing.id).toBe(Math.sign(pinion))
    }
  })

  test('the grooves of the pinion lean as their hand says, and the solid branch lies where its turns lead', () => {
    for (const { drawing, hands, crossed } of drawn.filter(({ drawing: { id } }) => !id.startsWith('groove'))) {
      const turns = shapesOf(drawing, /at mid travel, .* at the left/).ends('move')
      expect(turns.length, drawing.id).toBeGreaterThan(0)
      // On the side that is seen a turn runs from the top to the bottom.
      const [top, bottom] = [helix(hands[1]!, 0), helix(hands[1]!, Math.PI)]
      // Towards the middle the solid branch runs as the words say: clockwise for crossed spans. Away from it, the other way round.
      const side = Math.sign(helix(hands[1]!, crossed ? -TURN : TURN)[0])
      for (const [x0, y0, x1, y1] of turns) {
        expect((x1 - x0) * (y1 - y0) * (bottom[0] - top[0]) * (bottom[1] - top[1])).toBeGreaterThan(0)
        expect(Math.sign(x0 + x1)).toBe(side)
      }
    }
  })

  test('the tracks of the drum are as far apart as the turns between them are wide', () => {
    for (const { drawing } of drawn.filter(({ drawing: { id } }) => id.startsWith('cord-drive'))) {
      const value = (name: string) => Number(drawing.table.rows.find(([own]) => own === name)?.[1])
      // All of these drums have grooves 2 mm apart.
      expect(value('branches apart along the axis at mid travel')).toBeCloseTo(2 * value('turns on the pinion'), 2)
    }
  })
})
