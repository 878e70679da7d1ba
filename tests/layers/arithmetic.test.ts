import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { products, productsIn } from './arithmetic.js'

const listFile = fileURLToPath(new URL('arithmetic.json', import.meta.url))
const listed = JSON.parse(readFileSync(listFile, 'utf8')) as Record<string, number>

test('reports, charts and plans multiply and divide no values but those of the list, which may only shrink', () => {
  const found = products()
  if (process.env.LIMBWRIGHT_UPDATE !== undefined) {
    const left = Object.entries(listed).flatMap(([file, most]) => (file in found ? [[file, Math.min(most, found[file]!)]] : []))
    writeFileSync(listFile, `${JSON.stringify(Object.fromEntries(left), undefined, 2)}\n`)
  }
  const more = Object.entries(found).filter(([file, count]) => count > (listed[file] ?? 0))
  expect(more, 'make a formula or a line of it, whose equation the sheet prints').toEqual([])
})

test('products of values are counted, units and rounding are not', () => {
  expect(productsIn('const a = force * arm, b = energy / time, c = x ** n')).toBe(3)
  expect(productsIn('a *= b')).toBe(1)
  expect(productsIn('const a = 1000 * x, b = (x * 180) / Math.PI, c = x / STEPS, d = (2 * POINTS) / 3, e = -SIGN * x')).toBe(0)
})
