import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { assemblyPlan, assemblyText, assess, describeLeg, htmlPlans, shoppingCsv, withFields } from '../../src/leg/index.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { screwBetween } from '../../src/leg/plans/catalogue-lengths.js'
import { pinCut } from '../../src/leg/plans/pin-cut.js'
import { shown } from '../../src/leg/plans/sheet-units.js'
import { shareLeft } from '../../src/leg/plans/tensioning.js'
import { InputError } from '../../src/units/index.js'

const leg = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))
const plan = assemblyPlan(leg)

describe('against calculations by hand', () => {
  // Shigley 9th ed., eq. 17-3: length of a crossed belt, sqrt(4C² - (D+d)²) + (D+d)θ/2 with θ = π + 2 asin((D+d)/2C).
  test('the way of the hip cord is a crossed belt with three more turns along a helix of 2 mm', () => {
    const [C, D, d] = [74, 99.2, 16]
    const theta = Math.PI + 2 * Math.asin((D + d) / (2 * C))
    const belt = Math.sqrt(4 * C * C - (D + d) ** 2) + ((D + d) * theta) / 2
    const wrap = theta + 3 * 2 * Math.PI
    // The arc on the pinion is a helix: hypotenuse of circumference and pitch.
    const helix = wrap * Math.hypot(d / 2, 2 / (2 * Math.PI))
    const way = belt - (d / 2) * theta + helix
    const hip = plan.cuts.cords[0]!
    expect(hip.workingLength.in('mm')).toBeCloseTo(way, 9)
    // 2 mm of slack, a tail of 150 mm and a splice of 72 cords of 1.6 mm at each end.
    expect(hip.cutLength.in('mm')).toBeCloseTo(way + 2 + 2 * (150 + 72 * 1.6), 9)
    expect(hip.clampAt?.si).toBeCloseTo(hip.cutLength.si / 2, 12)
    expect(plan.windings[0]!.pinionTurns.si).toBeCloseTo(wrap / (2 * Math.PI), 12)
    // Each branch has half of the drum's arc at mid travel, and loses half of 130 degrees of travel at one end.
    expect(plan.windings[0]!.leastDrumWrap.in('deg')).toBeCloseTo((theta * 90) / Math.PI - 65, 9)
  })

  test('the tensioner turns are the slack and the stretch over a pitch of 0.5 mm', () => {
    const hip = plan.tensioners[0]!
    const stretch = (plan.cuts.cords[0]!.workingLength.in('mm') * 185) / 24e3
    expect(hip.turnsToStart.si).toBeCloseTo(2 / 0.5, 10)
    expect(hip.turnsToSet.si).toBeCloseTo(stretch / 0.5, 10)
    expect(hip.set.in('mm')).toBeCloseTo(2 + stretch, 10)
    expect(hip.tensionPerTurn.si * hip.turnsToSet.si).toBeCloseTo(185, 9)
    // Shigley 9th ed., eq. 8-5 and 8-6: F dm/2 (l + π f dm sec α)/(π dm - f l sec α) + F fc dc/2, with M3 (dm 2.675 mm) and 30 degrees.
    const [F, dm, l, f] = [185, 2.675, 0.5, 0.14 / Math.cos(Math.PI / 6)]
    const thread = ((F * dm) / 2) * ((l + Math.PI * f * dm) / (Math.PI * dm - f * l))
    const collar = hip.screwTorque.in('N mm') - thread
    // Least bearing diameter 5.07 mm (ISO 4762) and clearance hole 3.4 mm (ISO 273): mean 4.235 mm.
    expect(collar).toBeCloseTo((F * 0.14 * 4.235) / 2, 1)
  })

  test('pins, tap drill and bolts', () => {
    // 14 mm of lug, two gaps of 0.3 mm, two bosses of 11 mm.
    expect(plan.cuts.pins[0]!.length.in('mm')).toBeCloseTo(36.6, 10)
    // Core hole of M4: 3.3 mm (ISO 2306 and every drill chart).
    expect(plan.cuts.shaft!.tapDrill.in('mm')).toBeCloseTo(3.3, 10)
    // Half of a bearing 8 mm wide, 30 mm between the middles of the bearings, 28 mm on to the plane of the leg.
    expect(plan.cuts.shaft!.leastLength.in('mm')).toBeCloseTo(62, 10)
    // M4 through 15 mm with two washers of 0.8 mm (ISO 7089), a nut of 3.2 mm (ISO 4032) and two pitches of 0.7 mm.
    expect(plan.cuts.bolts[1]!.leastLength.in('mm')).toBeCloseTo(15 + 1.6 + 3.2 + 1.4, 10)
    // m6 on 4 mm: +4 to +12 µm (ISO 286-2), mean 8 µm, in a hole of 3.976 mm.
    expect(plan.presses[0]!.interference.in('µm')).toBeCloseTo(32, 9)
  })
})

