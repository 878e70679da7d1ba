import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { type CordDriveState, travelPath } from '../../src/capstan/index.js'

// Written by tests/oracles/capstan-travel.py: a string of nodes that move through the loop, without stored tensions or slip zones.
const oracle = JSON.parse(readFileSync(new URL('../oracles/capstan-travel.json', import.meta.url), 'utf8')) as Record<
  string,
  { pinion: number; mu: number; mu_drum: number; stroke: number; force: number; back: number; cycles: number; corners: number[][] }
>

test.each(Object.entries(oracle))('cycles of a whole loop against a string of moving nodes: %s', (name, x) => {
  const d: CordDriveState = {
    axialRigidity: 20000,
    pretension: 60,
    pinionRadius: 0.008,
    drumRadius: 0.048,
    span: 0.02,
    pinionWrap: x.pinion,
    drumWrapTaut: Math.PI,
    drumWrapSlack: Math.PI,
    friction: x.mu,
    drumFriction: x.mu_drum,
    hold: 'frictionOnly',
  }
  const corners = Array.from({ length: x.cycles }, () => [
    [0, x.force],
    [x.stroke, x.force],
    [x.stroke, x.back],
    [0, x.back],
  ]).flat()
  const path = travelPath(
    d,
    corners.map(([q]) => q ?? 0),
    corners.map(([, force]) => (force ?? 0) * d.drumRadius),
    0.002,
  )
  expect(path.end).toBe('followed')
  expect(path.elementStays).toBe(name.startsWith('an element stays'))
  const corner = (i: number) => x.corners[i] as [phi: number, taut: number, slack: number]
  // The string keeps the square of strain, some 0.4 % of every difference; its own convergence is finer.
  path.points.forEach((p, i) => {
    const [phi, taut, slack] = corner(i)
    expect(Math.abs(p.tautTension - taut), `taut span at corner ${i}`).toBeLessThan(0.012)
    expect(Math.abs(p.slackTension - slack), `slack span at corner ${i}`).toBeLessThan(0.012)
    expect(Math.abs(p.pinionAngle - phi), `pinion at corner ${i}`).toBeLessThan(1.6e-4)
  })
  const last = path.points.length - 1
  const drift = (path.points[last]?.pinionAngle ?? 0) - (path.points[last - 4]?.pinionAngle ?? 0)
  expect(Math.abs(drift / (corner(last)[0] - corner(last - 4)[0]) - 1)).toBeLessThan(0.008)
})
