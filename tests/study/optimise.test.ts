import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula } from '../../src/formula/index.js'
import { optimise } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'

const memory = [{ level: 'unverified', where: 'test' }] as const
const x = 'ratio'

describe('published problems with known optima', () => {
  test('Rosenbrock on a disk of radius √2: 0 at (1, 1), on the edge', () => {
    const valley = formula('test.valley', {
      inputs: { a: x, b: x },
      output: { height: x, radius2: x },
      source: memory,
      si: ({ a, b }) => ({ height: 100 * (b - a * a) ** 2 + (1 - a) ** 2, radius2: a * a + b * b }),
    })
    const { best, state } = optimise(valley, {
      vary: { a: { from: -1.5, to: 1.5 }, b: { from: -1.5, to: 1.5 } },
      goals: { minimise: 'height' },
      constraints: { radius2: { max: 2 } },
    })
    expect(state).toBe('found')
    expect(best.results.height!.si).toBeLessThan(1e-9)
    expect(best.inputs.a!.si).toBeCloseTo(1, 4)
  })

  test('Rosen-Suzuki, no. 43 of W. Hock, K. Schittkowski 1981: −44 at (0, 1, 2, −1)', () => {
    const problem = formula('test.rosenSuzuki', {
      inputs: { a: x, b: x, c: x, d: x },
      output: { f: x, g: x, h: x, k: x },
      source: memory,
      si: ({ a, b, c, d }) => ({
        f: a * a + b * b + 2 * c * c + d * d - 5 * a - 5 * b - 21 * c + 7 * d,
        g: 8 - a * a - b * b - c * c - d * d - a + b - c + d,
        h: 10 - a * a - 2 * b * b - c * c - 2 * d * d + a + d,
        k: 5 - 2 * a * a - b * b - c * c - 2 * a + b + d,
      }),
    })
    const range = { from: -5, to: 5 }
    const { best } = optimise(problem, {
      vary: { a: range, b: range, c: range, d: range },
      goals: { minimise: 'f' },
      constraints: { g: { min: 0 }, h: { min: 0 }, k: { min: 0 } },
      evaluations: 60_000,
    })
    expect(best.results.f!.si).toBeCloseTo(-44, 5)
    for (const [name, value] of [
      ['a', 0],
      ['b', 1],
      ['c', 2],
      ['d', -1],
    ] as const)
      expect(best.inputs[name]!.si).toBeCloseTo(value, 3)
  })

  test('pressure vessel with plates by the sixteenth of an inch: 6059.7143', () => {
    const plates = (input: 'shell' | 'head') =>
      Object.fromEntries(Array.from({ length: 32 }, (_, i) => [`${i + 1}/16`, { [input]: (i + 1) / 16 }]))
    const vessel = formula('test.vessel', {
      inputs: { shell: x, head: x, radius: x, length: x },
      output: { cost: x, hoop: x, dome: x, volume: x },
      source: memory,
      si: ({ shell, head, radius: r, length: l }) => ({
        cost: 0.6224 * shell * r * l + 1.7781 * head * r * r + 3.1661 * shell * shell * l + 19.84 * shell * shell * r,
        hoop: shell - 0.0193 * r,
        dome: head - 0.00954 * r,
        volume: Math.PI * r * r * l + (4 / 3) * Math.PI * r ** 3,
      }),
    })
    const found = optimise(vessel, {
      vary: { radius: { from: 10, to: 200 }, length: { from: 10, to: 200 } },
      choices: { shell: plates('shell'), head: plates('head') },
      goals: { minimise: 'cost' },
      constraints: { hoop: { min: 0 }, dome: { min: 0 }, volume: { min: 1_296_000 } },
      evaluations: 60_000,
    })
    // The least cost usually reported for this much used problem (E. Sandgren, J. Mech. Des. 112 (1990) 223, first stated it).
    expect(found.best.choices).toEqual({ shell: '13/16', head: '7/16' })
    expect(found.best.results.cost!.si).toBeCloseTo(6059.714335, 3)
    expect(vessel(found.best.argument as never).cost.si).toBe(found.best.results.cost!.si)
  })

  test('welded beam: 1.724852', () => {
    const beam = formula('test.weldedBeam', {
      inputs: { h: x, l: x, t: x, b: x },
      output: { cost: x, shear: x, bending: x, thickness: x, buckling: x, deflection: x },
      source: memory,
      si: ({ h, l, t, b }) => {
        const direct = 6000 / (Math.SQRT2 * h * l)
        const arm = Math.sqrt((l * l) / 4 + ((h + t) / 2) ** 2)
        const polar = 2 * Math.SQRT2 * h * l * ((l * l) / 12 + ((h + t) / 2) ** 2)
        const torsion = (6000 * (14 + l / 2) * arm) / polar
        return {
          cost: 1.10471 * h * h * l + 0.04811 * t * b * (14 + l),
          shear: Math.sqrt(direct ** 2 + (direct * torsion * l) / arm + torsion ** 2),
          bending: 504_000 / (b * t * t),
          thickness: h - b,
          buckling: ((4.013 * 30e6 * Math.sqrt((t * t * b ** 6) / 36)) / 196) * (1 - (t / 28) * Math.sqrt(30e6 / 48e6)),
          deflection: (4 * 6000 * 14 ** 3) / (30e6 * t ** 3 * b),
        }
      },
    })
    const { best } = optimise(beam, {
      vary: { h: { from: 0.1, to: 2 }, l: { from: 0.1, to: 10 }, t: { from: 0.1, to: 10 }, b: { from: 0.1, to: 2 } },
      goals: { minimise: 'cost' },
      constraints: {
        shear: { max: 13_600 },
        bending: { max: 30_000 },
        thickness: { max: 0 },
        buckling: { min: 6000 },
        deflection: { max: 0.25 },
      },
      evaluations: 60_000,
    })
    // As C. A. Coello Coello, E. Mezura-Montes and later authors report: 0.205730, 3.470489, 9.036624, 0.205730.
    expect(best.results.cost!.si).toBeCloseTo(1.724852, 5)
    expect(best.inputs.h!.si).toBeCloseTo(0.20573, 4)
    expect(best.inputs.t!.si).toBeCloseTo(9.036624, 3)
  })

  test('ZDT1 (E. Zitzler, K. Deb, L. Thiele, Evol. Comput. 8 (2000) 173): the front f₂ = 1 − √f₁, evenly covered', () => {
    const names = Array.from({ length: 30 }, (_, i) => `x${i + 1}`)
    const unit = { kind: 'ratio', min: 0, max: 1 } as const
    const zdt1 = formula('test.zdt1', {
      inputs: Object.fromEntries(names.map((name) => [name, unit])),
      output: { first: x, second: x },
      source: memory,
      si: (all) => {
        const first = all.x1 as number
        let sum = 0
        for (let i = 1; i < 30; i++) sum += all[names[i]!] as number
        const g = 1 + (9 * sum) / 29
        return { first, second: g * (1 - Math.sqrt(first / g)) }
      },
    })
    const { front, chart } = optimise(zdt1, {
      vary: Object.fromEntries(names.map((name) => [name, { from: 0, to: 1 }])) as never,
      goals: [{ minimise: 'first' }, { minimise: 'second' }],
      evaluations: 40_000,
    })
    expect(front.length).toBeGreaterThan(80)
    const points = front.map(({ results }) => [results.first!.si, results.second!.si] as const)
    for (const [f1, f2] of points) expect(f2 - (1 - Math.sqrt(f1))).toBeLessThan(0.01)
    expect(points[0]![0]).toBeLessThan(0.01)
    expect(points.at(-1)![0]).toBeGreaterThan(0.99)
    const steps = points.slice(1).map(([a, b], i) => Math.hypot(a - points[i]![0], b - points[i]![1]))
    expect(Math.max(...steps)).toBeLessThan(0.06)
    // none is better than another in everything
    for (let i = 1; i < points.length; i++) expect(points[i]![1]).toBeLessThan(points[i - 1]![1])
    expect(JSON.parse(JSON.stringify(chart)).title).toContain('Trade-off')
  })
})

