import { expect, test } from 'vitest'
import { compactSvg } from '../../src/leg/report/compact-svg.js'

const drawn = (inner: string) => compactSvg(`<svg width="10" height="10">${inner}</svg>`)

test('labels keep their digits, coordinates lose theirs', () => {
  const text = drawn('<g fill="red"><text transform="translate(1.2345,2.0061)">0.05</text></g>')
  expect(text).toContain('>0.05</text>')
  expect(text).toContain('<text x="1.2" y="2"')
})

test('shares of light keep their digits', () => {
  expect(drawn('<rect width="4.4444" height="1" fill="red" fill-opacity="0.25"/>')).toContain(
    '<rect width="4.4" height="1" fill="red" fill-opacity="0.25"/>',
  )
})
