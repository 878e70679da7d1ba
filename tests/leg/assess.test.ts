import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import manifest from '../../package.json' with { type: 'json' }
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { LOAD_CASES } from '../../src/leg/cases/events.js'
import { heatAt } from '../../src/leg/heat-under-motion.js'
import {
  assess,
  CASE_IDS,
  checkReserves,
  describeLeg,
  governingReserve,
  htmlReport,
  type LegNumbers,
  legDrawings,
  legNumbers,
  markdownReport,
  reportPictures,
  specificationHash,
  textReport,
  withFields,
} from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { heatedMotorOf } from '../../src/leg/parts/motors/heat.js'
import { caseState } from '../../src/leg/what-if.js'
import { motorState, motorStateAt } from '../../src/thermal/motor-heat.js'
import { InputError } from '../../src/units/index.js'
import { wordsOfHtml, wordsOfMarkdown, wordsOfText } from './words-of.js'

const read = (name: string) => readFileSync(new URL(`../../examples/mudflat-leg-${name}.yaml`, import.meta.url), 'utf8')
const first = describeLeg(read('first'))
const revised = describeLeg(read('revised'))
const firstVerdict = assess(first)
const revisedVerdict = assess(revised)

describe('the example', () => {
  test('the first design fails where it should: its printed plate gets too hot, its cord slips when it lands in the cold', () => {
    expect(firstVerdict.passes).toBe(false)
    // The cold opens the bolts of its print, which have no sleeves.
    expect(firstVerdict.governing).toMatchObject({ id: 'motorBolt.slip', case: 'coldTrot', reserve: 0 })
    expect(firstVerdict.checks.find(({ reserve }) => reserve > 0)).toMatchObject({ id: 'cord.slip', case: 'coldDrop' })
    const failing = new Set(firstVerdict.checks.filter(({ reserve }) => reserve < 1).map(({ id }) => id))
    for (const id of [
      'motor.plate',
      'motorBolt.slip',
      'cord.slack',
      'cord.slip',
      'cord.heat',
      'boss.split',
      'stackBolt.nut',
      'stackBolt.headPressure',
      'bearing.seat',
    ])
      expect(failing, id).toContain(id)
  })

  test('the revised design holds with the reserve it wants', () => {
    expect(revisedVerdict.passes).toBe(true)
    expect(revisedVerdict.meetsTarget).toBe(true)
    expect(revisedVerdict.coupling).toBe('settled')
  })

  test('at least 35 ways to fail are looked at, the hardest first', () => {
    expect(new Set(firstVerdict.checks.map(({ id }) => id)).size).toBeGreaterThanOrEqual(35)
    const ranks = firstVerdict.checks.map(({ reserve, requiredReserve }) => reserve / requiredReserve)
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
  })
})

describe('every check', () => {
  test.each(firstVerdict.checks.map((check) => [`${check.id} ${check.joint ?? ''}`, check] as const))('%s', (_, check) => {
    expect(check.demand.kind).toBe(check.capacity.kind)
    expect(check.reserve).toBeGreaterThanOrEqual(0)
    if (check.reserve < 1000 && check.demand.si > 0) expect(check.reserve).toBeCloseTo(Math.max(0, check.capacity.si / check.demand.si), 10)
    expect(check.sentence).toContain(check.caseTitle)
    expect(check.remedy.length).toBeGreaterThan(5)
    expect(check.range.worst).toBeLessThanOrEqual(check.reserve)
    expect(check.range.best).toBeGreaterThanOrEqual(check.reserve)
    for (const step of check.steps) {
      expect(step.source.length, step.formula).toBeGreaterThan(0)
      expect(JSON.stringify(step.results)).not.toMatch(/NaN|undefined/)
    }
  })

  test('can fail and can hold: no check is always the same over the two designs and a bad leg', () => {
    const bad = checkReserves(
      legNumbers(
        withFields(first, {
          'robot.mass': '60 kg',
          'usage.slope': '30 deg',
          'shafts.hip.innerTighteningTorque': '4 N m',
          'bolts.stack.tighteningTorque': '4 N m',
        }),
      ),
    )
    const good = checkReserves(legNumbers(revised))
    const moved = [...bad].filter(([key, reserve]) => good.has(key) && Math.abs(reserve / (good.get(key) as number) - 1) > 1e-6)
    const still = [...bad]
      .filter(([key]) => good.has(key))
      .map(([key]) => key)
      .filter((key) => !moved.some(([other]) => other === key))
    expect(still).toEqual([])
  })
})

