import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assemblyPlan, describeLeg, type Leg, legNumbers } from '../../src/leg/index.js'
import { cordJoints, drivenJoints, driveOf, jointWords } from '../../src/leg/numbers.js'
import { corded } from './sideways-legs.js'
import { cordKnee } from './through-legs.js'

const folder = new URL('../../examples/', import.meta.url)
const examples = readdirSync(folder)
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => [file.replace('.yaml', ''), describeLeg(readFileSync(new URL(file, folder), 'utf8'))] as const)
const legs: (readonly [string, Leg])[] = [...examples, ['sideways cord', corded], ['cord along the link', cordKnee]]

/** The first length of a text before some words, mm. */
const mm = (text: string, words: string) => Number(new RegExp(`([\\d.]+) mm ${words}`).exec(text)?.[1])

describe.each(legs)('small parts of %s', (_, leg) => {
  const x = legNumbers(leg)
  const plan = assemblyPlan(leg)
  const bought = (item: string) => plan.shopping.filter((line) => line.item === item)

  test('each group of bolts with sleeves has one for each bolt, as long as what is clamped, over its screw and under its washer', () => {
    const groups = Object.entries(x.bolts).filter(([name, { sleeves }]) => sleeves && plan.cuts.bolts.some(({ group }) => group === name))
    expect(bought('sleeve')).toHaveLength(groups.length)
    for (const [name, { stack }] of groups) {
      const cut = plan.cuts.bolts.find(({ group }) => group === name)!
      const grip = 1000 * stack.reduce((sum, { thickness }) => sum + thickness, 0)
      const fits = bought('sleeve').filter(
        ({ size, quantity }) =>
          Math.abs(mm(size, 'long') - grip) < 1e-3 && mm(size, 'inside') > Number(cut.thread.slice(1)) && Number(quantity) > cut.count,
      )
      expect(fits, name).not.toEqual([])
      for (const { size } of fits) expect(mm(size, 'outside')).toBeGreaterThan(mm(size, 'inside') + 1)
    }
  })

  test('of each cord there is enough for the leg, a second one and a coupon of half a metre', () => {
    for (const { joint, cord, cutLength } of plan.cuts.cords) {
      const [line] = bought('cord').filter(({ size, remark }) => size === cord && remark.startsWith(jointWords(joint)))
      expect(Number(line!.quantity.replace(' m', ''))).toBeGreaterThanOrEqual(2 * cutLength.in('m') + 0.5)
    }
  })

  test('each cord has its pinion, grooved to its bottom, its post and a step that fixes the pinion before the cord is laid', () => {
    const joints = cordJoints(x)
    expect(bought('pinion')).toHaveLength(joints.length)
    expect(bought('anchor post')).toHaveLength(joints.length)
    for (const [i, joint] of joints.entries()) {
      const { size } = bought('pinion')[i]!
      const { pinion } = driveOf(x, joint, 'cord')
      // The document has the bottom of the groove, or the centre line of the cord above it.
      if (pinion.grooveDiameter !== undefined) expect(mm(size, 'at the bottom')).toBeCloseTo(1000 * pinion.grooveDiameter, 6)
      // A groove is 0.33 cord diameters deep; diameters are printed to hundredths.
      const [cord] = Object.values(x.cords)
      expect(Math.abs((mm(size, 'outside') - mm(size, 'at the bottom')) / 2 - 330 * cord!.diameter)).toBeLessThanOrEqual(0.00251)
      expect(mm(size, 'long')).toBeCloseTo(1000 * pinion.length, 6)
      const at = (words: RegExp) => plan.steps.findIndex((step) => words.test(step))
      const name = jointWords(joint)
      const [fixed, bolted, laid, set] = [
        at(new RegExp(`^Fix the pinion on the shaft of the motor of the ${name}:`)),
        at(/^Before a motor is bolted on/),
        at(new RegExp(`^Lay the cord of the ${name} `)),
        at(new RegExp(`^Tension the ${name}:`)),
      ]
      expect(fixed).toBeGreaterThanOrEqual(0)
      expect(fixed).toBeLessThan(bolted!)
      expect(bolted).toBeLessThan(laid!)
      expect(laid).toBeLessThan(set!)
    }
  })

  test('each motor has a magnet for its encoder, which is mounted once the motor is bolted on', () => {
    expect(bought('encoder magnet').map(({ quantity }) => quantity)).toEqual([String(drivenJoints(x).length)])
    const mounted = plan.steps.findIndex((step) => /magnet/.test(step))
    expect(mounted).toBeGreaterThan(plan.steps.findIndex((step) => step.startsWith('Before a motor is bolted on')))
  })
})
