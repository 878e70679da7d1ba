import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackTorqueEstimate, thermalTension } from '../../../src/capstan/index.js'
import type { AnyFormula } from '../../../src/formula/index.js'
import {
  Calculation,
  closure,
  constant,
  FAILED,
  type Index,
  leaf,
  line,
  type Of,
  question,
  SheetMaker,
  type Structure,
  value,
} from '../../../src/leg/run/index.js'
import { evaluate, workAgain } from './second-reader.js'

/** A toy leg: two joints with a motor each, one plate, two airs, two materials. */
interface Toy {
  readonly torque: Record<string, number>
  readonly resistance: Record<string, number>
  readonly air: Record<string, number>
  readonly plate: string
  readonly modulus: Record<string, number>
  readonly kind: Record<string, string>
}
const toy: Toy = {
  torque: { hip: 3, knee: 5 },
  resistance: { left: 0.2, right: 0.4 },
  air: { cold: 270, hot: 310 },
  plate: 'ASA',
  modulus: { ASA: 2e9, PC: 2.3e9 },
  kind: { hip: 'cord', knee: 'gear' },
}
const structure: Structure = {
  names: { leg: ['leg'], joint: ['hip', 'knee'], motor: ['left', 'right'], plate: ['main'], air: ['cold', 'hot'], material: [] },
  implied: { joint: { leg: [0, 0], motor: [1, 0], plate: [0, 0] }, plate: { leg: [0] } },
}
const of = <X extends Index>(i: number) => i as Of<X>

const torque = leaf('joint.torque', ['joint'], { kind: 'torque', read: (x: Toy, { joint }) => x.torque[joint] as number })
const resistance = leaf('motor.resistance', ['motor'], {
  kind: 'electricalResistance',
  read: (x: Toy, { motor }) => x.resistance[motor] as number,
  range: ({ resistance: r }: Toy, { motor }) => ({
    low: 0.9 * (r[motor] as number),
    high: 1.1 * (r[motor] as number),
    source: { level: 'assumption', where: 'a tenth' },
    measuredBy: 'a bridge',
  }),
})
const airTemperature = leaf('air.temperature', ['air'], { kind: 'temperature', read: (x: Toy, { air }) => x.air[air] as number })
const plateMaterial = leaf('plate.material', ['plate'], {
  kind: 'word',
  read: (x: Toy) => x.plate as unknown as Of<'material'>,
  refersTo: 'material',
})
const modulus = leaf('material.modulus', ['material'], {
  kind: 'modulus',
  read: (x: Toy, { material }) => {
    const found = x.modulus[material]
    if (found === undefined) throw new Error(`no modulus of ${material}`)
    return found
  },
})
const factor = constant('heat.factor', { title: 'heat.factor', kind: 'ratio', typical: 3, source: { level: 'assumption', where: 'a toy' } })
const heating = line(
  'heating',
  { torque: 'torque', resistance: 'electricalResistance', factor: 'ratio' },
  'power',
  'factor · torque² · resistance',
  (x) => x.factor * x.torque ** 2 * x.resistance,
)
const loss = value('joint.loss', ['joint'], (use) =>
  use.run(heating, { torque: use(torque), resistance: use(resistance), factor: use(factor) }),
)
const plateModulus = value('plate.modulus', ['plate'], (use) => use.at(modulus, { material: use(plateMaterial) }))
const soft = value('joint.soft', ['joint', 'air'], (use) => (use(airTemperature) > 300 ? use(plateModulus) / 2 : use(loss)))
const total = value('plate.loss', ['plate'], (use, at) =>
  use.all('joint', { plate: at.plate }).reduce((sum, joint) => sum + use.at(loss, { joint }), 0),
)

const fresh = (document: Toy = toy, options = {}) => new Calculation<Toy>(structure, document, options)
const hip = { joint: of<'joint'>(0) }
const knee = { joint: of<'joint'>(1) }

