import { readFileSync } from 'node:fs'
import DxfParser from 'dxf-parser'
import { describe, expect, test } from 'vitest'
import { textWidth } from '../../src/drawing/font.js'
import { drawingSvg } from '../../src/drawing/index.js'
import { Facts } from '../../src/leg/drawings/facts.js'
import { legDrawing } from '../../src/leg/drawings/leg.js'
import {
  type Assessment,
  assess,
  describeLeg,
  type Leg,
  legDrawingNamed,
  legDrawings,
  legPoseDrawing,
  parametersCsv,
  toDxf,
  toTemplate,
} from '../../src/leg/index.js'
import { stance } from '../../src/leg/parts/load/stance.js'
import { stride } from '../../src/leg/parts/motion/values.js'
import { textBoxes } from '../drawing/boxes.js'
import { pathPoints, type Spot } from '../drawing/path-points.js'

const read = (name: string) => readFileSync(new URL(`../../examples/mudflat-leg-${name}.yaml`, import.meta.url), 'utf8')
const leg: Leg = describeLeg(read('revised'))
const verdict: Assessment = assess(leg, { cases: ['walk', 'drop', 'coldMorning'] })
const cordDriveOf = (joint: 'hip' | 'knee') => {
  const { drive } = leg.joints[joint]
  if (drive.kind !== 'cord') throw new Error('the example has cord drives')
  return drive
}
const knee = cordDriveOf('knee')
/** The leg with sections replaced. */
const changed = (change: object) => {
  const { defaults: _, ...data } = leg
  return assess(describeLeg({ ...data, ...change } as never), { cases: ['walk'] })
}
const drawings = legDrawings(verdict)
const named = (id: string) => drawings.find((one) => one.id === id)!

/** Units of the page in a millimetre, from the title of a view. */
function unitsOf(svg: string, title: string): number {
  const [, above, below] = new RegExp(`${title}[^<]*, (\\d+) : (\\d+)<`).exec(svg) as unknown as [string, string, string]
  return (4 * Number(above)) / Number(below)
}
const circles = (svg: string) =>
  [...svg.matchAll(/<circle class="([^"]*)" cx="([^"]*)" cy="([^"]*)" r="([^"]*)"/g)].map(([, line, x, y, r]) => ({
    line,
    x: Number(x),
    y: Number(y),
    r: Number(r),
  }))

