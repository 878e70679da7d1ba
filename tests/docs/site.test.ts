import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { keepVersion } from '../../scripts/site.js'

const root = mkdtempSync(join(tmpdir(), 'site-'))
const [reference, site] = [join(root, 'reference'), join(root, 'site')]
mkdirSync(join(reference, 'functions'), { recursive: true })
const write = (text: string) => {
  writeFileSync(join(reference, 'index.html'), `<html lang="en" data-base="./"><body>${text}</body></html>`)
  writeFileSync(join(reference, 'functions', 'a.html'), `<html lang="en" data-base="../"><body>${text}</body></html>`)
}

test('versions stand side by side, newest first, and each page leads to the list', () => {
  write('old')
  keepVersion(reference, site, '0.9.0')
  write('new')
  keepVersion(reference, site, '0.10.0-rc.1')
  expect(keepVersion(reference, site, '0.10.0')).toEqual(['0.10.0', '0.10.0-rc.1', '0.9.0'])
  expect(readFileSync(join(site, '0.9.0', 'functions', 'a.html'), 'utf8')).toContain('old<p><a href="../../index.html">')
  expect(readFileSync(join(site, '0.10.0', 'index.html'), 'utf8')).toContain('new<p><a href="./../index.html">')
  expect(readFileSync(join(site, 'index.html'), 'utf8')).toMatch(/0\.10\.0<\/a> \(newest\)[\s\S]*0\.9\.0/)
})

test('a folder without a reference and a word that is no version are rejected', () => {
  expect(() => keepVersion(join(root, 'nowhere'), site, '1.0.0')).toThrow('npm run docs')
  expect(() => keepVersion(reference, site, 'latest')).toThrow('no version')
})