describe('values', () => {
  test('an index implies others: a joint reads its own motor, a sum over a plate reads both', () => {
    const calculation = fresh()
    expect(calculation.get(loss, hip)).toBe(3 * 3 ** 2 * 0.4)
    expect(calculation.get(loss, knee)).toBe(3 * 5 ** 2 * 0.2)
    expect(calculation.get(total, { plate: of<'plate'>(0) })).toBe(3 * 3 ** 2 * 0.4 + 3 * 5 ** 2 * 0.2)
  })

  test('each value is calculated once for each of its instances', () => {
    const calculation = fresh()
    for (const air of [0, 1, 0, 1]) calculation.get(soft, { ...hip, air: of<'air'>(air) })
    calculation.get(total, { plate: of<'plate'>(0) })
    // Twice soft, the modulus, the loss of each joint, the sum.
    expect(calculation.worked).toBe(6)
  })

  test('instances with the same numbers share one run of a formula that takes long, and one more number is another run', () => {
    let runs = 0
    const slow = line('heat of a list', { heats: { list: 'power' }, factor: 'ratio' }, 'power', 'factor * sum(heats)', (x) => {
      runs++
      return x.factor * x.heats.reduce((sum, heat) => sum + heat, 0)
    })
    const shared = value('shared', ['joint'], (use) => use.shared(slow, { heats: [use(torque), 1], factor: use(factor) }))
    const calculation = fresh({ ...toy, torque: { hip: 4, knee: 4 } }, { recording: true })
    expect([calculation.get(shared, hip), calculation.get(shared, knee), runs]).toEqual([15, 15, 1])
    for (const joint of [hip, knee])
      expect(calculation.cell(shared, joint).log?.at(-1)).toMatchObject({ formula: slow, x: { heats: [4, 1], factor: 3 }, y: 15 })
    calculation.set(torque, knee, 5)
    expect([calculation.get(shared, knee), calculation.get(shared, hip), runs]).toEqual([18, 15, 2])
    const longer = value('longer', ['joint'], (use) => use.shared(slow, { heats: [use(torque), 1, 0], factor: use(factor) }))
    expect([calculation.get(longer, hip), runs]).toEqual([15, 3])
  })

  test('a plain reading after a named one of another instance is the own one', () => {
    let other = true
    const mixed = value('mixed', ['joint'], (use) => (other ? use.at(resistance, { motor: of<'motor'>(0) }) : use(resistance)))
    const calculation = fresh()
    expect(calculation.get(mixed, hip)).toBe(0.2)
    other = false
    calculation.set(resistance, { motor: of<'motor'>(0) }, 9)
    expect(calculation.get(mixed, hip)).toBe(0.4)
  })

  test('an index beside one that implies it is an error, and so is an instance that nothing names', () => {
    expect(() => value('twice', ['joint', 'motor'], () => 1)).toThrow('motor is implied by another of its indices')
    expect(() => fresh().get(loss, {} as never)).toThrow('joint.loss needs a joint')
  })

  test('a constant has its typical value inside its range, and names the test that would replace it', () => {
    const source = { level: 'assumption', where: 'a toy' } as const
    expect(() => constant('c', { title: 'c', kind: 'ratio', typical: 3, low: 1, high: 2, source, measuredBy: 'x' })).toThrow(
      'outside its range',
    )
    expect(() => constant('c', { title: 'c', kind: 'ratio', typical: 2, low: 1, high: 3, source })).toThrow('names the test')
  })
})

