import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, markdownReport } from '../../src/leg/index.js'
import { PROCEDURES } from '../../src/leg/report/procedures.js'
import { RISES } from '../../src/thermal/cooling-laws.js'
import { FILMS } from '../../src/thermal/plate-law.js'
import hand from '../oracles/printed-sheet.json' with { type: 'json' }

interface Worked {
  readonly check: string
  readonly joint?: string
  readonly demand: string
  readonly capacity: string
  readonly inputs: Readonly<Record<string, string>>
}

/** Values of a printed sheet by their names: `robot: mass` of the specification, and rows of tables and constants. */
function valuesOf(sheet: string): Map<string, string> {
  const values = new Map<string, string>()
  let part = ''
  for (const line of sheet.split('\n')) {
    const [first = '', name = '', value = ''] = line.startsWith('|') ? line.slice(1, -1).split('|') : []
    const heading = first === '' ? /^\*\*(.*)\*\*$/.exec(name)?.[1] : undefined
    if (heading !== undefined) part = heading
    // A row holds what its heading does not: `**joints, knee**`, then `drive, pinion, groove diameter`.
    if (/^F\d+$/.test(first)) values.set((part === '' ? name : `${part}, ${name}`).replace(/, ([^,]*)$/, ': $1'), value)
    if (/^[TC]\d+$/.test(first)) values.set(name, value)
  }
  return values
}

describe.each(Object.entries(hand) as [string, Worked[]][])('three checks of the printed sheet of %s', (name, worked) => {
  const leg = describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
  const sheet = markdownReport(assess(leg), { steps: 'all' })
  const values = valuesOf(sheet)

  test.each(worked.map((one) => [one.check, one] as const))('%s', (check, { joint, demand, capacity, inputs }) => {
    for (const [input, value] of Object.entries(inputs)) expect(values.get(input), input).toBe(value)
    const section = sheet.slice(sheet.indexOf(`### ${check}\n`)).split('\n### ')[0]
    const lines = (section ?? '').split('\n').filter((line) => new RegExp(`^- K\\d+ ${joint === undefined ? '' : `${joint}, `}`).test(line))
    expect(lines.length).toBe(1)
    const [, printedDemand, printedCapacity] = /: demand (.*?) \[.*?\], capacity (.*?) \[.*?\], reserve /.exec(lines[0] as string) ?? []
    expect([printedDemand, printedCapacity]).toEqual([demand, capacity])
  })
})

test('procedures of thermal laws print the range and the points that the laws have', () => {
  expect(PROCEDURES['thermal.canLaw']).toContain(`from ${RISES.low} to ${RISES.high} K`)
  expect(PROCEDURES['thermal.plateLaw']).toContain(`at ${FILMS.nodes.length} films from ${FILMS.low} to ${FILMS.high} W/(m² K)`)
})
