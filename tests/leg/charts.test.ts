import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import {
  type Assessment,
  assess,
  describeLeg,
  htmlReport,
  legDrawings,
  legNumbers,
  reportCharts,
  reportPictures,
} from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { driveOf } from '../../src/leg/numbers.js'
import { chartTable } from '../../src/leg/report/chart-table.js'
import { gaitClouds, motorLimit } from '../../src/leg/report/gait-points.js'
import { renderedPictures } from '../../src/leg/report/pictures.js'
import { caseState } from '../../src/leg/what-if.js'
import hand from '../oracles/leg-hand.json' with { type: 'json' }

const read = (name: string) => readFileSync(new URL(`../../examples/mudflat-leg-${name}.yaml`, import.meta.url), 'utf8')
const verdicts: Record<string, Assessment> = Object.fromEntries(['first', 'revised'].map((name) => [name, assess(describeLeg(read(name)))]))
const first = verdicts.first as Assessment
const IDS = ['reserves', 'moves', 'torque-speed', 'stall', 'pretension', 'clamp', 'reach']
const rowsOf = (verdict: Assessment, id: string) => chartTable(reportCharts(verdict).find((one) => one.id === id)!.chart).rows

describe('charts', () => {
  test.each(['first', 'revised'])('%s design: every chart has numbers, all of them finite, and words', (name) => {
    const charts = reportCharts(verdicts[name] as Assessment)
    expect(charts.map(({ id }) => id)).toEqual(IDS)
    for (const { id, chart } of charts) {
      expect(JSON.stringify(chart), id).not.toMatch(/"(x|y|to|from|at)":null|NaN|Infinity/)
      expect(chart.description.length, id).toBeGreaterThan(40)
      expect(chartTable(chart).rows.length, id).toBeGreaterThan(3)
    }
  })

  test('the reserves drawn are those of the verdict, nearest to its limit first', () => {
    const rows = rowsOf(first, 'reserves')
    expect(rows[0]?.[0]).toBe('K1 motor bolt joint, hip')
    expect(Number(rows[0]?.[1])).toBeCloseTo(first.governing.reserve, 3)
    expect(rows[0]?.[2]).toMatch(/fails$/)
  })

  test('a value two per cent off gives the reserve that the changed leg has', () => {
    const row = rowsOf(first, 'moves').find(([path, , , group]) => path === 'robot: mass' && group === '2 % higher')
    expect(row).toBeDefined()
    // Nothing is left of what governs, so that nothing small moves it: the next check is drawn, and named.
    const { leg, checks } = first
    expect(first.governing.reserve).toBe(0)
    const governing = checks.find(({ reserve }) => reserve > 0)!
    expect(reportCharts(first).find(({ id }) => id === 'moves')!.chart.title).toContain(
      `least reserve above 0 (${governing.part}, ${governing.joint}`,
    )
    const heavier = describeLeg({ ...leg, robot: { ...leg.robot, mass: [1.02 * leg.robot.mass.si, 'kg'] } } as never)
    const same = assess(heavier, { cases: [governing.case] }).checks.find(
      ({ id, joint }) => id === governing.id && joint === governing.joint,
    )
    expect(Number(row?.[1])).toBeCloseTo(same?.reserve as number, 3)
  })

  test('tension begins at the pretension and keeps its share after a year', () => {
    const rows = rowsOf(first, 'pretension').filter(([name]) => name === 'knee')
    expect(Number(rows[0]?.[2])).toBe(90)
    expect(Number(rows.at(-1)?.[2])).toBeCloseTo(90 * first.leg.cords.braid!.pretensionLeft.typical, 1)
  })
})

describe('points of the gaits at the motors', () => {
  const leg = legModel(legNumbers(first.leg))
  const massless = legModel({
    ...leg.x,
    links: { ...leg.x.links, upper: { ...leg.x.links.upper, mass: 0 }, lower: { ...leg.x.links.lower, mass: 0 } },
    motors: { main: { ...leg.x.motors.main!, rotorInertia: 0 } },
  })

  test('without mass they are the torques of the statics, through reduction and losses', () => {
    const { motion: knee } = caseState(massless, 'walk').joints.knee
    const cloud = gaitClouds(massless).find(({ name }) => name === 'knee, walk')!
    // Both take the ends of the stance, where the torque of a level walk is largest.
    const statics = Math.abs(knee.torque) / massless.drives.knee.ratio / driveOf(massless.x, 'knee', 'cord').efficiency
    expect(Math.abs(knee.torque)).toBeCloseTo(Math.abs(hand.walk.kneeWithoutLinks), 9)
    expect(cloud.peakTorque / statics).toBeCloseTo(1, 2)
  })

  test('mass of links and rotors adds torque', () => {
    const [light, real] = [massless, leg].map((one) => gaitClouds(one).find(({ name }) => name === 'knee, trot')!.peakTorque)
    expect(real).not.toBeCloseTo(light as number, 3)
  })

  test('the limit falls from the current limit to the no-load speed', () => {
    const limit = motorLimit(leg)
    for (let i = 1; i < limit.length; i++) {
      expect(limit[i]![0]).toBeGreaterThanOrEqual(limit[i - 1]![0])
      expect(limit[i]![1]).toBeLessThanOrEqual(limit[i - 1]![1])
    }
    expect(limit.at(-1)?.[1]).toBe(0)
  })
})

describe('pictures in the page', () => {
  test('drawn in the colours of the page, each with its own names, told to screen readers', async () => {
    const pictures = await reportPictures(first)
    const html = htmlReport(first, { pictures })
    expect(html.match(/<svg role=img aria-labelledby=chart-/g)).toHaveLength(IDS.length)
    expect(html.match(/<figure id=chart-/g)).toHaveLength(IDS.length)
    expect(html.replace(/<script>[\s\S]*?<\/script>/, '')).not.toMatch(/<script|src=|@import|<image|<svg[^>]* xmlns/)
    expect(html).toContain('currentColor')
    const ids = [...html.matchAll(/ id="?([^"\s>]+)/g)].map(([, id]) => id)
    expect(new Set(ids).size).toBe(ids.length)
    for (const [, target] of html.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(target)
    for (const [, target] of html.matchAll(/href="?#([^"\s>]+)/g)) expect(ids).toContain(target)
    expect(htmlReport(first, { pictures: await reportPictures(first) })).toBe(html)
  })

  test('charts that the page leaves out beside its drawings are not rendered, and the page is the same', async () => {
    const drawings = legDrawings(first, { style: 'page' })
    const pictures = await reportPictures(first, { drawings })
    expect(pictures.map(({ id }) => id)).toEqual(['moves', 'stall', 'reach'])
    expect(htmlReport(first, { drawings, pictures })).toBe(htmlReport(first, { drawings, pictures: await reportPictures(first) }))
  })

  test('without the packages that draw, the numbers stand in tables and the page says so', async () => {
    const pictures = await renderedPictures(first, {}, () =>
      Promise.reject(new Error('Pictures need', { cause: new Error('Cannot find package') })),
    )
    expect(pictures.every(({ svg }) => svg === undefined)).toBe(true)
    const html = htmlReport(first, { pictures })
    expect(html).toMatch(/not drawn in this copy/)
    // The drawing of the leg needs no packages, and has its own numbers; those of the reserves stand in the ranking.
    expect(html.match(/<summary>Numbers of this picture/g)).toHaveLength(IDS.length)
    expect(html).toBe(htmlReport(first))
  })
})
