import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { assess, describeLeg, legDrawings } from '../../src/leg/index.js'

const file = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')
const described = (svg: string) => /<title[\s\S]*<\/desc>/.exec(svg)?.[0]

test('the pictures of the guide say what the library says of that leg today: npm run gallery', () => {
  const folder = 'docs/guide/drawings'
  const names = readdirSync(new URL(`../../${folder}`, import.meta.url)).map((name) => name.replace('.svg', ''))
  const verdict = assess(describeLeg(file('examples/mudflat-leg-revised.yaml')))
  const drawn = legDrawings(verdict, { only: names })
  expect(drawn.map(({ id }) => id).sort()).toEqual(names.sort())
  for (const { id, svg } of drawn) {
    expect(described(svg)).toContain('</desc>')
    expect(described(file(`${folder}/${id}.svg`))).toBe(described(svg))
  }
})
