// Writes docs/guide/glossary.md from scripts/glossary.json; with `--check` it only fails where the page is stale.
import { readFileSync, writeFileSync } from 'node:fs'
import terms from './glossary.json' with { type: 'json' }

const PAGE = new URL('../docs/guide/glossary.md', import.meta.url)
const rows = Object.entries(terms)
  .sort(([a], [b]) => a.toLowerCase().localeCompare(b.toLowerCase(), 'en'))
  .map(([term, meaning]) => `| **${term}** | ${meaning} |`)
const text = `---
title: Glossary
---

# Glossary

The words of this library, each for one thing. The page is generated: \`npm run glossary\`.

| term | meaning |
|---|---|
${rows.join('\n')}
`

if (!process.argv.includes('--check')) writeFileSync(PAGE, text)
else if (readFileSync(PAGE, 'utf8') !== text) {
  console.error('docs/guide/glossary.md is stale: npm run glossary')
  process.exit(1)
}