describe('checks that only some legs need', () => {
  const ferrule = {
    'ends.tube': { length: '14 mm', socketDiameter: '2.2 mm', adhesive: 'flexible epoxy' },
    'joints.hip.drive.ends': 'bondedFerrule',
    'joints.hip.drive.end': 'tube',
  }
  const bondOf = (changes: Record<string, unknown>) => checkReserves(legNumbers(withFields(revised, changes))).get('ferrule.bond hip')

  test('a bonded ferrule: bare it peels, locked by a cone it holds far more', () => {
    const bare = bondOf(ferrule)
    const locked = bondOf({ ...ferrule, 'ends.tube.mechanicalLock': true })
    expect(bare).toBeGreaterThan(0)
    expect(locked).toBeGreaterThan(1.5 * (bare as number))
    expect(() => withFields(revised, { 'joints.hip.drive.ends': 'bondedFerrule' })).toThrow(
      /joints.hip.drive.end is missing; is needed because joints.hip.drive.ends/,
    )
  })

  test('registry drifts only where the travel uses up the wraps', () => {
    const wraps = (n: number) =>
      checkReserves(legNumbers(withFields(first, { 'joints.hip.drive.pinion.turns': n }))).get('cord.registry hip')
    expect(wraps(0)).toBeLessThan(1)
    expect(wraps(3)).toBeUndefined()
  })

  test('fields that nobody minds on this leg act on another: print settings, through bolts, bearing, inductance, hop height', () => {
    const reserve = (change: Record<string, unknown>, id: string) => {
      const all = checkReserves(legNumbers(Object.keys(change).length === 0 ? first : withFields(first, change)))
      return (all.get(id) ?? all.get(`${id} knee`)) as number
    }
    const bolted = {
      'joints.knee.drive.drum.throughBolts': 3,
      'joints.knee.drive.drum.throughBoltThread': 'M3',
      'joints.knee.drive.drum.throughBoltClampLoad': '30 N',
    }
    expect(reserve(bolted, 'drum.split')).toBeGreaterThan(1.05 * reserve({}, 'drum.split'))
    expect(reserve({ 'prints.default.walls': 2 }, 'boss.zone')).toBeLessThan(1)
    expect(reserve({ 'prints.default.walls': 2, 'prints.default.infill': 0.8 }, 'boss.zone')).toBe(1)
    expect(reserve({ 'prints.default.walls': 2, 'prints.default.lineWidth': '1.1 mm' }, 'boss.zone')).toBeGreaterThan(1)
    const poor = { own: { bore: '10 mm', outerDiameter: '22 mm', width: '6 mm', staticRating: '0.9 kN', dynamicRating: '60 N' } }
    const life = reserve({ 'bearings.hip.size': undefined, 'bearings.hip.own': poor.own }, 'bearing.life')
    // Life goes with the cube of the rating (ISO 281).
    const better = { own: { ...poor.own, dynamicRating: '120 N' } }
    expect(reserve({ 'bearings.hip.size': undefined, 'bearings.hip.own': better.own }, 'bearing.life') / life).toBeCloseTo(8, 10)
    expect(reserve({ 'motors.main.phaseInductance': '400 uH' }, 'motor.speed')).toBeLessThan(reserve({}, 'motor.speed'))
    expect(() => withFields(first, { 'motors.main.polePairs': undefined })).toThrow(/motors.main.polePairs is missing; is needed/)
    const hop = (height: string) =>
      assess(withFields(first, { 'loadCases.events.hop.height': height }), { cases: ['hop'] }).cases[0]?.footForce.si as number
    expect(hop('90 mm') / hop('0 mm')).toBeCloseTo(2, 12)
  })

  test('a retained bearing needs no press fit; sleeves spare the print under the heads', () => {
    const ids = new Set(revisedVerdict.checks.map(({ id }) => id))
    expect(ids).not.toContain('bearing.seat')
    expect(ids).not.toContain('stackBolt.headPressure')
    expect(new Set(firstVerdict.checks.map(({ id }) => id))).toContain('bearing.seat')
    expect(revisedVerdict.notEvaluated.map(({ id }) => id)).toContain('bearing.seat')
  })
})