const drive = formula('test.drive', {
  inputs: { cord: { fields: { strength: 'force', diameter: 'length' } }, drum: { kind: 'length', above: 0 }, load: 'force' },
  output: { reserve: 'ratio', bend: 'ratio', size: 'length' },
  source: memory,
  si: ({ cord, drum, load }) => ({ reserve: cord.strength / load, bend: drum / cord.diameter, size: drum + cord.diameter }),
})
const cords = {
  thin: { cord: { strength: '400 N', diameter: '1 mm' } },
  middle: { cord: { strength: '900 N', diameter: '1.6 mm' } },
  thick: { cord: { strength: '1700 N', diameter: '2.2 mm' } },
} as const

test('an option sets several inputs together; enumeration by hand gives the same answer', () => {
  const found = optimise(drive, {
    vary: { drum: { from: '5 mm', to: '100 mm' } },
    choices: { cord: cords },
    fixed: { load: '200 N' },
    goals: { minimise: 'size' },
    constraints: { reserve: { min: 4 }, bend: { min: 10 } },
  })
  // thin is too weak (2), middle 4.5 with a drum of 16 mm: size 17.6 mm; thick 22 + 2.2 = 24.2 mm.
  expect(found.best.choices.cord).toBe('middle')
  expect(found.best.results.size!.in('mm' as never)).toBeCloseTo(17.6, 6)
  expect(found.toMarkdown()).toContain('| middle | 16 mm |')
  expect(found.agreement).toEqual({ searches: 3, agreeing: 3 })
})

