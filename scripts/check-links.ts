// Follows every link and picture of the built site to a file, and every fragment to a name in it. Addresses of other sites are left alone.
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'

const site = resolve('docs/reference')
const pages = readdirSync(site, { recursive: true, encoding: 'utf8' }).filter(
  (name) => name.endsWith('.html') && !name.endsWith('live.html'),
)
const texts = new Map<string, string>()
const textOf = (file: string) => {
  const text = texts.get(file) ?? readFileSync(file, 'utf8')
  texts.set(file, text)
  return text
}
const namesOf = new Map<string, Set<string>>()
const names = (file: string) => {
  const found = namesOf.get(file) ?? new Set([...textOf(file).matchAll(/ (?:id|name)="([^"]+)"/g)].map(([, name]) => name as string))
  namesOf.set(file, found)
  return found
}

const broken: string[] = []
let links = 0
for (const page of pages) {
  const file = join(site, page)
  for (const [, address] of textOf(file).matchAll(/<(?:a|img|link|script)\b[^>]*? (?:href|src)="([^"]+)"/g)) {
    const [path = '', fragment] = (address as string).replaceAll('&amp;', '&').split('#')
    if (/^[a-z]+:/i.test(path)) continue
    links++
    const target = path === '' ? file : resolve(dirname(file), decodeURIComponent(path.split('?')[0] as string))
    if (!existsSync(target) || statSync(target).isDirectory()) broken.push(`${page}: ${address} leads to no file`)
    else if (fragment !== undefined && fragment !== '' && target.endsWith('.html') && !names(target).has(decodeURIComponent(fragment)))
      broken.push(`${page}: ${address} names nothing on its page`)
  }
}
console.log([...broken.slice(0, 50), `${links} links on ${pages.length} pages, ${broken.length} broken`].join('\n'))
process.exit(broken.length === 0 && links > 0 ? 0 : 1)