describe('heat', () => {
  test('settles at a fixed point where heat in is heat out, in every warm load case', () => {
    const leg = legModel(legNumbers(revised))
    const calculation = calculationOf(leg.x)
    for (const id of ['stand', 'walk', 'trot', 'hotAfternoon', 'slope'] as const) {
      const state = caseState(leg, id)
      for (const joint of ['hip', 'knee'] as const) {
        const { heat } = state.joints[joint]
        expect(heat.loss).toBeCloseTo(0.75 * heat.heatingCurrent ** 2 * heat.resistance, 8)
        const { event, air } = LOAD_CASES[id]
        const asked = calculation.get(heatedMotorOf, placeOf(calculation, { joint, event, air }) as never)
        const { surplus } = motorStateAt(asked, heat.mount, motorState())
        expect(Math.abs(surplus)).toBeLessThan(1e-7)
      }
    }
  })

  describe('a stall of a stated time', () => {
    const leg = legModel(legNumbers(revised))
    const motion = caseState(leg, 'stallBack').joints.knee.motion
    const ask = { joint: 'knee', motion, air: 313.15, wind: 0, heating: 'held' } as const
    const stalled = (heldFor: number, more: object = {}) => heatAt(leg, { ...ask, heldFor, ...more })
    const settled = heatAt(leg, ask)
    const walked = Math.max(...(['hotAfternoon', 'hotWalkBack'] as const).map((id) => caseState(leg, id).joints.knee.heat.mount))

    test('begins with what a walk has left, grows hotter with time, and ends where temperatures settle', () => {
      const soon = stalled(1)
      expect(soon.mount - walked).toBeGreaterThan(0)
      expect(soon.mount - walked).toBeLessThan(soon.loss / (0.41 * 450))
      let last = walked
      for (const time of [10, 60, 300, 1200, 3600, 7200]) {
        const { mount } = stalled(time)
        expect(mount).toBeGreaterThan(last)
        last = mount
      }
      expect(last).toBeLessThan(settled.mount + 0.05)
      expect(Math.abs(stalled(1e6).mount - settled.mount)).toBeLessThan(0.05)
      expect(Math.abs(stalled(1e6).winding - settled.winding)).toBeLessThan(0.05)
    })

    test('that bears less than the walk is as hot as where it begins', () => {
      const gentle = { motion: caseState(leg, 'stand').joints.knee.motion }
      expect(heatAt(leg, { ...ask, ...gentle }).mount).toBeLessThan(walked)
      for (const time of [1, 600]) {
        expect(stalled(time, gentle).mount).toBeCloseTo(walked, 9)
        expect(stalled(time, gentle).winding).toBe(stalled(1e5, gentle).winding)
      }
    })

    test('the sink takes up its part behind the contact', () => {
      const bigger = legModel(legNumbers(withFields(revised, { 'sink.thickness': '8 mm' })))
      const riseOf = (one: typeof leg) => heatAt(one, { ...ask, heldFor: 600 }).mount - heatAt(one, { ...ask, heldFor: 1 }).mount
      expect(riseOf(bigger)).toBeLessThan(0.9 * riseOf(leg))
    })

    test('what would run away in the end bears a short stall', () => {
      const hot = legModel(legNumbers(first))
      const of = (joint: 'hip' | 'knee', heldFor?: number) =>
        heatAt(hot, {
          ...ask,
          joint,
          air: 293.15,
          motion: caseState(hot, 'stallBack').joints[joint].motion,
          ...(heldFor === undefined ? {} : { heldFor }),
        })
      expect(of('hip').unsettled).toBeDefined()
      expect(of('hip', 60).unsettled).toBeUndefined()
      expect(of('hip', 60).mount).toBeLessThan(385)
      expect(of('hip', 1e5).unsettled).toMatch(/stall time/)
      expect(of('knee', 60).unsettled).toMatch(/the walk before the stall has no steady temperature/)
    })
  })

  test('a loop that comes to no rest is named, and nothing is made up', () => {
    const x = legNumbers(first)
    const verdict = assess(withFields(first, { 'motors.main.terminalResistance': '2 ohm' }))
    expect(verdict.coupling).toBe('unsettled')
    expect(verdict.unsettled[0]?.loop).toMatch(/copper loss/)
    expect(verdict.checks.find(({ id, joint }) => id === 'motor.runaway' && joint === 'knee')?.reserve).toBeLessThan(1)
    const stall = verdict.cases.find(({ id }) => id === 'stall')
    expect(stall?.joints.knee.windingTemperature).toBeUndefined()
    expect(JSON.stringify(verdict.cases)).not.toMatch(/NaN/)
    expect(x.motors.main!.terminalResistance).toBe(0.1)
  })
})

