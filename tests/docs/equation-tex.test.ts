import { expect, test } from 'vitest'
import { equationTex } from '../../scripts/equation-tex.js'

const tex = (text: string) => equationTex('capstan.slackTension', new Set(['load', 'friction', 'wrapAngle', 'thread', 'pitch']), text)

test('an equation is written with the words of its names', () => {
  expect(tex('result = load * exp(-friction * wrapAngle)')).toBe(
    '\\text{slack tension} = \\text{load}\\cdot\\exp\\left(-\\text{friction}\\cdot\\text{wrap angle}\\right)',
  )
  expect(tex('leadAngle = atan(thread.pitch / (pi * load))')).toBe(
    '\\text{lead angle} = \\tan^{-1}\\left(\\frac{\\text{pitch}_{\\text{thread}}}{\\pi\\cdot\\text{load}}\\right)',
  )
  expect(tex('result / load == exp(-friction * wrapAngle)')).toContain('=\\exp')
  expect(tex('result = equalText(load, "body") ? 1 : 0')).toContain('\\text{load} = \\mathtt{"body"}')
})