describe('what holds for every leg', () => {
  test('more pretension asks for more turns, in proportion, and moves nothing else of the cut', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 300, noNaN: true }), (pull) => {
        const other = assemblyPlan(withFields(leg, { 'drives.knee.pretension': [pull, 'N'] }))
        expect(other.tensioners[1]!.turnsToSet.si / plan.tensioners[1]!.turnsToSet.si).toBeCloseTo(pull / 185, 9)
        expect(other.cuts).toEqual(plan.cuts)
      }),
      { numRuns: 20 },
    )
  })

  test('spans that do not cross turn the pinion the other way, the drum not', () => {
    const open = assemblyPlan(withFields(leg, { 'drives.hip.arrangement': 'open' })).windings[0]!
    const crossed = plan.windings[0]!
    for (const side of [0, 1] as const) {
      expect(open.branches[side].onDrum).toBe(crossed.branches[side].onDrum)
      expect(open.branches[side].onPinion).not.toBe(crossed.branches[side].onPinion)
      expect(open.branches[side].onPinion).toBe(open.branches[side].onDrum)
    }
    expect(crossed.branches[0].onDrum).not.toBe(crossed.branches[1].onDrum)
  })

  test('a tail that is longer by 10 mm makes the cut longer by 20 mm', () => {
    const longer = assemblyPlan(leg, { tail: '160 mm' }).cuts.cords[0]!
    expect(longer.cutLength.in('mm') - plan.cuts.cords[0]!.cutLength.in('mm')).toBeCloseTo(20, 9)
  })

  test('preloads are those of the verdict, and clamp load and pretension only fall with time', () => {
    const check = assess(leg, { cases: ['stand'] }).checks.find(({ id }) => id === 'stackBolt.tightening')
    expect(plan.tightening[2]!.preload.si).toBe(check?.demand.si)
    const bare = assemblyPlan(withFields(leg, { 'bolts.stack.sleeves': false })).tightening[2]!
    expect(bare.afterDay!.si).toBeLessThan(1)
    expect(bare.afterWeek!.si).toBeLessThan(bare.afterDay!.si)
  })

  test('the check of a tensioner takes up what the plan does, at the worst of cold and hot', () => {
    const { checks } = assess(leg)
    for (const { joint, end } of plan.tensioners) {
      const check = checks.find((one) => one.id === 'tensioner.travel' && one.joint === joint)
      expect(check?.demand.si).toBeCloseTo(end.si, 15)
    }
    expect(plan.tensioners).toHaveLength(2)
  })

  test('what does not go together is said first', () => {
    const short = assemblyPlan(withFields(leg, { 'drives.hip.tensioner.travel': '5 mm', 'bosses.knee.hole': '4.1 mm' }))
    expect(short.problems.join('\n')).toMatch(/hip: the tensioner needs .* and has 5 mm/)
    expect(short.problems.join('\n')).toMatch(/knee: the pin is loose/)
    expect(plan.problems).toEqual([])
    expect(assemblyText(short).indexOf('does not go together')).toBeLessThan(assemblyText(short).indexOf('Cut list'))
  })

  test('bonded ends get their step with its cautions, others do not', () => {
    const bonded = assemblyPlan(
      withFields(leg, {
        'drives.hip.ends': 'bondedFerrule',
        'ends.tube': { length: '12 mm', socketDiameter: '2 mm', adhesive: 'toughened epoxy' },
        'joints.hip.drive.end': 'tube',
      }),
    )
    expect(bonded.bonds).toHaveLength(1)
    expect(bonded.bonds[0]!.gap.in('mm')).toBeCloseTo(0.2, 10)
    expect(bonded.steps.join('\n')).toMatch(/ventilation/)
    expect(plan.bonds).toEqual([])
    expect(bonded.cautions.join('\n')).toMatch(/only thing/)
  })

  test('options of the wrong kind are refused', () => {
    expect(() => assemblyPlan(leg, { tail: '3 N' as never })).toThrow(InputError)
    expect(() => assemblyPlan(leg, { beddingStrain: '3 mm' as never })).toThrow(InputError)
    expect(() => assemblyPlan(leg, { tail: '-150 mm', beddingStrain: '-1 %', motorThreadDepth: '0 mm' })).toThrow(
      /tail[\s\S]*beddingStrain[\s\S]*motorThreadDepth/,
    )
  })
})