const withAir = (n: LegNumbers, name: string, change: (air: LegNumbers['loadCases']['airs'][string]) => object) =>
  ({ ...n, loadCases: { ...n.loadCases, airs: { ...n.loadCases.airs, [name]: change(n.loadCases.airs[name]!) } } }) as LegNumbers
const withEvent = (n: LegNumbers, name: string, change: (event: { height: number; angle: number }) => object) =>
  ({
    ...n,
    loadCases: { ...n.loadCases, events: { ...n.loadCases.events, [name]: change(n.loadCases.events[name] as never) } },
  }) as LegNumbers

describe('more of anything bad never improves its own reserve', () => {
  const x = legNumbers(first)
  const harder: readonly [string, (x: LegNumbers, f: number) => LegNumbers, readonly string[]][] = [
    [
      'mass',
      (n, f) => ({ ...n, robot: { ...n.robot, mass: n.robot.mass * f } }),
      [
        'cord.slack knee',
        'cord.slip knee',
        'cord.working knee',
        'pin.bending knee',
        'pin.shear hip',
        'boss.netSection knee',
        'boss.tearOut hip',
        'upperLink.bending',
        'lowerLink.fatigue',
        'motor.current knee',
        'motor.plate hip',
        'motor.runaway knee',
        'sidewaysHip.hold',
        'stackBolt.separation',
        'toe.strain',
        'shaft.bending',
        'drum.layers knee',
      ],
    ],
    [
      'hot air',
      (n, f) => withAir(n, 'hot', (air) => ({ ...air, temperature: air.temperature + 5 * (f - 1) })),
      ['motor.plate hip', 'cord.heat hip', 'stackBolt.headPressure', 'bearing.seat'],
    ],
    [
      'strides',
      (n, f) => ({ ...n, usage: { ...n.usage, stridesPerDay: n.usage.stridesPerDay * f } }),
      ['boss.fatigue knee', 'lowerLink.fatigue'],
    ],
    [
      'drop height',
      (n, f) => withEvent(n, 'drop', (event) => ({ ...event, height: event.height * f })),
      ['cord.peak knee', 'pin.bending knee', 'lowerLink.bending', 'motor.current knee'],
    ],
    ['slope', (n, f) => withEvent(n, 'slopeUp', (event) => ({ ...event, angle: event.angle * f })), ['ground.slip', 'robot.tipOver']],
    [
      'hole scatter',
      (n, f) => ({ ...n, bosses: { ...n.bosses, kneeBoss: { ...n.bosses.kneeBoss!, holeScatter: n.bosses.kneeBoss!.holeScatter * f } } }),
      ['boss.split knee', 'boss.fitScatter knee'],
    ],
    [
      'tightening torque',
      (n, f) => ({ ...n, bolts: { ...n.bolts, stack: { ...n.bolts.stack!, tighteningTorque: n.bolts.stack!.tighteningTorque * f } } }),
      ['stackBolt.tightening', 'stackBolt.nut', 'stackBolt.headPressure'],
    ],
    [
      'winding resistance',
      (n, f) => ({ ...n, motors: { main: { ...n.motors.main!, terminalResistance: n.motors.main!.terminalResistance * f } } }),
      ['motor.plate hip', 'motor.runaway knee', 'motor.speed knee'],
    ],
  ]
  test.each(harder)('%s', (_, change, keys) => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1.6, noNaN: true }), fc.double({ min: 1, max: 1.6, noNaN: true }), (a, b) => {
        const [little, much] = [checkReserves(change(x, Math.min(a, b))), checkReserves(change(x, Math.max(a, b)))]
        for (const key of keys) {
          expect(little.has(key), key).toBe(true)
          // A check that heat takes out of the table has not improved: the plate's own check stands in for it.
          if (much.has(key)) expect(much.get(key) as number, key).toBeLessThanOrEqual((little.get(key) as number) * (1 + 1e-6))
        }
      }),
      { numRuns: 25 },
    )
  })
})