describe('every drawing', () => {
  test.each(drawings.map((one) => [one.id, one] as const))(
    '%s: title, description, table, letters of 11 units and more',
    (id, { title, answer, description, svg, table }) => {
      expect(svg).toContain(`<title id="${id}-picture-title">${title.replaceAll('&', '&amp;')}</title>`)
      expect(svg).toMatch(new RegExp(`role="img" aria-labelledby="${id}-picture-title" aria-describedby="${id}-picture-desc"`))
      expect(description.startsWith(answer)).toBe(true)
      expect(description.length).toBeGreaterThan(60)
      expect(table.rows.length).toBeGreaterThan(3)
      for (const row of table.rows) {
        expect(row).toHaveLength(table.head.length)
        expect(row[0]).not.toBe('')
        expect(row[1]).not.toBe('')
      }
      const boxes = textBoxes(svg)
      expect(boxes.length).toBeGreaterThan(3)
      expect(Math.min(...boxes.map(({ size }) => size))).toBeGreaterThanOrEqual(11)
      expect(svg + JSON.stringify(table)).not.toMatch(/NaN|undefined|Infinity|null/)
      expect(svg).not.toMatch(/<script|foreignObject|<image|<a |@import|url\(|href/)
      expect(svg.length).toBeLessThan(40_000)
    },
  )

  test('ids of a page are all different, and the same leg gives the same bytes', () => {
    const page = legDrawings(verdict, { style: 'page' }).map(({ svg }) => svg)
    expect(page.join('')).not.toContain('<style')
    const ids = [...page.join('').matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(legDrawings(verdict).map(({ svg }) => svg)).toEqual(drawings.map(({ svg }) => svg))
  })
})

describe('drawn lengths are those of the document at the stated scale', () => {
  test('centre distance and groove diameters of the knee drive', () => {
    const { svg } = named('cord-drive-knee')
    const units = unitsOf(svg, 'From the robot’s left')
    const { centreDistance, drum, pinion } = knee
    const cord = leg.cords.braid!.diameter.si
    const outer = (grooveDiameter: number) => 1000 * (grooveDiameter / 2 + 0.33 * cord) * units
    const find = (r: number) => circles(svg).find((one) => Math.abs(one.r - r) < 0.01)!
    const [on, motor] = [find(outer(drum.grooveDiameter!.si)), find(outer(pinion.grooveDiameter!.si))]
    expect(Math.hypot(on.x - motor.x, on.y - motor.y)).toBeCloseTo(1000 * centreDistance.si * units, 1)
  })

  test('links of the leg: from joint to joint', () => {
    const { svg } = named('leg')
    const units = unitsOf(svg, 'Hardest pose')
    const joints = circles(svg)
      .filter(({ line }) => line === 'thick fill-paper')
      .slice(0, 3)
    const [hip, knee, foot] = joints as [(typeof joints)[0], (typeof joints)[0], (typeof joints)[0]]
    expect(Math.hypot(hip.x - knee.x, hip.y - knee.y)).toBeCloseTo(1000 * leg.links.upper.length.si * units, 1)
    expect(Math.hypot(knee.x - foot.x, knee.y - foot.y)).toBeCloseTo(1000 * leg.links.lower.length.si * units, 1)
  })

  test('the force on the foot has the length of its scale, and the direction of the load case', () => {
    const walk = verdict.checks.find((check) => check.case === 'walk')!
    const { svg, table } = legPoseDrawing(verdict, walk)
    const view = svg.slice(svg.indexOf('<!-- Hardest pose -->'))
    const [tail, neck] = pathPoints(/<path class="force" d="([^"]+)"/.exec(view)![1]!)[0] as [Spot, Spot]
    const [[head]] = pathPoints(/<path class="fill-force" d="([^"]+)"/.exec(view)![1]!) as unknown as [[Spot]]
    const length = Math.hypot(tail[0] - head[0], tail[1] - head[1])
    expect(Math.hypot(neck[0] - head[0], neck[1] - head[1])).toBeLessThan(10)
    const bar = /<!-- scale -->\n<g>.*?<path class="force" d="([^"]+)".*?<text class="ink-force"[^>]*>(\d+) N</s.exec(view)!
    const [from, to] = pathPoints(bar[1]!)[0] as [Spot, Spot]
    const perUnit = Number(bar[2]) / (to[0] - from[0])
    const row = (name: string) => Number(table.rows.find(([one]) => one === name)![1]!.replace('−', '-'))
    expect(length * perUnit).toBeCloseTo(Math.hypot(row('foot force, up'), row('foot force, forward')), 0)
    // Forward is to the left: the tail of a push forward is to the right of its tip.
    expect(Math.sign(tail[0] - head[0])).toBe(Math.sign(row('foot force, forward')))
  })
})