describe('changes', () => {
  test('a changed leaf makes stale what it reaches and nothing else', () => {
    const calculation = fresh()
    calculation.get(total, { plate: of<'plate'>(0) })
    const before = calculation.worked
    calculation.set(torque, knee, 6)
    expect(calculation.get(total, { plate: of<'plate'>(0) })).toBe(3 * 3 ** 2 * 0.4 + 3 * 6 ** 2 * 0.2)
    expect(calculation.worked - before).toBe(2)
    calculation.set(torque, knee, 6)
    calculation.get(total, { plate: of<'plate'>(0) })
    expect(calculation.worked - before).toBe(2)
  })

  test('any order of changes leads to the same bits as a calculation made anew, with and without the staleness layer', () => {
    const change = fc.record({
      torque: fc.record({ hip: fc.double({ min: 0, max: 9, noNaN: true }), knee: fc.constantFrom(4, 5) }),
      resistance: fc.record({ left: fc.constantFrom(0.2, 0.3), right: fc.constantFrom(0.4, 0.5) }),
      air: fc.record({ cold: fc.constantFrom(270, 305), hot: fc.constantFrom(310, 290) }),
      plate: fc.constantFrom('ASA', 'PC'),
      modulus: fc.constant(toy.modulus),
      kind: fc.constant(toy.kind),
    })
    const all = (calculation: Calculation<Toy>) =>
      [0, 1].flatMap((joint) => [0, 1].map((air) => calculation.get(soft, { joint: of<'joint'>(joint), air: of<'air'>(air) })))
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), (documents) => {
        const selective = fresh()
        const plain = fresh(toy, { selective: false })
        for (const document of documents) {
          selective.load(document)
          plain.load(document)
          const anew = all(fresh(document))
          expect(all(selective)).toEqual(anew)
          expect(all(plain)).toEqual(anew)
        }
      }),
      { seed: 7, numRuns: 60 },
    )
  })

  test('a leaf that lists names, takes a record or reads by another field follows every one of them', () => {
    interface Listed {
      readonly parts: Record<string, { readonly size: number; readonly tags?: readonly string[] }>
      readonly chosen: string
    }
    const count = leaf('count', [], { kind: 'count', read: (x: Listed) => Object.keys(x.parts).length })
    const whole = leaf('whole', [], { kind: 'record', read: (x: Listed) => x.parts[x.chosen] })
    const size = leaf('size', [], { kind: 'length', read: (x: Listed) => x.parts[x.chosen]?.size ?? -1 })
    const tags = leaf('tags', [], { kind: 'word', read: (x: Listed) => x.parts[x.chosen]?.tags?.map((tag) => tag.trim()).join() ?? 'none' })
    const documents: Listed[] = [
      { parts: { a: { size: 1 }, b: { size: 2, tags: ['x', 'y '] } }, chosen: 'a' },
      { parts: { a: { size: 3 }, b: { size: 2, tags: ['x', 'y '] } }, chosen: 'a' },
      { parts: { a: { size: 3 }, b: { size: 2, tags: ['x', 'z'] } }, chosen: 'b' },
      { parts: { a: { size: 3 }, b: { size: 4, tags: ['x'] } }, chosen: 'b' },
      { parts: { a: { size: 3 }, b: { size: 4 }, c: { size: 9 } }, chosen: 'b' },
      { parts: { a: { size: 3 } }, chosen: 'b' },
      { parts: { a: { size: 3 }, b: { size: 7 } }, chosen: 'b' },
    ]
    const calculation = new Calculation<Listed>(structure, documents[0]!)
    const all = (one: Calculation<Listed>) => [one.get(count, {}), one.get(whole, {}), one.get(size, {}), one.get(tags, {})]
    for (const document of [...documents, ...documents.toReversed()]) {
      calculation.load(document)
      expect(all(calculation)).toEqual(all(new Calculation<Listed>(structure, document)))
    }
  })

  test('names of one section lead a leaf to the numbers of another, which it follows', () => {
    interface Two {
      readonly chosen: Record<string, true>
      readonly sizes: Record<string, number>
    }
    const sum = leaf('sum', [], {
      kind: 'length',
      read: (x: Two) => Object.keys(x.chosen).reduce((all, name) => all + (x.sizes[name] ?? 0), 0),
    })
    const sizes = { a: 1, b: 2, c: 4 }
    const [both, last] = [{ a: true, b: true } as const, { a: true, c: true } as const]
    const calculation = new Calculation<Two>(structure, { chosen: both, sizes })
    const loaded = (document: Two) => {
      calculation.load(document)
      return calculation.get(sum, {})
    }
    expect(calculation.get(sum, {})).toBe(3)
    expect(loaded({ chosen: both, sizes: { ...sizes, b: 20 } })).toBe(21)
    expect(loaded({ chosen: last, sizes: { ...sizes, b: 20 } })).toBe(5)
    expect(loaded({ chosen: last, sizes: { ...sizes, c: 40 } })).toBe(41)
  })

  test('the fields of a leaf are the numbers and words that it hands on, each item of a list and each part of a record', () => {
    const document = { heights: [3, 5], box: { width: 2, note: null, sides: [{ at: 1 }] }, other: 9 }
    const paths = (read: (x: typeof document) => unknown) => {
      const calculation = new Calculation<typeof document>(structure, document)
      return calculation.fieldsOf(calculation.cell(leaf('some', [], { kind: 'record', read }), {}))
    }
    expect(paths((x) => x.heights)).toEqual([
      { path: 'heights[0]', value: 3 },
      { path: 'heights[1]', value: 5 },
    ])
    expect(paths((x) => x.box)).toEqual([
      { path: 'box.width', value: 2 },
      { path: 'box.note', value: null },
      { path: 'box.sides[0].at', value: 1 },
    ])
    expect(paths((x) => x.heights.length)).toEqual([])
  })

  test('a pinned value is a what-if: what reads it follows, changes below do not touch it, unpinning brings the calculated one back', () => {
    const calculation = fresh()
    const plate = { plate: of<'plate'>(0) }
    const before = calculation.get(total, plate)
    calculation.pin(loss, hip, 100)
    expect(calculation.get(total, plate)).toBe(100 + 3 * 5 ** 2 * 0.2)
    calculation.set(torque, hip, 99)
    expect(calculation.get(loss, hip)).toBe(100)
    calculation.set(torque, hip, 3)
    calculation.unpin(loss, hip)
    expect(calculation.get(total, plate)).toBe(before)
    expect(() => calculation.pin(torque, hip, 1)).toThrow('set it instead')
    expect(() => calculation.set(loss, hip, 1)).toThrow('pin it instead')
  })
})