test('the same seed gives the same bytes, and progress is told', () => {
  const seen: number[] = []
  const run = (seed: number) =>
    optimise(drive, {
      vary: { drum: { from: '5 mm', to: '100 mm' } },
      choices: { cord: cords },
      fixed: { load: '200 N' },
      goals: [{ minimise: 'size' }, { maximise: 'reserve' }],
      evaluations: 2000,
      seed,
      onProgress: (done) => seen.push(done),
    })
  expect(run(3).toMarkdown()).toBe(run(3).toMarkdown())
  expect(seen[0]).toBe(200)
  expect(new Set(run(3).front.map(({ choices }) => choices.cord))).toEqual(new Set(['thin', 'middle', 'thick']))
})

test('constraints that cannot be kept are said, with those that the nearest point breaks', () => {
  const found = optimise(drive, {
    vary: { drum: { from: '5 mm', to: '20 mm' } },
    choices: { cord: cords },
    fixed: { load: '200 N' },
    goals: { minimise: 'size' },
    constraints: { reserve: { min: 5 }, bend: { min: 12 } },
  })
  expect(found.state).toBe('infeasible')
  expect(found.best.violated.join()).toMatch(/at least/)
  expect(found.toMarkdown()).toContain('no point of')
})

test('an optimum at an end of a range is pointed out', () => {
  const found = optimise(slackTension, {
    vary: { wrapAngle: { from: '1 turn', to: '3 turn' } },
    fixed: { load: '500 N', friction: 0.2 },
    goals: { minimise: 'result' },
  })
  expect(found.best.results.result!.in('N' as never)).toBeCloseTo(500 * Math.exp(-1.2 * Math.PI), 9)
  expect(found.atLimits).toEqual(['wrapAngle at its upper end'])
})

const good = {
  vary: { drum: { from: '5 mm', to: '100 mm' } },
  choices: { cord: cords },
  fixed: { load: '200 N' },
  goals: { minimise: 'size' },
} as const
test.each([
  [() => optimise(drive, { ...good, vary: {}, choices: {} }), 'at least one input'],
  [
    () => optimise(drive, { ...good, vary: { drun: { from: '1 mm', to: '2 mm' } } as never }),
    'must be one of cord.strength, cord.diameter, drum, load; did you mean drum?',
  ],
  [() => optimise(drive, { ...good, vary: { drum: { from: '9 mm', to: '5 mm' } } }), 'a lower and a higher'],
  [() => optimise(drive, { ...good, vary: { drum: { from: '-9 mm', to: '5 mm' } } }), 'above 0'],
  [() => optimise(drive, { ...good, goals: { minimise: 'sice' as never } }), 'did you mean size?'],
  [() => optimise(drive, { ...good, goals: [] }), 'at least one goal'],
  [() => optimise(drive, { ...good, constraints: { size: {} } }), 'must be { min }, { max } or both'],
  [() => optimise(drive, { ...good, constraints: { size: { max: '5 N' as never } } }), 'N is a unit of force'],
  [
    () => optimise(drive, { ...good, choices: { cord: { ...cords, odd: { cord: { strength: '5 mm' as never, diameter: '1 mm' } } } } }),
    'choices.cord.odd',
  ],
  [() => optimise(drive, { ...good, fixed: {} }), 'load is missing'],
  [() => optimise(drive, { ...good, population: 3, seed: 0.5 }), '2 things to change'],
])('bad input %#', (call, message) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(message)
})