describe('manners', () => {
  test('the fast form agrees with the explained one', () => {
    const quick = governingReserve(legNumbers(first))
    // Several joints of bolts open in the cold: of equal margins either form may name another.
    const least = firstVerdict.checks.filter((check) => check.reserve === firstVerdict.governing.reserve)
    expect(
      least.map(({ id, joint, reserve, requiredReserve }) => ({ id, joint: joint ?? 'hip', reserve, margin: reserve / requiredReserve })),
    ).toContainEqual({
      id: quick.id,
      joint: quick.joint,
      reserve: quick.reserve,
      margin: quick.margin,
    })
    // A geometric check asks less than a general one, so that the least reserve need not be the least margin.
    const good = governingReserve(legNumbers(revised))
    expect(good.reserve).toBe(revisedVerdict.governing.reserve)
    expect(good.reserve).toBeGreaterThan(Math.min(...revisedVerdict.checks.map((check) => check.reserve)))
  })

  test('the same leg gives the same reports byte for byte, whatever the order of its sections', () => {
    const shuffled = describeLeg(Object.fromEntries(Object.entries(revised).reverse()) as never)
    expect(markdownReport(assess(shuffled))).toBe(markdownReport(revisedVerdict))
    expect(htmlReport(assess(revised))).toBe(htmlReport(revisedVerdict))
  })

  test('load cases can be chosen; an unknown one is refused', () => {
    expect(assess(first, { cases: ['stand'] }).checks.every((check) => check.case === 'stand')).toBe(true)
    expect(() => assess(first, { cases: ['fly' as never] })).toThrow(InputError)
    expect(() => assess(first, { cases: [] })).toThrow(/that a check applies to/)
    expect(CASE_IDS).toHaveLength(11)
  })

  test('a foot path beyond reach fails by name', () => {
    const long = withFields(first, { 'gaits.walk.stepLength': '500 mm' })
    const reach = assess(long).checks.find(({ id }) => id === 'leg.reach')
    expect(reach?.reserve).toBeLessThan(1)
  })
})