describe('a knee that a rod drives', () => {
  const rodLeg = describeLeg(readFileSync(new URL('../../examples/heath-leg-first.yaml', import.meta.url), 'utf8'))
  const rodVerdict = assess(rodLeg, { cases: ['walk', 'drop'] })
  const through = rodLeg.joints.knee.through as { crank: { si: number }; rocker: { si: number }; rod: { si: number } }
  const distance = ([a, b]: Spot, [c, d]: Spot) => Math.hypot(a - c, b - d)

  test('crank, rod and rocker are as long as in the document, in the hardest pose and at both ends of the knee', () => {
    const { svg } = legDrawingNamed(rodVerdict, 'rod-drive')!
    const view = svg.slice(svg.indexOf('<!-- Crank, rod and rocker'))
    const units = unitsOf(svg, 'Crank, rod and rocker from the robot’s left')
    const lines = [...view.matchAll(/<path class="(?:other|thick)" d="([^"]+)"/g)]
      .flatMap(([, d]) => pathPoints(d!))
      .filter(({ length }) => length === 4)
    expect(lines).toHaveLength(3)
    for (const [hip, crankPin, rockerPin, knee] of lines as [Spot, Spot, Spot, Spot][]) {
      expect(distance(hip, crankPin)).toBeCloseTo(1000 * through.crank.si * units, 0)
      expect(distance(crankPin, rockerPin)).toBeCloseTo(1000 * through.rod.si * units, 0)
      expect(distance(rockerPin, knee)).toBeCloseTo(1000 * through.rocker.si * units, 0)
      expect(distance(hip, knee)).toBeCloseTo(1000 * rodLeg.links.upper.length.si * units, 0)
    }
  })

  test('its drums, motors and rod are in the drawing of the leg, and its checks in that of the rod', () => {
    const { svg } = legDrawingNamed(rodVerdict, 'leg')!
    expect(svg).toContain('hip drum')
    expect(svg).toContain('knee drum')
    const rows = legDrawingNamed(rodVerdict, 'rod-drive')!.table.rows.map(([name]) => name)
    for (const { part, mode } of rodVerdict.checks.filter(({ id }) => /^rod(Pin)?\./.test(id))) expect(rows).toContain(`${part}: ${mode}`)
    expect(legDrawingNamed(verdict, 'rod-drive')).toBeUndefined()
    expect(legDrawings(rodVerdict).every(({ answer }) => !answer.includes('cannot be drawn'))).toBe(true)
  })
})

test('the bending moment along a pin ends at 0, and is that of the check in the middle', () => {
  const { svg, table } = named('pin-knee')
  const part = svg.slice(svg.indexOf('<!-- Bending moment along the pin'))
  const [line] = pathPoints(/<path class="force" d="([^"]+)"/.exec(part)![1]!) as [Spot[]]
  const base = Math.max(...line.map(([, y]) => y))
  expect(line[0]![1]).toBeCloseTo(base, 0)
  expect(line.at(-1)![1]).toBeCloseTo(base, 0)
  const middle = line[(line.length - 1) / 2]!
  expect(middle[1]).toBe(Math.min(...line.map(([, y]) => y)))
  const number = (name: string) => Number(table.rows.find(([one]) => one === name)![1])
  const force = number('force on the pin')
  const arm = number('thickness of a cheek') / 2 + number('side gap') + number('thickness of the eye') / 4
  expect(number('bending moment in the middle of the pin') / ((force / 2) * arm)).toBeCloseTo(1, 2)
})

describe('what the leg does not have', () => {
  test('no ferrule without a bonded end, and one with it', () => {
    expect(legDrawingNamed(verdict, 'ferrule-knee')).toBeUndefined()
    const bonded = changed({
      joints: { ...leg.joints, knee: { ...leg.joints.knee, drive: { ...knee, ends: 'bondedFerrule', end: 'potted' } } },
      ends: { potted: { length: '20 mm', socketDiameter: '2 mm', adhesive: 'epoxy' } },
    })
    const drawn = legDrawings(bonded).map(({ id }) => id)
    expect(drawn).toContain('ferrule-knee')
    expect(drawn).not.toContain('ferrule-hip')
  })

  test('a motor without a sink is drawn without one', () => {
    const plates = Object.fromEntries(Object.entries(leg.plates).map(([name, { sink: _, ...plate }]) => [name, plate]))
    const bare = legDrawingNamed(changed({ plates }), 'motor-knee')!
    expect(bare.table.rows.map(([name]) => name)).not.toContain('sink thickness')
    expect(named('motor-knee').table.rows.map(([name]) => name)).toContain('sink thickness')
  })

  test('no shaft, no bolts, no pin: no drawing of them, and no error', () => {
    const { hip, knee: lower } = leg.joints
    const { shaft: _, motorBolts: __, ...bareHip } = hip
    const { motorBolts: ___, pin: ____, boss: _____, ...bareKnee } = lower
    const plates = Object.fromEntries(Object.entries(leg.plates).map(([name, { bolts: ______, ...plate }]) => [name, plate]))
    const bare = changed({
      joints: { ...leg.joints, hip: bareHip, knee: bareKnee },
      plates,
      shafts: {},
      bearings: {},
      bolts: {},
      pins: { hipPin: leg.pins.hipPin },
      bosses: { hipBoss: leg.bosses.hipBoss },
    })
    const drawn = legDrawings(bare).map(({ id }) => id)
    for (const id of ['hip-shaft', 'shaft-end', 'bolt-stack', 'bolt-motor', 'bolt-pattern-stack', 'bolt-pattern-motor-hip', 'pin-knee'])
      expect(drawn).not.toContain(id)
    for (const id of ['leg', 'pin-hip', 'cord-drive-knee', 'motor-hip', 'year']) expect(drawn).toContain(id)
    expect(parametersCsv(bare)).not.toContain('boss_knee')
  })

  test('an option that is misspelt is refused', () => {
    expect(() => legDrawings(verdict, { stile: 'page' } as never)).toThrow(/did you mean style/)
  })
})

