import ts from 'typescript'
import { expect, test } from 'vitest'
import { hoverTexts } from '../../scripts/editor/hover-texts.js'

/** The fields without a doc comment of one file, by path. */
function missingIn(code: string): string[] {
  const files: Record<string, string> = { '/src/one.ts': code, '/src/lib.d.ts': 'interface Array<T> { readonly length: number }' }
  const host: ts.CompilerHost = {
    ...ts.createCompilerHost({}),
    getSourceFile: (name) => (files[name] === undefined ? undefined : ts.createSourceFile(name, files[name], ts.ScriptTarget.ES2022, true)),
    fileExists: (name) => name in files,
    readFile: (name) => files[name],
  }
  const program = ts.createProgram(Object.keys(files), { noLib: true, strict: true }, host)
  return [...hoverTexts(program, ['/src/one.ts'], () => true).missing.values()]
}

test('an input field without a doc comment is found: in a function, a class, a formula, a list and a nested record', () => {
  expect(missingIn('export function turn(given: { angle: number }) {}')).toEqual(['turn(given).angle'])
  expect(missingIn('export class Drum { constructor(given: { radius: number }) {} }')).toEqual(['Drum(given).radius'])
  expect(missingIn('export declare const slack: { (given: { readonly load: number }): number }')).toEqual(['slack(given).load'])
  expect(missingIn('export function lay(cords: readonly {\n/** Length. */\nlength: number\nturns: number }[]) {}')).toEqual([
    'lay(cords)[].turns',
  ])
  expect(missingIn('export function set(given: {\n/** The screw. */\nscrew: { lead: number } }) {}')).toEqual(['set(given).screw.lead'])
})

test('every signature counts, and every member of a union', () => {
  expect(missingIn('export declare const f: { (a: {\n/** One. */\nx: number }): void; (a: { y: number }): void }')).toEqual(['f(a).y'])
  expect(missingIn('export function f(a: {\n/** One. */\nx: number } | { z: number }) {}')).toEqual(['f(a).z'])
})

test('documented, private, internal and foreign fields are not missed', () => {
  expect(missingIn('export function turn(given: {\n/** Angle turned, rad. */\nangle: number }) {}')).toEqual([])
  expect(missingIn('class Cord { private tension = 1 }\nexport function pull(cord: Cord) {}')).toEqual([])
  expect(missingIn('export function f(a: {\n/** @internal */\ncache: number }) {}')).toEqual([])
  expect(missingIn('/** @internal */\nexport function f(a: { x: number }) {}')).toEqual([])
})