describe('what a workshop needs besides the drawing', () => {
  test('pins come from the catalogue: one that ends just inside its bosses, or one that sticks out', () => {
    // 36.6 mm: 35 mm leaves 0.8 mm of each boss of 11 mm empty, less than a tenth.
    expect(plan.cuts.pins[0]).toMatchObject({ fit: expect.stringContaining('inside each boss') })
    expect(plan.cuts.pins[0]!.catalogue!.in('mm')).toBeCloseTo(35, 9)
    const long = assemblyPlan(withFields(leg, { 'pins.hip.lugThickness': '17 mm' })).cuts.pins[0]!
    expect(long.catalogue!.in('mm')).toBeCloseTo(40, 9)
    expect(long.fit).toMatch(/sticks out by 0.4 mm/)
  })

  test('a screw into a motor has a longest length, and none is bought that passes it', () => {
    const motor = plan.cuts.bolts[0]!
    // 11 mm of stack, a washer of 0.5 mm (ISO 7089, M3), a thread of 3 mm at least and 4.5 mm at most.
    expect(motor.leastLength.in('mm')).toBeCloseTo(14.5, 9)
    expect(motor.mostLength!.in('mm')).toBeCloseTo(16, 9)
    expect(motor.catalogue!.in('mm')).toBeCloseTo(16, 9)
    expect(plan.cuts.bolts[1]!.mostLength).toBeUndefined()
    fc.assert(
      fc.property(fc.double({ min: 2, max: 12, noNaN: true }), (depth) => {
        const other = assemblyPlan(leg, { motorThreadDepth: [depth, 'mm'] })
        const { catalogue, mostLength } = other.cuts.bolts[0]!
        if (catalogue === undefined) expect(other.problems.join()).toMatch(/screws of/)
        else expect(catalogue.si).toBeLessThanOrEqual(mostLength!.si + 1e-9)
      }),
      { numRuns: 15 },
    )
    expect(assemblyPlan(leg, { motorThreadDepth: '3 mm' }).problems.join()).toMatch(/none is sold from 14.5 mm to 14.5 mm/)
  })

  test('the depth of the tapped holes of the document limits the screw, as it does in the assessment', () => {
    const [motor] = Object.keys(leg.motors)
    const shallow = assemblyPlan(withFields(leg, { [`motors.${motor}.tapDepth`]: '3.2 mm' }))
    // 11 mm of stack, a washer of 0.5 mm, and the hole.
    expect(shallow.cuts.bolts[0]!.mostLength!.in('mm')).toBeCloseTo(14.7, 9)
    expect(shallow.cuts.bolts[0]!.catalogue).toBeUndefined()
    expect(shallow.assumed.find(({ what }) => what === 'depth of the threads in the motor')!.value).toBe('3.2 mm')
  })

  test('cords have a length to keep and loads in newtons', () => {
    for (const [i, check] of plan.checks.entries()) {
      expect(check.beddingLoad.in('N')).toBeCloseTo(2300 / 3, 9)
      expect(check.longest.si - check.shortest.si).toBeCloseTo(0.002 + plan.tensioners[i]!.spare.si, 12)
      expect(check.proofLoad.si).toBeGreaterThan(plan.tensioners[i]!.pretension.si)
      expect(check.proofLoad.si).toBeLessThan(2300 / 2)
    }
    expect(plan.steps.join('\n')).toContain(String(plan.checks[0]!.proofLoad))
    // A third of 2.3 kN, over 9.80665.
    expect(plan.steps.join('\n')).toContain('78.2 kg on a scale')
  })

  test('the shopping list is CSV with every screw, pin and cord', () => {
    const csv = shoppingCsv(plan)
    const lines = csv.trim().split('\n')
    expect(lines[0]).toBe('item,size,quantity,remark')
    expect(lines.length).toBe(1 + plan.shopping.length)
    for (const part of ['M3 x 16 mm', 'never longer than 16 mm', 'ISO 8734 4 mm m6 x 35 mm', 'LCP']) expect(csv).toContain(part)
    const odd = shoppingCsv({ shopping: [{ item: 'a "b"', size: 'c, d', quantity: '1', remark: '' }] })
    expect(odd).toBe('item,size,quantity,remark\n"a ""b""","c, d",1,\n')
  })

  test('the sheet numbers the screws in the order of tightening, each with its last pass on a lever of 100 mm', () => {
    const rows = assemblyText(plan)
      .split('\n')
      .filter((line) => /^\|\d+\|.*\|[\d.]+ k?g on a scale\|/.test(line))
    expect(rows.map((line) => line.split('|').slice(1, 4))).toEqual(
      plan.tightening.map(({ what, count, thread }, i) => [String(i + 1), what, `${count} × ${thread}`]),
    )
    // 1.2 N m on 100 mm are 12 N, over 9.80665 m/s².
    expect(rows[2]).toContain('|1.22 kg on a scale|')
  })

  test('coupons come first, and every reading that is off has a cure', () => {
    expect(plan.steps[0]).toMatch(/coupons first/)
    expect(plan.coupons.length).toBeGreaterThan(4)
    for (const { reading, means, cure } of plan.troubles) expect(Math.min(reading.length, means.length, cure.length)).toBeGreaterThan(10)
    const text = assemblyText(plan)
    for (const part of [
      'Coupons first',
      'When a reading is off',
      'Shopping list',
      'never longer than',
      'shorts the winding',
      'lever of 100 mm',
    ])
      expect(text).toContain(part)
  })
})