describe('scenarios', () => {
  const between = (low: number, high: number) => () => ({
    low,
    high,
    source: { level: 'assumption', where: 'a toy' } as const,
    measuredBy: 'a bridge',
  })
  const warmth = leaf('warmth', ['air'], {
    kind: 'temperature',
    read: (x: Toy, { air }) => x.air[air] as number,
    range: between(280, 320),
  })
  const stiffness = leaf('stiffness', [], { kind: 'modulus', read: () => 5, range: between(4, 6) })
  const share = leaf('share', [], { kind: 'ratio', read: () => 0.5, range: between(0.2, 0.9) })
  /** Reads other values above 300 K than below, and fails above 315 K where the joint is the hip. */
  const branching = value('branching', ['joint', 'air'], (use, at): number => {
    const warm = use(warmth)
    if (warm > 315 && at.joint === 0) throw new Error('too warm')
    return warm > 300 ? use(stiffness) * use(loss) : use(share) * use(resistance)
  })
  const twice = value('twice', ['joint', 'air'], (use) => 2 * use(branching) + use(share))
  const ranged = [warmth, stiffness, share, resistance]
  const places = [0, 1].flatMap((joint) => [0, 1].map((air) => ({ joint: of<'joint'>(joint), air: of<'air'>(air) })))
  const shown = (read: () => unknown) => {
    try {
      return read()
    } catch (error) {
      return String(error)
    }
  }

  test('give what the leaves set there give, in any order, and leave the calculation as it is', () => {
    const ends = fc.array(fc.record({ leaf: fc.nat(7), end: fc.constantFrom('low' as const, 'high' as const) }), { maxLength: 6 })
    fc.assert(
      fc.property(fc.array(ends, { minLength: 1, maxLength: 8 }), (corners) => {
        const calculation = fresh()
        for (const where of places) shown(() => calculation.get(twice, where))
        const before = places.map((where) => shown(() => calculation.get(twice, where)))
        const leaves = calculation.instances.leaves.flatMap((cell) => {
          const range = calculation.rangeOf(cell)
          return range !== undefined && (ranged as readonly unknown[]).includes(cell.of) ? [{ cell, range }] : []
        })
        const scenarios = calculation.scenarios(leaves)
        for (const corner of corners) {
          const chosen = new Map(corner.map(({ leaf: i, end }) => [leaves[i % leaves.length]!.cell, end]))
          const reader = scenarios.at(scenarios.ends.of(chosen))
          const found = places.map((where) => shown(() => reader.read(calculation.cell(twice, where))))
          const anew = fresh()
          for (const { cell, range } of leaves) {
            const end = chosen.get(cell)
            if (end !== undefined) anew.put(anew.instances.find(cell.of, {}, cell.where), range[end])
          }
          expect(found).toEqual(places.map((where) => shown(() => anew.get(twice, where))))
        }
        expect(places.map((where) => shown(() => calculation.get(twice, where)))).toEqual(before)
      }),
      { seed: 11, numRuns: 80 },
    )
  })

  test('a value that nobody has read before is calculated, and fails as it does alone', () => {
    const calculation = fresh()
    const cell = calculation.cell(resistance, { motor: of<'motor'>(1) })
    calculation.read(cell)
    const scenarios = calculation.scenarios([{ cell, range: calculation.rangeOf(cell)! }])
    const reader = scenarios.at(scenarios.ends.of([[cell, 'high']]))
    // The hip has the right motor, of 0.4 ohm and a tenth more.
    expect(reader.read(calculation.cell(loss, hip))).toBeCloseTo(3 * 3 ** 2 * 0.44, 12)
    expect(reader.read(calculation.cell(loss, knee))).toBe(3 * 5 ** 2 * 0.2)
    const broken = value('broken', ['joint'], (use): number => {
      throw new Error(`${use(loss).toFixed(2)} W is too much`)
    })
    expect(() => reader.read(calculation.cell(broken, hip))).toThrow('11.88 W is too much')
    expect(() => calculation.get(broken, hip)).toThrow('10.80 W is too much')
  })

  test('a scenario that is over, by another one or by a leaf that was set, is not read', () => {
    const calculation = fresh()
    const cell = calculation.cell(twice, places[0]!)
    calculation.read(cell)
    const leaves = calculation.instances.leaves.flatMap((one) =>
      one.of.id === 'share' ? [{ cell: one, range: calculation.rangeOf(one)! }] : [],
    )
    const scenarios = calculation.scenarios(leaves)
    const first = scenarios.at(scenarios.ends.of([]))
    const second = scenarios.at(scenarios.ends.of([]))
    expect(() => first.read(cell)).toThrow('this scenario is over')
    expect(second.read(cell)).toBe(calculation.read(cell))
    calculation.set(torque, hip, 4)
    expect(() => second.read(cell)).toThrow('this scenario is over')
  })
})

