import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg } from '../../src/leg/index.js'

const TEXT = readFileSync(new URL('../../examples/heath-leg-first.yaml', import.meta.url), 'utf8')

describe('a value that a material lacks is never taken as nothing', () => {
  const glued = TEXT.replace('hipBoss: { material: ASA', 'hipBoss: { material: epoxy')
  const { checks } = assess(describeLeg(glued), { cases: ['season', 'hotWalkBack'] })

  test('a boss of a material without water and creep data does not keep its grip: the check fails and names what is missing', () => {
    expect(glued).not.toBe(TEXT)
    const grip = checks.find(({ id, joint }) => id === 'boss.grip' && joint === 'hip')
    expect(grip?.reserve).toBe(0)
    expect(grip?.notes.join(' ')).toContain('epoxy.moistureConditioned')
  })
})

describe('a toe under load for long', () => {
  const strain = (name: 'drop' | 'walk' | 'season', text = TEXT) =>
    assess(describeLeg(text), { cases: [name] }).checks.find(({ id }) => id === 'toe.strain')?.demand.si as number

  test('creeps: the same force strains it more in an hour of walking, and most in a season', () => {
    expect(strain('season')).toBeGreaterThan(strain('walk') * 1.05)
  })
  test('of metal does not', () => {
    const metal = TEXT.replace('width: 16 mm, material: TPU 95A', 'width: 16 mm, material: aluminium 6061-T6')
    expect(strain('season', metal)).toBeCloseTo(strain('walk', metal), 12)
  })
})