describe('the picture of each winding', () => {
  const page = htmlPlans(leg)
  test('one for each drum, with senses, turns and wraps of the plan', () => {
    for (const { joint, halfTurns, leastDrumWrap, layAt } of plan.windings) {
      const figure = page.slice(page.indexOf(`<figure id=winding-${joint}>`))
      const own = figure.slice(0, figure.indexOf('</figure>'))
      expect(own).toMatch(/<svg [^>]*class="?drawing/)
      expect(own).toContain(`Lay the cord with the ${joint} held at ${shown(layAt)}`)
      expect(own).toContain('lies counter-clockwise on the drum and clockwise on the pinion')
      expect(own).toContain(`Lay ${Number(halfTurns.si.toPrecision(3))} turns to each side`)
      expect(own).toContain(`${Math.round(leastDrumWrap.in('deg'))}° of wrap`)
    }
  })

  test('open spans wind alike on drum and pinion, and a cord without a clamp is marked in its middle', () => {
    const open = htmlPlans(withFields(leg, { 'joints.hip.drive.arrangement': 'open', 'joints.hip.drive.hold': 'frictionOnly' }))
    expect(open).toContain('counter-clockwise on the drum and counter-clockwise on the pinion')
    expect(open).toContain('marked with a pen')
  })
})

test('a pinion that unwinds to its clamp is a problem, with the turns that it needs', () => {
  // 115 degrees of a knee at 5.6 are 1.79 turns of the pinion, 0.89 to each side, and half a turn is to be left.
  const few = assemblyPlan(withFields(leg, { 'joints.knee.drive.pinion.turns': 1 }))
  const { leastTurns, pinionTurns } = few.windings[1]!
  expect(leastTurns!.si).toBeCloseTo((pinionTurns.si - (115 * 5.6) / 360) / 2, 9)
  expect(few.problems.join()).toMatch(/knee: .*unwinds to its clamp.*give it 1\.4 turns to each side/)
  expect(assemblyPlan(leg).problems.join()).not.toMatch(/unwinds to its clamp/)
})

describe('lengths of the catalogue', () => {
  const mm = (x: number | undefined) => (x === undefined ? undefined : Math.round(x * 1e6) / 1e3)

  test('a pin that just fits is bought as it is, one that may be a tenth short in each boss as the shorter one, else the longer one', () => {
    const cut = (between: number, engagement: number) => pinCut('knee', 'ISO 8734 4 mm m6', between / 1000, engagement / 1000)
    const bought = (between: number, engagement: number) => {
      const { catalogue, length, fit } = cut(between, engagement)
      expect(length.in('mm')).toBeCloseTo(between + 2 * engagement, 9)
      return [catalogue === undefined ? undefined : mm(catalogue.si), fit]
    }
    expect(bought(10, 10)).toEqual([30, 'fills both bosses'])
    // 34 mm between 32 mm and 35 mm: a tenth of 10.1 mm is enough for 1 mm at each end, a tenth of 9.9 mm is not.
    expect(bought(13.8, 10.1)).toEqual([32, 'ends 1 mm inside each boss'])
    expect(bought(14.2, 9.9)).toEqual([35, expect.stringContaining('sticks out by 1 mm')])
    expect(bought(1, 1)).toEqual([6, expect.stringContaining('sticks out by 3 mm')])
    expect(bought(80, 11)[0]).toBe(100)
    expect(bought(90, 15)).toEqual([undefined, expect.stringContaining('cut a longer rod')])
  })

  test('a screw is the shortest that reaches, and none where the next one is too long', () => {
    const screw = (least: number, most: number) => mm(screwBetween(least / 1000, most / 1000))
    expect([screw(11.2, 30), screw(12, 12), screw(12.5, 15.5), screw(0, 4), screw(121, 200), screw(4, 200)]).toEqual([
      12,
      12,
      undefined,
      undefined,
      undefined,
      5,
    ])
  })

  test('whatever is needed, the pin that is bought fills nine tenths of each boss', () => {
    const size = fc.double({ min: 1, max: 40, noNaN: true })
    fc.assert(
      fc.property(size, size, (between, engagement) => {
        const { catalogue, length } = pinCut('hip', 'pin', between / 1000, engagement / 1000)
        if (catalogue === undefined) expect(length.in('mm')).toBeGreaterThan(100)
        else expect((length.si - catalogue.si) / 2).toBeLessThanOrEqual(0.1 * (engagement / 1000) + 1e-9)
      }),
    )
  })
})

describe('a pretension after a time', () => {
  const bench = benchLeg(leg)

  test('loses nothing in the first hour, and after a year what the document says', () => {
    expect(shareLeft(bench, 'knee', 60)).toBe(1)
    expect(shareLeft(bench, 'knee', 3600)).toBe(1)
    expect(shareLeft(bench, 'knee', 31_557_600)).toBeCloseTo(0.9, 12)
    expect(shareLeft(bench, 'knee', 31_557_600, 0.7)).toBeCloseTo(0.7, 12)
  })

  test('falls steadily, the faster the less is left in the end', () => {
    const day = (share?: number) => shareLeft(bench, 'knee', 86_400, share)
    expect(day()).toBeLessThan(1)
    expect(day()).toBeGreaterThan(0.9)
    expect(day(0.7)).toBeLessThan(day())
    expect(shareLeft(bench, 'knee', 7 * 86_400)).toBeLessThan(day())
  })
})