describe('failures', () => {
  test('who reads a failed value fails with the same error, everything else stands, and a mended leaf mends it', () => {
    const calculation = fresh({ ...toy, plate: 'wood' })
    const hot = { ...hip, air: of<'air'>(1) }
    expect(() => calculation.get(soft, hot)).toThrow('no modulus of wood')
    expect(() => calculation.get(plateModulus, { plate: of<'plate'>(0) })).toThrow('no modulus of wood')
    expect(calculation.get(soft, { ...hip, air: of<'air'>(0) })).toBe(3 * 3 ** 2 * 0.4)
    calculation.load(toy)
    expect(calculation.get(soft, hot)).toBe(1e9)
    calculation.load({ ...toy, modulus: {} })
    expect(() => calculation.get(soft, hot)).toThrow('no modulus of ASA')
  })

  test('a value that depends on itself is an error that says so', () => {
    const ring: ReturnType<typeof value<number>> = value('ring', [], (use): number => use(ring) + 1)
    const calculation = fresh()
    expect(() => calculation.get(ring, {})).toThrow('ring depends on itself: express the loop with use.settle')
    expect(calculation.cell(ring, {}).state).toBe(FAILED)
  })
})

describe('loops', () => {
  const half = line('half way', { x: 'ratio', a: 'ratio' }, 'ratio', '(x + a / x) / 2', ({ x, a }) => (x + a / x) / 2)
  const root = value('root', ['joint'], (use) => {
    const a = use(torque)
    return use.settle('square root', { start: 1, within: 1e-12, most: 60 }, (x) => ({ next: use.run(half, { x, a }) })).x
  })

  test('a loop settles, and its sheet holds the last round alone', () => {
    const calculation = fresh(toy, { recording: true })
    expect(calculation.get(root, knee)).toBeCloseTo(Math.sqrt(5), 12)
    const log = calculation.cell(root, knee).log ?? []
    expect(log.filter((entry) => 'formula' in entry)).toHaveLength(1)
    expect(log.at(-1)).toMatchObject({ loop: 'square root', settled: true })
    const sheet = new SheetMaker(calculation as Calculation<never>).sheet([calculation.cell(root, knee)])
    expect(sheet.loops).toEqual([
      { title: 'square root', x: expect.closeTo(Math.sqrt(5), 11), next: expect.closeTo(Math.sqrt(5), 11), within: 1e-12, settled: true },
    ])
  })

  test('a value read inside a loop is an error', () => {
    const wrong = value(
      'wrong',
      ['joint'],
      (use) => use.settle('x', { start: 1, within: 1e-9, most: 9 }, (x) => ({ next: (x + use(torque)) / 2 })).x,
    )
    const calculation = fresh()
    expect(() => calculation.get(wrong, hip)).toThrow('joint.torque is read inside a loop of wrong')
    expect(calculation.get(loss, hip)).toBeGreaterThan(0)
  })

  test('a loop that does not converge is listed until it does', () => {
    const drift = value('drift', ['joint'], (use) => {
      const step = use(torque)
      return use.settle('drift', { start: 0, within: 1e-9, most: 20, highest: 50 }, (x) => ({ next: x + step })).settled
    })
    const calculation = fresh()
    expect(calculation.get(drift, hip)).toBe(false)
    expect(calculation.unsettled()).toMatchObject([{ value: 'drift', names: { joint: 'hip' }, loop: 'drift' }])
    calculation.set(torque, hip, 0)
    expect(calculation.get(drift, hip)).toBe(true)
    expect(calculation.unsettled()).toEqual([])
  })

  test('a loop inside a loop logs its last round once', () => {
    const nested = value('nested', ['joint'], (use) => {
      const a = use(torque)
      return use.settle('outer', { start: 1, within: 1e-9, most: 60 }, (x) => {
        const inner = use.settle('inner', { start: 1, within: 1e-12, most: 60 }, (y) => ({ next: use.run(half, { x: y, a }) }))
        return { next: use.run(half, { x, a: inner.x }) }
      }).x
    })
    const calculation = fresh(toy, { recording: true })
    expect(calculation.get(nested, knee)).toBeCloseTo(5 ** 0.25, 9)
    const log = calculation.cell(nested, knee).log ?? []
    expect(log.filter((entry) => 'loop' in entry).map((entry) => 'loop' in entry && entry.loop)).toEqual(['inner', 'outer'])
    expect(log.filter((entry) => 'formula' in entry)).toHaveLength(2)
  })
})