describe('files for other programs', () => {
  test('DXF: an independent reader finds the lengths of the document in millimetres', () => {
    const parsed = new DxfParser().parseSync(toDxf(named('cord-drive-knee'))!)!
    const round = parsed.entities.filter(({ type }) => type === 'CIRCLE') as unknown as {
      radius: number
      center: { x: number; y: number }
      layer: string
    }[]
    // Rims of grooves 0.33 diameters of the cord deep, the depth for wire ropes: the cord stands out of them.
    const outer = (grooveDiameter: number) => 1000 * (grooveDiameter / 2 + 0.33 * leg.cords.braid!.diameter.si)
    const find = (r: number) => round.find(({ radius }) => Math.abs(radius - r) < 1e-5)!
    const [drum, pinion] = [find(outer(knee.drum.grooveDiameter!.si)), find(outer(knee.pinion.grooveDiameter!.si))]
    expect(pinion.center.y - drum.center.y).toBeCloseTo(1000 * knee.centreDistance.si, 5)
    expect(Object.keys(parsed.tables.layer.layers)).toContain('thick')
    expect(drum.layer).toBe('thick')
  })

  test.each(drawings.map((one) => [one.id, one] as const))(
    '%s: the reader finds every line, circle and text that was written; a chart has no file',
    (id, drawing) => {
      const text = toDxf(drawing)
      expect(text === undefined).toBe(/^(heat|plate-heat|torque-speed)-|^(reserve-bars|stride|year)$/.test(id))
      if (text === undefined) return
      expect(text).toMatch(/^(LINE|POLYLINE|CIRCLE)$/m)
      expect([...text].every((letter) => letter.charCodeAt(0) < 128)).toBe(true)
      const written = text.match(/^(LINE|POLYLINE|CIRCLE|TEXT)$/gm)?.length ?? 0
      expect(new DxfParser().parseSync(text)!.entities).toHaveLength(written)
    },
  )

  test('DXF: the header says millimetres, and a closed outline is one closed polyline of its size', () => {
    const parsed = new DxfParser().parseSync(toDxf(named('pin-knee'))!)!
    // Codes of $INSUNITS and $MEASUREMENT in the published reference of DXF: 4 is millimetres, 1 is metric.
    expect(parsed.header).toMatchObject({ $INSUNITS: 4, $MEASUREMENT: 1 })
    const outlines = parsed.entities.filter(({ type }) => type === 'POLYLINE') as unknown as {
      shape: boolean
      vertices: { x: number; y: number }[]
    }[]
    const span = (all: readonly number[]) => Math.max(...all) - Math.min(...all)
    const size = ({ vertices }: (typeof outlines)[number]) => [span(vertices.map(({ x }) => x)), span(vertices.map(({ y }) => y))]
    const boss = leg.bosses.kneeBoss!
    const bosses = outlines.filter((one) => Math.abs(size(one)[0]! - 1000 * boss.engagement.si) < 1e-5)
    expect(bosses.length).toBeGreaterThanOrEqual(2)
    for (const one of bosses) expect(one.shape).toBe(true)
    for (const { vertices } of outlines) {
      const [first, last] = [vertices[0]!, vertices.at(-1)!]
      // A closed polyline does not repeat its first corner.
      expect(Math.hypot(first.x - last.x, first.y - last.y)).toBeGreaterThan(1e-6)
    }
  })

  test('template: full size in millimetres, with a bar to check the printer by', () => {
    const svg = toTemplate(named('bolt-pattern-motor-knee'))!
    const [, width, , box] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) /.exec(svg)!
    expect(box).toBe(width)
    expect(svg).toMatch(/must measure 50 mm/)
    for (const [, x, text] of svg.matchAll(/<text [^>]* x="(\d+)"[^>]*>([^<]+)</g))
      expect(Number(x) + textWidth(text!, 3.5)).toBeLessThan(Number(width))
    const holes = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/g)].map(
      ([, ...at]) => at.map(Number) as [number, number, number],
    )
    const bolts = holes.filter(([, , r]) => Math.abs(r - 1.7) < 1e-6)
    expect(bolts).toHaveLength(leg.bolts.motor!.count)
    const [a, , c] = bolts as [number, number, number][]
    expect(Math.hypot(a![0] - c![0], a![1] - c![1])).toBeCloseTo(
      1000 * (leg.bolts.motor!.pattern as { diameter: { si: number } }).diameter.si,
      2,
    )
    expect(toTemplate(named('reserve-bars'))).toBeUndefined()
  })

  test('parameters: one row each, the values of the document', () => {
    const rows = parametersCsv(verdict)
      .trim()
      .split('\n')
      .map((line) => line.split(','))
    expect(rows[0]).toEqual(['part', 'parameter', 'value', 'unit'])
    const value = (part: string, name: string) => Number(rows.find(([one, other]) => one === part && other === name)![2])
    expect(value('drum_knee', 'groove_diameter')).toBeCloseTo(1000 * knee.drum.grooveDiameter!.si, 9)
    expect(value('drum_hip', 'bore_diameter')).toBeCloseTo(1000 * cordDriveOf('hip').drum.bore.si, 9)
    // The rims in the table are the outlines of the drawing.
    const round = new DxfParser().parseSync(toDxf(named('cord-drive-knee'))!)!.entities as unknown as { radius?: number }[]
    for (const part of ['drum_knee', 'pinion_knee'])
      expect(round.some(({ radius = 0 }) => Math.abs(2 * radius - value(part, 'outer_diameter')) < 1e-4)).toBe(true)
    expect(value('boss_knee', 'hole_diameter')).toBeCloseTo(1000 * leg.bosses.kneeBoss!.hole.si, 9)
    expect(value('pinion_knee', 'centre_distance')).toBeCloseTo(1000 * knee.centreDistance.si, 9)
    expect(rows.every((row) => row.length === 4 && row.every((cell) => cell !== '' && cell !== 'NaN'))).toBe(true)
  })
})

test('a pose that cannot be calculated is not passed off as one', () => {
  const facts = new Facts(verdict)
  expect(drawingSvg(legDrawing(facts))).not.toContain('No pose can')
  // The hip stands higher than the links are long.
  const { tried } = facts
  const beyond = { ...(tried.call(facts, stance as never, facts.case('walk') as never) as object), height: 5 }
  facts.tried = (of: unknown, names?: object) =>
    (of === stance ? beyond : of === stride ? undefined : tried.call(facts, of as never, names as never)) as never
  expect(drawingSvg(legDrawing(facts))).toContain('No pose can')
})

test('a motor without a steady temperature is drawn at assumed ones, and the drawing says so', () => {
  const first = assess(describeLeg(read('first')))
  const hot = legDrawings(first, { only: ['heat-knee'] })[0]!
  expect(hot.svg).toContain('No steady temperature')
  expect(hot.description).toContain('are assumed')
  expect(hot.table.rows.find(([name]) => name === 'can and magnets')!.at(-1)).toBe('assumed')
  expect(named('heat-knee').description).not.toContain('assumed')
})