describe('reports', () => {
  const html = htmlReport(firstVerdict)
  test('one page that needs no network, and allows nothing but its own style and script', () => {
    expect(html).not.toMatch(/https?:\/\/(?!github\.com)|src=|@import|<link/)
    const policy = /content="(default-src 'none'[^"]*)"/.exec(html)?.[1]
    const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`
    const [script] = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(([, text]) => text as string)
    expect(policy).toContain(`script-src ${hash(script as string)};`)
    for (const [, style] of html.matchAll(/<style>([\s\S]*?)<\/style>/g)) expect(policy).toContain(hash(style as string))
    expect(html).not.toMatch(/ style="| on\w+="/)
    const nasty = describeLeg({ ...first, name: '<img onerror=x> & "leg" </style><b>' } as never)
    const page = htmlReport(assess(nasty, { cases: ['stand'] }))
    expect(page).not.toContain('<img')
    expect(page).not.toContain('<b>')
  })

  test('structure for readers: language, headings, captions, scopes, folds that are open without the script', () => {
    expect(html).toMatch(/<html lang="en">/)
    expect(html.match(/<h1>/g)).toHaveLength(1)
    // A folded table has its summary for a caption, a table of steps the heading of its formula.
    const folded = html.match(/<summary>Numbers of this picture<\/summary><div class=wide><table>/g) ?? []
    const steps = html.match(/<thead><tr><th>step</g) ?? []
    expect(html.match(/<table[ >]/g)?.length).toBe((html.match(/<caption>/g)?.length ?? 0) + folded.length + steps.length)
    expect(html.match(/<details/g)).toHaveLength(folded.length)
    expect(html.match(/<details/g)?.length).toBe(html.match(/<details open>/g)?.length)
    expect(html).toMatch(/prefers-color-scheme: dark/)
    expect(html).toMatch(/@media print/)
    const levels = [...html.matchAll(/<h([1-6])[ >]/g)].map(([, level]) => Number(level))
    for (const [i, level] of levels.entries()) if (i > 0) expect(level - levels[i - 1]!).toBeLessThanOrEqual(1)
    for (const tag of ['table', 'details', 'figure', 'div', 'section', 'ul', 'ol', 'span'])
      expect(html.match(new RegExp(`<${tag}[ >]`, 'g'))?.length, tag).toBe(html.match(new RegExp(`</${tag}>`, 'g'))?.length)
  })

  test('every link leads to one place of the page, and contents name every part', () => {
    const ids = [...html.matchAll(/ id="?([^"\s>]+)/g)].map(([, id]) => id)
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([])
    const known = new Set(ids)
    const targets = [...html.matchAll(/href="?#([^"\s>]+)/g)].map(([, id]) => id)
    expect(targets.length).toBeGreaterThan(15)
    expect(targets.filter((id) => !known.has(id as string))).toEqual([])
    const parts = [...html.matchAll(/<h2 id="[^"]*">([^<]*)</g)].map(([, title]) => title)
    expect([...html.matchAll(/<li><a href="#[^"]+">([^<]*)</g)].map(([, title]) => title)).toEqual(expect.arrayContaining(parts))
  })

  test('HTML, Markdown and plain text have the same words in the same order', () => {
    for (const verdict of [firstVerdict, revisedVerdict])
      for (const steps of ['all', 'decisive'] as const) {
        const words = wordsOfHtml(htmlReport(verdict, { steps, date: '2026-03-31' }))
        expect(wordsOfMarkdown(markdownReport(verdict, { steps, date: '2026-03-31' }))).toEqual(words)
        expect(wordsOfText(textReport(verdict, { steps, date: '2026-03-31' }))).toEqual(words)
      }
  })

  test('sizes for a phone and a mailbox', async () => {
    const drawings = legDrawings(revisedVerdict, { style: 'page' })
    const whole = htmlReport(revisedVerdict, { drawings, pictures: await reportPictures(revisedVerdict) })
    expect(Buffer.byteLength(whole)).toBeLessThan(480_000)
    for (const verdict of [firstVerdict, revisedVerdict]) {
      expect(Buffer.byteLength(htmlReport(verdict))).toBeLessThan(400_000)
      // Bolts in the cold rest on the heat of the hottest days, either way: its steps stand on the sheet too.
      expect(Buffer.byteLength(markdownReport(verdict))).toBeLessThan(120_000)
    }
  })

  test('the title block has leg, hash, version, date and room to sign; other options are refused', () => {
    const signed = markdownReport(revisedVerdict, { date: '2026-03-31', by: 'A. Builder' })
    expect(signed).toContain('|Leg|Mudflat walker, left front leg, revised design|')
    expect(signed).toContain(`SHA-256 ${specificationHash(revised)}`)
    expect(signed).toContain(`limbwright ${manifest.version};`)
    expect(signed).toContain('|Date|2026-03-31|\n|Calculated by|A. Builder|\n|Checked by||')
    expect(() => markdownReport(revisedVerdict, { dat: 'x' } as never)).toThrow(/did you mean date/i)
    expect(() => markdownReport(revisedVerdict, { steps: 'some' } as never)).toThrow(/all or decisive/)
  })

  test('the hash is that of the fields, however they were written', () => {
    expect(specificationHash(describeLeg(Object.fromEntries(Object.entries(revised).reverse()) as never))).toBe(specificationHash(revised))
    expect(specificationHash(first)).not.toBe(specificationHash(revised))
    const heavier = describeLeg({ ...revised, robot: { ...revised.robot, mass: '10.51 kg' } } as never)
    expect(specificationHash(heavier)).not.toBe(specificationHash(revised))
  })

  test('cautions, the whole specification, reasons of what was filled in, and what to measure are there', () => {
    for (const report of [html, markdownReport(firstVerdict)]) {
      expect(report).toMatch(/stores energy/)
      expect(report).toMatch(/Assumptions/)
      expect(report).toMatch(/82\.72 mm/)
      expect(report).toMatch(/(<th colspan=4>|\*\*)joints, hip, drive(?:\*\*|<)(?:(?!<th|\*\*)[\s\S])*efficiency/)
      expect(report).toMatch(/one stage of cord drive \(common practice\)/)
      expect(report).toMatch(/What to measure first/)
    }
  })

  test('readers see words: no id of a check, a load case or a formula', () => {
    const text = wordsOfText(textReport(firstVerdict, { steps: 'all' })).join(' ')
    for (const { id } of firstVerdict.checks) expect(text).not.toContain(id)
    const ids =
      /\b(hotAfternoon|coldMorning|slopeDown|walkBack|refused)\b|\b(materials|fasteners|capstan|thermal|structures|kinematics|leg)\.[a-z]/g
    expect(text.match(ids) ?? []).toEqual([])
  })

  test('both name the load case that is hardest after that of a check by title', () => {
    const [other] = firstVerdict.governing.otherCases
    const { title } = firstVerdict.cases.find(({ id }) => id === other?.case)!
    for (const report of [html, markdownReport(firstVerdict)])
      expect(report).toContain(`Next: ${title.charAt(0).toLowerCase()}${title.slice(1)} `)
  })
})