describe('kinds of part', () => {
  const kind = leaf('drive.kind', ['joint'], { kind: 'word', read: (x: Toy, { joint }) => x.kind[joint] as string })
  const ratio = question<number, 'joint'>({ id: 'drive', kind }, 'ratio', ['joint'])
  const answers = { drive: { cord: { ratio: () => 8 }, gear: { ratio: (use: (of: typeof torque) => number) => 2 * use(torque) } } }

  test('each kind answers a question in its own way, and what it reads counts', () => {
    const calculation = fresh(toy, { answers })
    expect([calculation.get(ratio, hip), calculation.get(ratio, knee)]).toEqual([8, 10])
    calculation.set(torque, knee, 6)
    expect(calculation.get(ratio, knee)).toBe(12)
    calculation.load({ ...toy, kind: { hip: 'belt', knee: 'cord' } })
    expect(calculation.get(ratio, knee)).toBe(8)
    expect(() => calculation.get(ratio, hip)).toThrow("drive: the kind 'belt' has no answer to 'ratio'")
  })
})

describe('sheets', () => {
  const rise = line(
    'rise',
    { air: 'temperature', assembly: 'temperature' },
    'temperatureDifference',
    'air − assembly',
    (x) => x.air - x.assembly,
  )
  const left = line('pretension left', { set: 'force', change: 'force', least: 'force' }, 'force', 'max(least, set + change)', (x) =>
    Math.max(x.least, x.set + x.change),
  )
  const assembly = constant('assembly', {
    title: 'assembly',
    kind: 'temperature',
    typical: 293.15,
    source: { level: 'assumption', where: 'a room' },
  })
  const set = constant('set', { title: 'set', kind: 'force', typical: 185, source: { level: 'assumption', where: 'a toy' } })
  const least = constant('least', { title: 'least', kind: 'force', typical: 0.5, source: { level: 'assumption', where: 'a toy' } })
  const rigidity = constant('rigidity', {
    title: 'rigidity',
    kind: 'axialRigidity',
    typical: 9000,
    source: { level: 'assumption', where: 'a toy' },
  })
  const frame = constant('frame', {
    title: 'frame',
    kind: 'thermalExpansion',
    typical: 9e-5,
    source: { level: 'assumption', where: 'a toy' },
  })
  const cord = constant('cord', {
    title: 'cord',
    kind: 'thermalExpansion',
    typical: -5e-6,
    source: { level: 'assumption', where: 'a toy' },
  })
  const pretension = value('pretension', ['air'], (use) =>
    use.run(left, {
      set: use(set),
      least: use(least),
      change: use.run(thermalTension, {
        axialRigidity: use(rigidity),
        temperatureRise: use.run(rise, { air: use(airTemperature), assembly: use(assembly) }),
        frameExpansion: use(frame),
        cordExpansion: use(cord),
      }),
    }),
  )
  const radius = constant('radius', { title: 'radius', kind: 'length', typical: 0.04, source: { level: 'assumption', where: 'a toy' } })
  const slack = value(
    'slack torque',
    ['air'],
    (use) => use.run(slackTorqueEstimate, { pretension: use(pretension), drumRadius: use(radius) }).equalArcs,
  )
  const formulas = new Map<string, AnyFormula>([thermalTension, slackTorqueEstimate].map((one) => [one.id, one as unknown as AnyFormula]))
  const cold = { air: of<'air'>(0) }

  test('the second reader works the sheet again to the last bit, every input has one origin', () => {
    const calculation = fresh(toy, { recording: true })
    const cell = calculation.cell(slack, cold)
    const torqueThen = calculation.read(cell)
    const sheet = new SheetMaker(calculation as Calculation<never>).sheet([cell])
    expect(sheet.gaps).toEqual([])
    expect(sheet.steps.map(({ formula }) => formula)).toEqual([
      'leg.rise',
      'capstan.thermalTension',
      'leg.pretension left',
      'capstan.slackTorqueEstimate',
    ])
    expect(workAgain(sheet, formulas)).toEqual({ results: [torqueThen], problems: [] })
  })

  test('the second reader finds a formula that lies, an equation that lies and a number out of nowhere', () => {
    const lying = line('liar', { air: 'temperature' }, 'temperature', 'air + 1', (x) => x.air + 2)
    const wrong = value('wrong', ['air'], (use) => use.run(lying, { air: use(airTemperature) + 17 }))
    const calculation = fresh(toy, { recording: true })
    const cell = calculation.cell(wrong, cold)
    calculation.read(cell)
    const sheet = new SheetMaker(calculation as Calculation<never>).sheet([cell])
    expect(workAgain(sheet, formulas).problems).toHaveLength(1)
    expect(sheet.gaps).toHaveLength(1)
  })

  test('recording changes no number, and what a sheet rests on is what the last evaluation read', () => {
    const recorded = fresh(toy, { recording: true })
    expect(recorded.get(slack, cold)).toBe(fresh().get(slack, cold))
    const branch = recorded.cell(soft, { ...hip, air: of<'air'>(1) })
    recorded.read(branch)
    recorded.set(airTemperature, { air: of<'air'>(1) }, 280)
    recorded.read(branch)
    const ids = closure([branch]).map((cell) => cell.of.id)
    expect(ids).not.toContain('material.modulus')
    expect(ids).toContain('motor.resistance')
    expect(branch.reads.map((cell) => cell.of.id)).toContain('plate.modulus')
  })
})

test('the reader of equations knows its signs', () => {
  expect(evaluate('(a + b)² / 2 · −c', { a: 1, b: 2, c: 4 })).toBe(-18)
  expect(evaluate('max(all, 3) − √(b^2)', { all: [1, 7, 5], b: 2 })).toBe(5)
  expect(evaluate('|a| · cos(0) + 2e-3', { a: -1 })).toBeCloseTo(1.002, 12)
  expect(() => evaluate('a + d', { a: 1 })).toThrow("'d' is not an input")
  expect(() => evaluate('(a', { a: 1 })).toThrow("')' is missing")
})
