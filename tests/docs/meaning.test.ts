import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { expect, test } from 'vitest'
import { meaningOf } from '../../scripts/meaning.js'

const fixture = fileURLToPath(new URL('../catalogue/fixture/records.ts', import.meta.url))

test('the reference page finds the comment of a field at the constant it takes', () => {
  const { config } = ts.readConfigFile(fileURLToPath(new URL('../../tsconfig.json', import.meta.url)), ts.sys.readFile)
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, fileURLToPath(new URL('../..', import.meta.url)))
  const program = ts.createProgram([fixture], { ...options, noEmit: true })
  const checker = program.getTypeChecker()
  const exported = checker.getExportsOfModule(checker.getSymbolAtLocation(program.getSourceFile(fixture) as ts.SourceFile) as ts.Symbol)
  const inputsOf = (name: string) => {
    const symbol = exported.find((each) => each.name === name) as ts.Symbol
    return checker.getTypeArguments(checker.getTypeOfSymbol(symbol) as ts.TypeReference)[0] as ts.Type
  }
  const inputs = inputsOf('shared')
  const field = (owner: ts.Type, name: string) => checker.getTypeOfSymbol(checker.getPropertyOfType(owner, name) as ts.Symbol)
  expect(meaningOf(checker, inputs, 'drumRadius')).toBe('Radius of the drum.')
  expect(meaningOf(checker, inputs, 'drive')).toBe('Cord and drum of a drive.')
  expect(meaningOf(checker, inputs, 'thread')).toBe('Thread of the screw.')
  expect(meaningOf(checker, inputs, 'axialRigidity')).toBe('Axial rigidity of the cord, EA.')
  expect(meaningOf(checker, inputs, 'cordDiameter')).toBe('Outer diameter of the cord.')
  expect(meaningOf(checker, field(field(inputs, 'thread'), 'fields'), 'pitch')).toBe('Distance between two turns.')
  expect(meaningOf(checker, inputsOf('undocumented'), 'plain')).toBe('')
})
